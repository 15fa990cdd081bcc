using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The colour order of the warp.</summary>
internal static class WindingText
{
    /// <summary>The order as it is wound.</summary>
    public static ImmutableArray<HandoutBlock> Of(PlanResult plan)
    {
        var turns = ImmutableArray.CreateBuilder<WindingTurn>(plan.WarpRuns.Length);
        int first = 1;
        foreach (ThreadRun run in plan.WarpRuns)
        {
            Yarn yarn = WeftOrder.Yarn(plan, run.YarnId);
            turns.Add(new WindingTurn(first, run.Threads, yarn.Name, yarn.Colour));
            first += run.Threads;
        }

        string floating = plan.Ends.FloatingSelvedges > 0 ? " The first and the last end are the floating selvedges." : "";
        return [new ParagraphBlock($"End 1 is at the left as you sit at the loom.{floating}"), new WindingBlock(turns.ToImmutable())];
    }
}
