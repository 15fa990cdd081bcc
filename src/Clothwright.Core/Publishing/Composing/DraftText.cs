using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The draft of the whole warp, and those of pieces that have one of their own.</summary>
internal static class DraftText
{
    private const int MostPicks = 4000;

    /// <summary>The drafts.</summary>
    public static ImmutableArray<HandoutBlock> Of(PlanResult plan, FullThreading threading)
    {
        var blocks = ImmutableArray.CreateBuilder<HandoutBlock>();
        PiecePlan first = plan.Pieces.FirstOrDefault(p => p.Piece.Weave is null) ?? plan.Pieces[0];
        Draft repeat = OnLoom(plan);
        int picks = (int)Math.Clamp(first.Picks.Value.Count, repeat.Picks, MostPicks);
        Draft whole = Along(repeat, picks) with { Threading = threading.Ends };
        blocks.Add(new DraftBlock(whole, threading.Colours, WeftOrder.Colours(plan, first.Piece), Caption(plan, first)));
        foreach (PiecePlan piece in plan.Pieces)
        {
            if (piece.Piece.Weave?.Draft is not { } own) continue;
            blocks.Add(new DraftBlock(own, [], [], $"For {piece.Piece.Name}: {Words.Of(own.Ends, "end")} and {Words.Of(own.Picks, "pick")} of its own draft."));
        }

        return blocks.ToImmutable();
    }

    /// <summary>Whether the loom is worked by treadles tied to the draft's tie-up.</summary>
    public static bool IsTreadled(PlanResult plan) => plan.LoomDraft.LiftPlan.IsEmpty && plan.LoomDraft.Treadles > 0 && plan.Loom.Treadles > 0;

    // Levers and rigid heddles are lifted pick by pick: a lift plan instead of tie-up and treadling.
    private static Draft OnLoom(PlanResult plan)
    {
        Draft draft = plan.LoomDraft;
        return IsTreadled(plan) ? draft : draft with
        {
            TieUp = [],
            Treadling = [],
            LiftPlan = [.. Enumerable.Range(0, draft.Picks).Select(draft.Lift)],
        };
    }

    // The picks of the repeat over and over.
    private static Draft Along(Draft draft, int picks) => draft.LiftPlan.IsEmpty
        ? draft with { Treadling = Round(draft.Treadling, picks) }
        : draft with { LiftPlan = Round(draft.LiftPlan, picks) };

    private static ImmutableArray<ShaftSet> Round(ImmutableArray<ShaftSet> repeat, int picks) =>
        [.. Enumerable.Range(0, picks).Select(i => repeat[i % repeat.Length])];

    private static string Caption(PlanResult plan, PiecePlan first)
    {
        Draft draft = plan.LoomDraft;
        string way = draft.RisingShed ? "numbered shafts rise" : "numbered shafts sink";
        string control = IsTreadled(plan) ? "Tie-up and treadling" : "Lift plan";
        string name = draft.Name.Length == 0 ? "" : $"{Words.Sentence(draft.Name)}. ";
        return $"{name}The repeat is {Words.Of(draft.Ends, "end")} by {Words.Of(draft.Picks, "pick")}. Drawn as it stands at the loom: the first pick is at the bottom, end 1 at the left; "
            + $"beside each shaft its number and, in brackets, its heddles. {control}: {way}. A filled square is warp on top. Picks are those of {first.Piece.Name}.";
    }
}
