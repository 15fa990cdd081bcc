using System.Globalization;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Checks;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns of weaves that fall apart, pull out at the edge or overtax the loom.</summary>
internal static class WeaveWarnings
{
    /// <summary>The warnings.</summary>
    /// <param name="request">The decisions.</param>
    /// <param name="loom">The loom.</param>
    /// <param name="layers">Layers woven at once.</param>
    /// <param name="loomDraft">One repeat as threaded and tied.</param>
    /// <param name="analysis">What the weave of one layer tells.</param>
    public static IEnumerable<PlanWarning> Of(PlanRequest request, Loom loom, int layers, Draft loomDraft, ClothAnalysis analysis)
    {
        foreach (InputProblem problem in analysis.Problems.Where(p => !(request.FloatingSelvedges && p.Where == "treadling")))
        {
            yield return new PlanWarning("weave-fault", "weave", $"{request.Weave.Name}: {problem.What}", problem.Mend);
        }

        if (!request.FloatingSelvedges && layers == 1 && NeedsFloatingSelvedges(request.Weave, analysis))
        {
            yield return new PlanWarning("loose-selvedge", "warp.floatingSelvedges", $"{request.Weave.Name}: some turns of the shuttle miss the edge end.", "Hang a floating selvedge at each side, or add plain selvedge ends.");
        }

        int treadles = loomDraft.LiftPlan.IsEmpty ? loomDraft.Treadles : loomDraft.LiftPlan.Distinct().Count();
        if (loom.Kind == LoomKind.Floor && treadles > loom.Treadles)
        {
            yield return new PlanWarning(
                "treadles-short",
                "loom",
                $"{request.Weave.Name} has {Count(treadles)} different sheds and {loom.Name} {Count(loom.Treadles)} treadles.",
                "Tie it up so that two feet together open the missing sheds, or choose a weave with fewer.");
        }

        if (loom.Kind == LoomKind.RigidHeddle && loomDraft.Shafts > loom.Shafts)
        {
            yield return new PlanWarning(
                "pick-up-stick", "loom", $"{Count(loom.RigidHeddles)} rigid heddles part the ends in {Count(loom.Shafts)} groups; {request.Weave.Name} in {Count(layers)} layers wants {Count(loomDraft.Shafts)}.", $"Pick up the slot ends of one layer on a stick behind the heddles; it makes group {Count(LoomCheck.Groups(loom, layers))}.");
        }
    }

    // A repeat stands for the whole width only if its edges are those of the warp, which whole repeats give.
    private static bool NeedsFloatingSelvedges(Weave weave, ClothAnalysis analysis) =>
        weave.Draft.Ends > 2 && !analysis.SelvedgeFromLeft.IsClean && !analysis.SelvedgeFromRight.IsClean;

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
