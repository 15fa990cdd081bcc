using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>Lays a draft out for one to four rigid heddles with pick-up sticks, or says why it cannot be.</summary>
/// <remarks>
/// Ends that weave alike are one kind. k heddles hold k kinds in their eyes, the rest share the slots; a shed that raises some
/// slot kinds and not others needs a stick. Every choice of slot kinds is tried: fewest sticks first, then the closest sett.
/// </remarks>
public static class RigidHeddleFit
{
    /// <summary>The most pick-up sticks reckoned with.</summary>
    public const int MostSticks = 8;

    /// <summary>Lays a draft out.</summary>
    /// <param name="draft">A draft that weaves something.</param>
    /// <param name="heddles">Heddles she has, 1 to 4.</param>
    /// <param name="sticks">Pick-up sticks she is ready to use, 0 to <see cref="MostSticks"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Heddles or sticks are out of range.</exception>
    public static RigidHeddlePlan Of(Draft draft, int heddles, int sticks = 0)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentOutOfRangeException.ThrowIfLessThan(heddles, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(heddles, RigidHeddleShed.MostHeddles);
        ArgumentOutOfRangeException.ThrowIfNegative(sticks);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(sticks, MostSticks);
        EndKinds kinds = EndKinds.Of(draft);
        if (kinds.Count == 1)
        {
            return new RigidHeddlePlan(heddles, [.. kinds.OfEnd.Select(_ => 1)], [], [.. kinds.Lifts.Select(_ => Unmade("all ends move alike"))], new InputProblem(
                "All ends of the draft move alike, so there is no shed.", "draft", "Take a draft with at least two kinds of ends, for example plain weave."));
        }

        ulong slots = Slots(kinds.Count, kinds.Count <= heddles + 1 ? 1 : kinds.Count - heddles)
            .OrderBy(s => kinds.Selections(s).Count)
            .ThenBy(s => new HeddleGroups(heddles, kinds.OfEnd, s).GreatestShare)
            .ThenByDescending(s => s)
            .First();
        RigidHeddlePlan plan = Laid(kinds, slots, heddles, sticks);
        return plan.CanBeWoven || kinds.Count <= heddles + 1 ? plan : plan with { SmallestChange = DraftReduction.Sound(draft.Drawdown(), heddles + 1) };
    }

    private static RigidHeddlePlan Laid(EndKinds kinds, ulong slots, int heddles, int sticks)
    {
        var groups = new HeddleGroups(heddles, kinds.OfEnd, slots);
        IReadOnlyList<ulong> selections = kinds.Selections(slots);
        ImmutableArray<RigidHeddlePick> picks = [.. kinds.Lifts.Select(lift => Pick(lift, kinds, slots, groups, heddles, selections, sticks))];
        ImmutableArray<PickUpStick> used =
        [
            .. selections.Take(sticks).Select((s, i) => new PickUpStick(i + 1, [.. Enumerable.Range(0, kinds.OfEnd.Length).Where(e => ((s >> kinds.OfEnd[e]) & 1) != 0)])),
        ];
        return new RigidHeddlePlan(heddles, groups.OfEnds(), used, picks, Reason(kinds, heddles, sticks, selections.Count, picks));
    }

    private static RigidHeddlePick Pick(
        ulong lift, EndKinds kinds, ulong slots, HeddleGroups groups, int heddles, IReadOnlyList<ulong> selections, int sticks)
    {
        if (lift == 0 || lift == kinds.All) return Unmade(lift == 0 ? "no end is raised" : "every end is raised");
        ShaftSet raised = Enumerable.Range(0, kinds.Count).Where(k => ((lift >> k) & 1) != 0).Aggregate(ShaftSet.None, (set, k) => set | groups.HeddlesOf(k));
        ulong slotLift = lift & slots;
        if (slotLift == slots) return new RigidHeddlePick(RigidHeddleShed.Raising(heddles, raised | ShaftSet.Of(heddles + 1)), 0, "");
        if (slotLift == 0) return new RigidHeddlePick(RigidHeddleShed.Raising(heddles, raised), 0, "");
        int stick = selections.Index().First(s => s.Item == slotLift).Index + 1;
        if (stick > sticks) return Unmade("it parts the slot ends, and there is no stick left to do so");
        RigidHeddleShed shed = raised.Count == 0
            ? new RigidHeddleShed([.. Enumerable.Repeat(HeddlePosition.Rest, heddles)])
            : RigidHeddleShed.Raising(heddles, raised);
        return new RigidHeddlePick(shed, stick, "");
    }

    private static InputProblem? Reason(EndKinds kinds, int heddles, int sticks, int selections, ImmutableArray<RigidHeddlePick> picks)
    {
        int unmade = picks.Count(p => !p.CanBeMade);
        if (unmade == 0) return null;
        int first = picks.ToList().FindIndex(p => !p.CanBeMade);
        string what = $"{unmade} of {picks.Length} picks cannot be made on {Counted(heddles, "heddle")} with {Counted(sticks, "stick")}, the first being pick {first + 1}: {picks[first].Reason}.";
        if (selections <= sticks) return new InputProblem(what, "draft", "Leave out picks that raise every end or none.");
        string heddlesWay = kinds.Count - 1 <= RigidHeddleShed.MostHeddles
            ? $"The draft has {kinds.Count} kinds of ends: use {Counted(kinds.Count - 1, "heddle")}"
            : $"The draft has {kinds.Count} kinds of ends, too many for heddles alone";
        return new InputProblem(what, "draft", $"{heddlesWay}, or {Counted(selections, "pick-up stick")}.");
    }

    private static string Counted(int count, string thing) => count == 1 ? $"1 {thing}" : $"{count} {thing}s";

    private static RigidHeddlePick Unmade(string reason) => new(null, 0, reason);

    // All sets of a size among the kinds.
    private static IEnumerable<ulong> Slots(int kinds, int size) =>
        // With many kinds the slots hold nearly all: choose those that stay out of them.
        size > kinds / 2
            ? Chosen(kinds, kinds - size, 0).Select(eyes => ShaftSet.FirstOf(kinds).Bits & ~eyes)
            : Chosen(kinds, size, 0);

    private static IEnumerable<ulong> Chosen(int kinds, int size, int from)
    {
        if (size == 0)
        {
            yield return 0;
            yield break;
        }

        for (int kind = from; kind <= kinds - size; kind++)
        {
            foreach (ulong rest in Chosen(kinds, size - 1, kind + 1)) yield return rest | (1UL << kind);
        }
    }
}
