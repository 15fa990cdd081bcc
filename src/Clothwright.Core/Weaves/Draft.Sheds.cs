using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves;

public sealed partial record Draft
{
    /// <summary>The same cloth with a lift plan in place of tie-up and treadling, as a table loom weaves it.</summary>
    public Draft AsLiftPlan() => this with
    {
        LiftPlan = [.. Enumerable.Range(0, Picks).Select(Lift)],
        TieUp = [],
        Treadling = [],
    };

    /// <summary>The same cloth with one treadle for each distinct lift, numbered by first use; a pick that moves nothing presses nothing.</summary>
    /// <exception cref="InputProblemException">There are more than 64 distinct lifts.</exception>
    public Draft AsTieUp()
    {
        var treadleOf = new Dictionary<ShaftSet, int>();
        var tieUp = ImmutableArray.CreateBuilder<ShaftSet>();
        var treadling = ImmutableArray.CreateBuilder<ShaftSet>(Picks);
        for (int pick = 0; pick < Picks; pick++)
        {
            ShaftSet lift = Lift(pick);
            if (lift == ShaftSet.None)
            {
                treadling.Add(ShaftSet.None);
                continue;
            }

            if (!treadleOf.TryGetValue(lift, out int treadle))
            {
                tieUp.Add(lift);
                treadle = tieUp.Count;
                treadleOf.Add(lift, treadle);
            }

            if (treadle > DraftLimits.Treadles) throw TooManyTreadles(pick);
            treadling.Add(ShaftSet.Of(treadle));
        }

        return this with { LiftPlan = [], TieUp = tieUp.ToImmutable(), Treadling = treadling.MoveToImmutable() };
    }

    /// <summary>The same cloth on a rising shed.</summary>
    /// <inheritdoc cref="OnSinkingShed" path="/remarks"/>
    /// <exception cref="InputProblemException">The ends lie on more than 64 different sets of shafts.</exception>
    public Draft OnRisingShed() => RisingShed ? this : OnOtherShed();

    /// <summary>The same cloth on a sinking shed.</summary>
    /// <remarks>
    /// Each treadle is tied to the shafts it left alone. That is exact only where each pick presses one treadle and each end is on one
    /// shaft; otherwise a lift plan is given, and ends on several shafts or none get shafts of their own.
    /// </remarks>
    /// <exception cref="InputProblemException">The ends lie on more than 64 different sets of shafts.</exception>
    public Draft OnSinkingShed() => RisingShed ? OnOtherShed() : this;

    /// <summary>The cloth seen from its other face, turned side to side, on the same kind of shed.</summary>
    /// <exception cref="InputProblemException">The ends lie on more than 64 different sets of shafts.</exception>
    public Draft OtherFace()
    {
        // The other shed with the same ties weaves the complement; then it is brought back to this shed.
        Draft reversed = EndsReversed();
        return (reversed with { RisingShed = !RisingShed }).OnOtherShed();
    }

    /// <summary>The same threading and treadling with the last end first.</summary>
    public Draft EndsReversed() => this with
    {
        Threading = [.. Threading.Reverse()],
        WarpOrder = ThreadOrder.Of([.. Enumerable.Range(0, Ends).Select(e => WarpOrder[Ends - 1 - e])]),
    };

    private Draft OnOtherShed()
    {
        bool oneShaft = Threading.All(e => e.Count == 1);
        bool oneTreadle = LiftPlan.IsEmpty && Treadling.All(p => p.Count == 1);
        if (!oneShaft) return WithSingleShafts().AsLiftPlan().OnOtherShed();
        ShaftSet inUse = ShaftsInUse;
        return oneTreadle
            ? this with { RisingShed = !RisingShed, TieUp = [.. TieUp.Select(t => inUse.Without(t))] }
            : AsLiftPlan() with { RisingShed = !RisingShed, LiftPlan = [.. Enumerable.Range(0, Picks).Select(p => inUse.Without(Lift(p)))] };
    }

    // One shaft for each distinct set of shafts an end lies on, by first use; it moves whenever one of the set moves.
    private Draft WithSingleShafts()
    {
        ImmutableArray<ShaftSet> sets = [.. Threading.Distinct()];
        if (sets.Length > DraftLimits.Shafts)
        {
            throw new InputProblemException(new InputProblem(
                $"The ends lie on {sets.Length} different sets of shafts, and each would need a shaft of its own.",
                "threading",
                $"Thread the ends on single shafts, at most {DraftLimits.Shafts}."));
        }

        ShaftSet Moved(ShaftSet lift)
        {
            ulong bits = 0;
            for (int i = 0; i < sets.Length; i++)
            {
                if (sets[i].Overlaps(lift)) bits |= 1UL << i;
            }

            return new ShaftSet(bits);
        }

        return this with
        {
            Shafts = sets.Length,
            Threading = [.. Threading.Select(e => ShaftSet.Of(sets.IndexOf(e) + 1))],
            LiftPlan = [.. Enumerable.Range(0, Picks).Select(p => Moved(Lift(p)))],
            TieUp = [],
            Treadling = [],
        };
    }

    /// <summary>The shafts that carry an end.</summary>
    public ShaftSet ShaftsInUse
    {
        get
        {
            ShaftSet inUse = default;
            foreach (ShaftSet end in Threading) inUse |= end;
            return inUse;
        }
    }

    private static InputProblemException TooManyTreadles(int pick) => new(new InputProblem(
        $"Pick {pick + 1} needs a treadle beyond the {DraftLimits.Treadles} a draft can hold.",
        $"lift plan, pick {pick + 1}",
        "Weave it by lift plan, or take one repeat."));
}
