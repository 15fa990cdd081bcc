using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The key figures of a plan.</summary>
internal static class GlanceText
{
    /// <summary>The figures.</summary>
    public static FiguresBlock Of(PlanResult plan, HandoutOptions options)
    {
        var figures = ImmutableArray.CreateBuilder<HandoutFigure>();
        foreach (PiecePlan piece in plan.Pieces)
        {
            string many = piece.Piece.Count == 1 ? "" : $"{Words.Count(piece.Piece.Count)} alike";
            figures.Add(new HandoutFigure($"{Words.Sentence(piece.Piece.Name)}, washed", PieceWords.Expected(piece, UnitStyle.Metric), PieceWords.Expected(piece, UnitStyle.Customary)) { Note = many });
        }

        figures.Add(HandoutFigure.Of("Ends to wind", plan.Ends.Total) with { Note = Ends(plan.Ends) });
        figures.Add(HandoutFigure.Of("Sett in the reed", plan.Sett) with { Note = plan.Reed?.Name ?? "" });
        figures.Add(HandoutFigure.Of("Width in the reed", plan.ReedWidth));
        figures.Add(HandoutFigure.Of("Warp length", plan.WarpLength) with { Note = "loom waste included" });
        AddPicks(figures, plan);
        figures.Add(HandoutFigure.Of("Weight of the washed cloth", plan.MassPerArea));
        figures.Add(Yarn(plan));
        figures.Add(HandoutFigure.Of("Time at work", plan.Work.Total) with { Note = "a guess from customary rates" });
        if (plan.Cost is { } cost && options.Currency.Length > 0)
        {
            string amount = $"{Words.Metric(cost)} {options.Currency}";
            figures.Add(new HandoutFigure("Yarn used, at its price", amount, amount));
        }

        return new FiguresBlock(figures.ToImmutable());
    }

    private static string Ends(EndsPlan ends)
    {
        var parts = new List<string>();
        if (ends.Repeats > 0) parts.Add($"{Words.Count(ends.Repeats)} × {Words.Count(ends.RepeatEnds)}");
        if (ends.BalancingEnds > 0) parts.Add(ends.Repeats > 0 ? $"{Words.Count(ends.BalancingEnds)} more" : Words.Count(ends.BalancingEnds));
        if (ends.SelvedgeEnds > 0) parts.Add($"{Words.Count(ends.SelvedgeEnds)} selvedge");
        if (ends.FloatingSelvedges > 0) parts.Add($"{Words.Count(ends.FloatingSelvedges)} floating");
        return string.Join(" + ", parts);
    }

    // One line if all pieces are beaten alike, else one a piece.
    private static void AddPicks(ImmutableArray<HandoutFigure>.Builder figures, PlanResult plan)
    {
        bool alike = plan.Pieces.Select(p => Words.Metric(p.GroundPicksUnderTension)).Distinct(StringComparer.Ordinal).Count() == 1;
        foreach (PiecePlan piece in alike ? plan.Pieces.Take(1) : plan.Pieces)
        {
            string picks = $"{Words.Sentence(Words.CountedPicks(piece))} on the loom{Words.EachLayer(piece)}";
            string label = alike ? picks : $"{picks}, {piece.Piece.Name}";
            figures.Add(HandoutFigure.Of(label, piece.GroundPicksUnderTension) with { Note = alike ? $"{Words.Metric(plan.Picks)} picks in all" : $"{Words.Metric(piece.Picks)} picks in all" });
        }
    }

    private static HandoutFigure Yarn(PlanResult plan)
    {
        double kilograms = plan.Yarns.Sum(y => y.Mass.Value.Kilograms);
        string metric = QuantityText.Format(QuantityKind.Mass, kilograms, UnitStyle.Metric);
        string customary = QuantityText.Format(QuantityKind.Mass, kilograms, UnitStyle.Customary);
        return new HandoutFigure("Yarn in all", metric, customary) { Note = "by yarn under Materials" };
    }
}
