using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>A draft laid out for rigid heddles: where each end goes, and how each pick is opened.</summary>
/// <param name="Heddles">Heddles, 1 to 4.</param>
/// <param name="Groups">Group of each end: heddle number for its eyes, heddles + 1 for slots throughout.</param>
/// <param name="Sticks">Pick-up sticks needed.</param>
/// <param name="Picks">What to do pick by pick.</param>
/// <param name="Cannot">Why the draft cannot be woven so, and what would do; null if it can.</param>
public sealed record RigidHeddlePlan(
    int Heddles, ImmutableArray<int> Groups, ImmutableArray<PickUpStick> Sticks, ImmutableArray<RigidHeddlePick> Picks, InputProblem? Cannot)
{
    /// <summary>Whether every pick can be made.</summary>
    public bool CanBeWoven => Cannot is null;

    /// <summary>The smallest change of the draft that the heddles alone could weave; null where the draft can be woven, or no such change mends it.</summary>
    public DraftReduction? SmallestChange { get; init; }

    /// <summary>0-based picks whose shed cannot be made.</summary>
    public ImmutableArray<int> UnmadePicks => [.. Enumerable.Range(0, Picks.Length).Where(p => !Picks[p].CanBeMade)];

    /// <summary>The cloth the plan weaves.</summary>
    /// <exception cref="InvalidOperationException">Some pick cannot be made.</exception>
    public Drawdown Drawdown()
    {
        if (!CanBeWoven) throw new InvalidOperationException($"Pick {UnmadePicks[0] + 1} cannot be made.");
        HashSet<int>[] onStick = [.. Sticks.Select(s => s.Ends.ToHashSet())];
        return Weaves.Drawdown.From(Groups.Length, Picks.Length, (pick, end) =>
        {
            RigidHeddlePick made = Picks[pick];
            bool lifted = made.Stick > 0 && onStick[made.Stick - 1].Contains(end);
            return lifted || (made.Shed is { IsClear: true } shed && shed.Raised.Contains(Groups[end]));
        });
    }
}
