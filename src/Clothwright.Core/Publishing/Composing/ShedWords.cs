using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.RigidHeddles;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Threading and sheds in words, for the eye that is on the loom and for readers who cannot see the draft.</summary>
internal static class ShedWords
{
    private const int MostEnds = 64;
    private const int MostPicks = 40;
    private const int LongestUngrouped = 8;
    private const int Group = 4;

    /// <summary>One repeat of the threading, shaft by shaft; null if it is too long to be read as words.</summary>
    public static string? Threading(PlanResult plan) => plan.LoomDraft.Ends > MostEnds
        ? null
        : $"One repeat from the left, by shafts: {Grouped(plan.LoomDraft.Threading)}.";

    /// <summary>One repeat of the sheds, pick by pick; null if it is too long, or if no heddle makes it.</summary>
    public static string? Picks(PlanResult plan)
    {
        Draft draft = plan.LoomDraft;
        if (draft.Picks > MostPicks) return null;
        if (plan.Loom.Kind == LoomKind.RigidHeddle)
        {
            return OnHeddles(plan) is { CanBeWoven: true } heddles
                ? $"Sheds from the first pick: {string.Join("; ", heddles.Picks.Select(p => p.ToString()))}; over and over."
                : null;
        }

        if (DraftText.IsTreadled(plan)) return $"Treadles from the first pick: {Grouped(draft.Treadling)}, over and over.";
        string move = draft.RisingShed ? "Shafts to raise" : "Shafts to lower";
        return $"{move} from the first pick: {string.Join(", ", Enumerable.Range(0, draft.Picks).Select(p => Together(draft.Lift(p))))}, over and over.";
    }

    /// <summary>The draft laid out for the rigid heddles of a plan; null where it cannot be.</summary>
    public static RigidHeddlePlan? OnHeddles(PlanResult plan)
    {
        int heddles = Math.Min(ToolsText.HeddleCount(plan), RigidHeddleShed.MostHeddles);
        try
        {
            return RigidHeddleFit.Of(plan.LoomDraft, heddles, RigidHeddleFit.MostSticks);
        }
        catch (InputProblemException)
        {
            return null; // more kinds of ends than can be laid out; the draft still shows them
        }
    }

    // A long row is read in fours.
    private static string Grouped(ImmutableArray<ShaftSet> row) => row.Length <= LongestUngrouped
        ? string.Join(' ', row.Select(Together))
        : string.Join(", ", row.Chunk(Group).Select(four => string.Join(' ', four.Select(Together))));

    private static string Together(ShaftSet shafts) => shafts.Count == 0 ? "none" : string.Join('+', shafts.Members().Select(Words.Count));
}
