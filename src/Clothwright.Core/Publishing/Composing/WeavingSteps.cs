using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Weaving header, sample and pieces.</summary>
internal static class WeavingSteps
{
    /// <summary>The steps in the order of the work.</summary>
    public static IEnumerable<HandoutStep> Of(PlanResult plan)
    {
        if (plan.Request.Header > Length.Zero)
        {
            yield return new HandoutStep("Weave the header", $"Weave {Words.Both(plan.Request.Header)} of plain weave, or the nearest to it that the draft gives, with waste yarn until the ends stand evenly. Look for crossed ends and mend them now.");
        }

        if (plan.Request.Sample > Length.Zero)
        {
            yield return new HandoutStep(
                "Weave the sample",
                $"Weave {Words.Both(plan.Request.Sample)} at {Words.Both(plan.Pieces[0].GroundPicksUnderTension)}{Words.EachLayer(plan.Pieces[0])} and measure it on the loom. If the warp allows tying on again, cut it off, wash it as the piece will be washed, and measure again: it tells more than any table.");
        }

        foreach (PiecePlan piece in plan.Pieces) yield return Weave(plan, piece);
        yield return new HandoutStep("Cut off", "Weave a few picks of waste yarn to hold the last edge, slacken the warp and cut the cloth off. Keep the loom waste: its length tells what this loom needs.");
    }

    private static HandoutStep Weave(PlanResult plan, PiecePlan piece)
    {
        Piece brief = piece.Piece;
        var text = new List<string>();
        if (brief.Fringe != FringeStyle.None && piece.FringeWarp.Value > Length.Zero)
        {
            text.Add($"Leave {Words.Both(piece.FringeWarp.Value / 2)} of warp unwoven for the fringe, before and behind.");
        }

        text.Add($"Weave {Words.Both(piece.LengthUnderTension)}, measured under tension, with {Words.Both(piece.GroundPicksUnderTension)} of ground{Words.EachLayer(piece)} on the loom: {Words.Metric(piece.Picks)} picks in all.");
        if (brief.Count > 1) text.Add($"Weave {Words.Spelled(brief.Count)} of them alike, with {Words.Both(plan.Request.Gap)} of warp between.");
        text.Add($"Expect {Words.Both(piece.OffLoomLength)} off the loom.");
        return new HandoutStep($"Weave: {brief.Name}", string.Join(" ", text))
        {
            Details = [.. Details(plan, piece)],
            Ticks = TickText.Weaving(piece, plan.Request.Units),
        };
    }

    private static IEnumerable<string> Details(PlanResult plan, PiecePlan piece)
    {
        Piece brief = piece.Piece;
        if (brief.Weave is null && ShedWords.Picks(plan) is { } sheds) yield return sheds;
        foreach (string line in WeftOrder.Lines(plan, brief)) yield return line;
        if (brief.Hem > Length.Zero) yield return $"The first and the last {Words.Count(HemPicks(piece))} picks are the hems, {Words.Both(brief.Hem)} each after washing; a finer weft there makes them lie flat.";
        if (brief.EndSeam > Length.Zero) yield return $"{Words.Both(brief.EndSeam)} at each end goes into a seam.";
        if (brief.Fringe != FringeStyle.None) yield return "Hemstitch the first and the last picks, or lay in a few picks of waste yarn to hold them.";
        if (brief.Make == PieceMake.DoubleWidth) yield return "Two layers with a fold at one side: look into the shed now and then that the layers lie free of each other and the fold is not drawn in.";
        if (brief.Make == PieceMake.Tube) yield return "Two layers joined at both sides: the weft goes round and round. Keep it slack at the edges so that the sides do not crowd.";
    }

    private static int HemPicks(PiecePlan piece) => (int)Math.Round(piece.Picks.Value.Count * (piece.Piece.Hem / piece.ClothLength.Value));
}
