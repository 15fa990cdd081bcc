using System.Text;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Workings;

namespace Clothwright.Cli.Reports;

/// <summary>A warp plan for a person at a terminal: the tally first, then what to wind, to weave and to mind.</summary>
internal static class PlanText
{
    /// <summary>The plan in the units the weaver reads.</summary>
    public static string Of(PlanResult plan, string currency, UnitStyle style)
    {
        string F(IDerived figure) => figure.Working.Format(style);
        var text = new StringBuilder();
        text.AppendLine(plan.Request.Title);
        text.AppendLine(new string('─', Math.Min(plan.Request.Title.Length, WrappedText.LineLength)));
        text.AppendLine($"{plan.LoomDraft.Name}, on {plan.Loom.Name}");
        text.AppendLine();
        text.AppendLine($"Wind    {F(plan.Ends.Total)} ends of {F(plan.WarpLength)}{Selvedges(plan.Ends)}");
        text.AppendLine($"Sley    {Sley(plan.Reed)}: {F(plan.Sett)}, {F(plan.ReedWidth)} wide in the reed");
        text.AppendLine($"Weave   {F(plan.Picks)} picks");
        text.AppendLine($"Cloth   {F(plan.MassPerArea)}");
        text.AppendLine($"Time    about {F(plan.Work.Total)} (likely {QuantityText.Format(QuantityKind.WorkTime, plan.Work.Total.Working.Lower95, style)} to {QuantityText.Format(QuantityKind.WorkTime, plan.Work.Total.Working.Upper95, style)})");
        if (plan.Cost is { } cost) text.AppendLine($"Cost    {currency} {F(cost)} of yarn");
        text.AppendLine();

        foreach (YarnNeed need in plan.Yarns)
        {
            text.AppendLine($"{need.Yarn.Name}: {F(need.Total)} ({Uses(need, style)}), {F(need.Mass)}, at most {QuantityText.Format(QuantityKind.Mass, need.Mass.Working.Upper95, style)}{Packages(need)}");
        }

        text.AppendLine();
        foreach (PiecePlan piece in plan.Pieces)
        {
            string times = piece.Piece.Count > 1 ? $"{piece.Piece.Count} × " : "";
            text.AppendLine($"{times}{piece.Piece.Name}: {F(piece.FinishedWidth)} × {F(piece.FinishedLength)} when washed; weave {F(piece.LengthUnderTension)} under tension, {F(piece.Picks)} picks{Density(piece, style)}");
        }

        AppendList(text, "To settle:", plan.Warnings.Select(w => w.ToString()));
        AppendList(text, "Take care:", plan.Cautions.Select(c => c.Text));
        return text.ToString().TrimEnd();
    }

    // What to count on the loom: all picks of a single cloth, those of one layer, or those of the ground.
    private static string Density(PiecePlan piece, UnitStyle style)
    {
        string counted = piece.GroundPicksUnderTension.Working.Format(style);
        string layer = piece.Piece.Make.Layers() > 1 ? " in each layer" : "";
        return piece.PatternPicksPerGroundPick > 0 ? $", of the ground {counted}{layer}" : $" at {counted}{layer}";
    }

    private static string Selvedges(EndsPlan ends) =>
        ends.FloatingSelvedges > 0 ? $", {ends.FloatingSelvedges} of them floating selvedges" : "";

    private static string Sley(ReedFit? fit) => fit switch
    {
        null => "no reed is on the bench",
        { Heddles: > 1 } => $"{fit.Name} heddles, {fit.Sley}",
        { Heddles: 1 } => $"{fit.Name} heddle, {fit.Sley}",
        _ => $"{fit.Name} reed, {fit.Sley}",
    };

    private static string Uses(YarnNeed need, UnitStyle style) => (need.Warp.Value.Metres > 0, need.Weft.Value.Metres > 0) switch
    {
        (true, false) => "warp",
        (false, _) => "weft",
        _ => $"{need.Warp.Working.Format(style)} warp, {need.Weft.Working.Format(style)} weft",
    };

    private static string Packages(YarnNeed need) => (need.Packages.FromShelf.Length, need.Packages.NewPackages.Value.Count) switch
    {
        (0, 0) => "",
        (var open, 0) => $"; open {open}",
        (0, var buy) => $"; buy {buy}",
        (var open, var buy) => $"; open {open} and buy {buy}",
    };

    private static void AppendList(StringBuilder text, string head, IEnumerable<string> items)
    {
        string[] lines = [.. items];
        if (lines.Length == 0) return;
        text.AppendLine().AppendLine(head);
        foreach (string line in lines) WrappedText.Append(text, line);
    }
}
