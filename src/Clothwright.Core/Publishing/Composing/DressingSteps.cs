using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Winding the warp and dressing the loom.</summary>
internal static class DressingSteps
{
    /// <summary>The steps in the order of the work.</summary>
    public static IEnumerable<HandoutStep> Of(PlanResult plan, FullThreading threading)
    {
        yield return Wind(plan);
        yield return Beam(plan);
        if (plan.Loom.Kind == LoomKind.RigidHeddle)
        {
            yield return Heddles(plan);
        }
        else
        {
            yield return Thread(plan, threading);
            yield return Sley(plan);
        }

        yield return new HandoutStep("Tie on", "Tie the warp to the front in groups of about 2 cm (3/4 in). Go over the knots from the middle out until every group feels alike under the flat hand.");
        if (DraftText.IsTreadled(plan)) yield return TieUp(plan.LoomDraft);
    }

    private static HandoutStep Wind(PlanResult plan) => new(
        "Wind",
        $"Wind {Words.Metric(plan.Ends.Total)} ends, each {Words.Both(plan.WarpLength)} long, in the colour order given above, with a cross at one end. Tie the cross, and tie the warp firmly every metre before you take it off.")
    {
        Details =
        [
            .. plan.Yarns.Where(y => y.Ends.Value.Count > 0).Select(y => $"{y.Yarn.Name}: {Words.Metric(y.Ends)} ends, {Words.Both(y.Warp)}"),
        ],
    };

    private static HandoutStep Beam(PlanResult plan) => new(
        "Beam",
        $"Spread the warp {Words.Both(plan.ReedWidth)} wide in the raddle, in the middle of the loom. Wind it on under even tension, with firm paper or sticks between the layers.");

    private static HandoutStep Thread(PlanResult plan, FullThreading threading)
    {
        EndsPlan ends = plan.Ends;
        int floating = ends.FloatingSelvedges / 2;
        var text = new List<string>();
        if (floating > 0) text.Add("Leave the first and the last end out of the heddles: they are the floating selvedges.");
        if (ends.SelvedgeEnds > 0) text.Add($"The {Words.Of(ends.SelvedgeEnds / 2, "selvedge end")} at each side carry the threading on beyond the pattern.");
        text.Add(ends.Repeats > 0
            ? $"Thread the repeat of {Words.Of(ends.RepeatEnds, "end")} {Words.Times(ends.Repeats)}, from the left as the draft shows."
            : $"Thread {Words.Of(ends.BalancingEnds, "end")} of the repeat, from the left as the draft shows.");
        if (ends.Repeats > 0 && ends.BalancingEnds > 0) text.Add($"Close with the first {Words.Of(ends.BalancingEnds, "end")} of the repeat once more.");
        text.Add("Check each group against the draft before you go on to the next, and tie it with a slip knot.");
        string heddles = Words.List(Enumerable.Range(1, plan.LoomDraft.Shafts).Select(s => $"{Words.Count(threading.OnShaft(s))} on shaft {Words.Count(s)}"));
        return new HandoutStep("Thread", string.Join(" ", text))
        {
            Details = [.. ShedWords.Threading(plan) is { } repeat ? [repeat] : Array.Empty<string>(), $"Heddles: {heddles}."],
            Ticks = TickText.Threading(ends),
        };
    }

    private static HandoutStep Sley(PlanResult plan)
    {
        string floating = plan.Ends.FloatingSelvedges > 0 ? " Each floating selvedge has a dent of its own." : "";
        string order = plan.Reed is { } fit ? $"{SleyWords.Order(fit.Sley)} of the reed ({fit.Name})" : $"at {Words.Both(plan.Sett)}";
        return new HandoutStep("Sley", $"Sley {order}, so that the warp stands {Words.Both(plan.ReedWidth)} wide in the middle of the reed.{floating}");
    }

    private static HandoutStep Heddles(PlanResult plan)
    {
        int heddles = ToolsText.HeddleCount(plan);
        string holes = heddles == 1
            ? "Draw one end through each eye and each slot in turn."
            : $"Thread {Words.Spelled(heddles)} heddles, the back one first; heddle 1 is nearest to you. An end in an eye of one heddle goes through slots of the others.";
        string floating = plan.Ends.FloatingSelvedges > 0 ? " The first and the last end are the floating selvedges: they hang free, each in a slot of its own." : "";
        return new HandoutStep("Thread the heddle", $"{holes}{floating} The warp stands {Words.Both(plan.ReedWidth)} wide in the middle of the heddle.")
        {
            Details = [.. HeddleWords.Of(plan)],
            Ticks = TickText.Threading(plan.Ends),
        };
    }

    private static HandoutStep TieUp(Draft draft) => new("Tie up", draft.RisingShed ? "Tie each treadle to the shafts that it lifts." : "Tie each treadle to the shafts that it lowers.")
    {
        Details = [.. draft.TieUp.Select((shafts, i) => $"Treadle {Words.Count(i + 1)}: {(shafts.Count == 1 ? "shaft" : "shafts")} {Words.List(shafts.Members().Select(Words.Count))}")],
    };
}
