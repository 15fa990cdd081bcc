using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns where ends, repeats, orders and widths do not come out even.</summary>
internal static class EndsWarnings
{
    private const double WidthOff = 0.03;

    public static IEnumerable<PlanWarning> Of(PlanRequest request, EndsPlan ends, ImmutableArray<PiecePlan> pieces)
    {
        int cut = ends.Repeats == 0 || request.EndsFit == EndsFit.Width ? ends.BalancingEnds : 0;
        if (cut > 0 && ends.RepeatEnds > 2)
        {
            yield return new PlanWarning(
                "cut-repeat",
                "warp.fit",
                $"{Count(cut)} ends of a repeat of {Count(ends.RepeatEnds)} are cut off at the edge, so the pattern does not end whole.",
                ends.Repeats == 0 ? "Make the piece wider or choose a weave with a smaller repeat." : "Set \"fit\" to \"wholeRepeats\" to let the width give way.");
        }

        int order = request.Warp.Threads;
        int inner = ends.PatternEnds;
        if (request.Warp.Runs.Length > 1 && request.Warp.Repeats && inner % order != 0)
        {
            yield return new PlanWarning(
                "cut-order", "warp.order", $"The order of {Count(order)} ends goes {Count(inner / order)} times into {Count(inner)} ends; {Count(inner % order)} are left of the last.", "Change the order or the width if the stripes are to end whole.");
        }

        if (!request.Warp.Repeats && order > inner)
        {
            yield return new PlanWarning("cut-order", "warp.order", $"The order holds {Count(order)} ends and the warp {Count(inner)}: it is cut at both sides.", "Shorten the order or make the piece wider.");
        }

        foreach (PiecePlan piece in pieces)
        {
            int idle = ends.Total.Value.Count - piece.Ends.Value.Count;
            if (idle > 0)
            {
                yield return new PlanWarning(
                    "idle-ends",
                    $"pieces[{piece.Index}].width",
                    $"{piece.Piece.Name} is narrower than the warp: {Count(idle)} ends hang idle beside it and are lost over its length.",
                    "Weave pieces of one width on one warp, or weave the narrower one last and cut the idle ends away for tying.");
                continue;
            }

            double off = piece.FinishedWidth.Value / piece.Piece.Width - 1;
            if (Math.Abs(off) <= WidthOff) continue;
            yield return new PlanWarning(
                "width-off",
                $"pieces[{piece.Index}].width",
                $"{piece.Piece.Name} comes out {Width(piece.FinishedWidth.Value, request.Units)} wide, {Width(piece.Piece.Width, request.Units)} was wanted.",
                "The ends serve the widest piece and whole repeats; change width, repeat or \"fit\" if it matters.");
        }
    }

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Width(Length width, UnitStyle units) => QuantityText.Format(QuantityKind.Length, width.BaseValue, units);
}
