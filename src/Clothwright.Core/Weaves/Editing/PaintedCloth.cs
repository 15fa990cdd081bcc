using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>What comes of a cloth that was painted crossing by crossing: a draft that weaves it, or why the loom cannot.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Draft">The draft that weaves it on the loom; null if none does.</param>
/// <param name="Kept">What of the draft before could stay.</param>
/// <param name="Reasons">Why there is none, or what to know, as sentences.</param>
/// <param name="SmallestChange">The smallest change with which the loom could weave it; null if none is needed or known.</param>
public sealed record PaintedCloth(Drawdown Cloth, Draft? Draft, PaintedKeeping Kept, ImmutableArray<string> Reasons, DraftReduction? SmallestChange)
{
    /// <summary>Finds the draft: the one before with another tie-up if that will do, else one on the same threading, else the one with the fewest shafts.</summary>
    /// <param name="before">The draft whose cloth was painted on.</param>
    /// <param name="cloth">The cloth as painted.</param>
    /// <param name="limits">The loom.</param>
    /// <exception cref="InputProblemException">There is no such loom.</exception>
    public static PaintedCloth For(Draft before, Drawdown cloth, LoomLimits limits)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentNullException.ThrowIfNull(limits);
        if (OnSameThreading(before, cloth, limits) is { } kept) return kept;
        LoomFitResult fit = LoomFit.For(cloth, limits);
        if (!fit.Feasible || fit.Draft is not { } found) return new PaintedCloth(cloth, null, PaintedKeeping.Nothing, fit.Reasons, fit.SmallestChange);
        Draft fitted = found with { Name = before.Name, WarpOrder = before.WarpOrder, WeftOrder = before.WeftOrder };
        return new PaintedCloth(cloth, fitted with { Shafts = Math.Max(fitted.Shafts, Math.Min(before.Shafts, limits.Shafts)) }, PaintedKeeping.Nothing, fit.Reasons, null);
    }

    private static PaintedCloth? OnSameThreading(Draft before, Drawdown cloth, LoomLimits limits)
    {
        if (before.Ends != cloth.Ends || before.Shafts > limits.Shafts) return null;
        if (before.LiftPlan.IsEmpty && before.Treadling.Length == cloth.Picks && TieUpCompletion.Of(before, cloth).TryGet(out Draft? tied))
        {
            return new PaintedCloth(cloth, tied, PaintedKeeping.ThreadingAndTreadling, [], null);
        }

        if (LiftsOn(before, cloth) is not { } lifts) return null;
        Draft lifted = before with { LiftPlan = lifts, TieUp = [], Treadling = [] };
        if (!before.LiftPlan.IsEmpty) return new PaintedCloth(cloth, lifted, PaintedKeeping.Threading, [], null);

        // Treadles are numbered anew; as many as before stay, pressed or not.
        if (lifts.Where(l => l != ShaftSet.None).Distinct().Count() > Math.Max(limits.Treadles, before.Treadles)) return null;
        Draft treadled = lifted.AsTieUp();
        int idle = Math.Max(0, before.Treadles - treadled.Treadles);
        return new PaintedCloth(
            cloth, treadled with { TieUp = [.. treadled.TieUp, .. Enumerable.Repeat(ShaftSet.None, idle)] }, PaintedKeeping.Threading, [], null);
    }

    // The lifts that weave the cloth on a threading, or null if the threading cannot.
    private static ImmutableArray<ShaftSet>? LiftsOn(Draft draft, Drawdown cloth)
    {
        var lifts = ImmutableArray.CreateBuilder<ShaftSet>(cloth.Picks);
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            ulong still = 0;
            for (int end = 0; end < cloth.Ends; end++)
            {
                if (cloth[pick, end] != draft.RisingShed) still |= draft.Threading[end].Bits;
            }

            // Only shafts that carry ends are lifted.
            lifts.Add((draft.ShaftsInUse & ShaftSet.FirstOf(draft.Shafts)).Without(new ShaftSet(still)));
        }

        ImmutableArray<ShaftSet> plan = lifts.MoveToImmutable();
        return (draft with { LiftPlan = plan }).Drawdown().Equals(cloth) ? plan : null;
    }
}
