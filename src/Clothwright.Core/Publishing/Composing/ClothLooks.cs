using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>How the washed cloths of a plan look.</summary>
public static class ClothLooks
{
    // The diameter reckoned with is that of yarn pressed in a close cloth; washed, it lies about half as wide again. Common practice, no source.
    private const double WashedWidth = 1.5;

    /// <summary>Front and back of each cloth that differs from those before it.</summary>
    internal static IEnumerable<HandoutBlock> Blocks(PlanResult plan)
    {
        IGrouping<string, PiecePlan>[] kinds = [.. plan.Pieces.GroupBy(p => Key(p.Piece), StringComparer.Ordinal)];
        foreach (IGrouping<string, PiecePlan> kind in kinds)
        {
            string whose = kinds.Length == 1 ? "The washed cloth" : $"The washed cloth of {Words.List(kind.Select(p => p.Piece.Name))}";
            string clasped = kind.First().Piece.Weft.Any(w => w.ClaspedWith is not null) ? " Of clasped wefts the one from the left is shown." : "";
            yield return new ClothBlock(Of(plan, kind.First()), $"{whose} as it can be foreseen, at true size if printed without scaling.{clasped}");
        }
    }

    /// <summary>The look of one piece; of cloth in several layers, one layer.</summary>
    public static ClothLook Of(PlanResult plan, PiecePlan piece)
    {
        int layers = piece.Piece.Make == PieceMake.Flat ? 1 : 2;
        int across = piece.Piece.Make == PieceMake.Tube ? 2 : 1;
        IEnumerable<ThreadRun> runs = layers == 1 ? plan.WarpRuns : plan.Request.Warp.Runs;
        double ends = plan.Ends.Total.Value.Count / (double)across;
        double picks = piece.Picks.Value.Count / (double)layers;
        return new ClothLook(
            WeftOrder.WeaveOf(plan, piece.Piece).Draft.Drawdown(),
            [.. runs.SelectMany(r => Enumerable.Repeat(Thread(WeftOrder.Yarn(plan, r.YarnId), 1), r.Threads))],
            [.. WeftOrder.Picks(plan, piece.Piece).Select(r => Thread(WeftOrder.Yarn(plan, r.YarnId), r.ClaspedWith is null ? r.Strands : 2 * r.Strands))],
            Sett.FromPerMetre(ends / piece.FinishedWidth.Value.Metres),
            Sett.FromPerMetre(picks / piece.ClothLength.Value.Metres))
        {
            Width = piece.FinishedWidth.Value,
        };
    }

    // Strands of one pick lie side by side.
    internal static ThreadLook Thread(Yarn yarn, int strands)
    {
        double diameter = YarnDiameter.Of(yarn).Value.Metres;
        return new ThreadLook(yarn.Colour, Length.FromMetres(strands * diameter * WashedWidth));
    }

    private static string Key(Piece piece) =>
        $"{string.Join('/', piece.Weft)}|{string.Join('/', piece.PatternWeft)}|{piece.ChosenPicks}|{piece.Make}|{piece.Weave?.Draft.Drawdown()}";
}
