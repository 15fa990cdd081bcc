using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves;

public sealed partial record Draft
{
    /// <summary>The turned draft in its transposed form: threading and treadling exchanged, the tie-up turned over and complemented.</summary>
    /// <remarks>
    /// The new cloth has warp on top at pick q, end p where this one has weft on top at pick p, end q. A twill line keeps its hand.
    /// Picks on several treadles and ends on several shafts are first given treadles and shafts of their own.
    /// </remarks>
    /// <exception cref="InputProblemException">It needs more than 64 shafts or treadles.</exception>
    public Draft Turned()
    {
        // Every distinct lift, the empty one too, becomes a shaft; every distinct set of shafts an end lies on becomes a treadle.
        ImmutableArray<ShaftSet> lifts = [.. Enumerable.Range(0, Picks).Select(Lift).Distinct()];
        ImmutableArray<ShaftSet> ends = [.. Threading.Distinct()];
        bool asIs = LiftPlan.IsEmpty && Treadling.All(p => p.Count == 1) && Threading.All(e => e.Count == 1);
        if (asIs)
        {
            lifts = TieUp;
            ends = [.. Enumerable.Range(1, Shafts).Select(s => ShaftSet.Of(s))];
        }

        if (lifts.Length > DraftLimits.Shafts) throw CannotTurn(lifts.Length, "lifts", "treadling", "shaft");
        if (ends.Length > DraftLimits.Treadles) throw CannotTurn(ends.Length, "sets of shafts", "threading", "treadle");
        return this with
        {
            Shafts = lifts.Length,
            Threading = [.. Enumerable.Range(0, Picks).Select(p => asIs ? Treadling[p] : ShaftSet.Of(lifts.IndexOf(Lift(p)) + 1))],
            TieUp = [.. ends.Select(e => LeftAlone(lifts, e))],
            Treadling = [.. Threading.Select(e => ShaftSet.Of(ends.IndexOf(e) + 1))],
            LiftPlan = [],
            WarpOrder = WeftOrder,
            WeftOrder = WarpOrder,
        };
    }

    /// <summary>The cloth turned a quarter clockwise: a twill line changes hand, as it does when cloth is turned in the hands.</summary>
    /// <exception cref="InputProblemException">It needs more than 64 shafts or treadles.</exception>
    public Draft TurnedClockwise() => EndsReversed().Turned();

    private static ShaftSet LeftAlone(ImmutableArray<ShaftSet> lifts, ShaftSet end)
    {
        ulong bits = 0;
        for (int i = 0; i < lifts.Length; i++)
        {
            if (!lifts[i].Overlaps(end)) bits |= 1UL << i;
        }

        return new ShaftSet(bits);
    }

    private static InputProblemException CannotTurn(int count, string what, string where, string becomes) => new(new InputProblem(
        $"The draft has {count} different {what}, and each would need a {becomes} when it is turned.",
        where,
        $"Turn a part with at most {ShaftSet.Highest} of them."));
}
