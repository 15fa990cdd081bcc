using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <content>Treadles that share out the shafts.</content>
public sealed partial record TieUpProblem
{
    // Ways of sharing n shafts among two treadles number 2^(n−1) − 1: above this many shafts only those that promise few treadles are tried.
    private const int MostShaftsSharedFreely = 10;

    /// <summary>Countermarche: every shaft is tied up or down in exactly one of the treadles pressed.</summary>
    /// <param name="lifts">The wanted lifts (shafts that are up), each different; the others go down.</param>
    /// <param name="shafts">Shafts in use, 1 to 64.</param>
    /// <param name="feet">Treadles that may be pressed at once, 1 or more; sharing among three is searched up to 8 shafts.</param>
    public static TieUpProblem Countermarche(IReadOnlyList<ShaftSet> lifts, int shafts, int feet)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(feet, 1);
        ulong all = ShaftSet.FirstOf(shafts).Bits;
        List<ulong[]> shares = Shares(lifts, all, shafts, feet, out bool complete);
        var index = new Dictionary<TreadleTie, int>();
        var ties = ImmutableArray.CreateBuilder<TreadleTie>();
        var ways = ImmutableArray.CreateBuilder<ImmutableArray<ImmutableArray<int>>>(lifts.Count);
        foreach (ShaftSet lift in lifts)
        {
            var found = ImmutableArray.CreateBuilder<ImmutableArray<int>>(shares.Count);
            foreach (ulong[] share in shares)
            {
                found.Add([.. share.Select(part => IndexOf(new TreadleTie(new(part & lift.Bits), new(part & ~lift.Bits)))).Order()]);
            }

            ways.Add(found.MoveToImmutable());
        }

        ImmutableArray<ImmutableArray<ImmutableArray<int>>> pressed = ways.MoveToImmutable();
        return new TieUpProblem(ties.ToImmutable(), pressed, feet, complete) { Start = PressedAlike(pressed, shares.Count) };

        int IndexOf(TreadleTie tie)
        {
            if (!index.TryGetValue(tie, out int at))
            {
                index[tie] = at = ties.Count;
                ties.Add(tie);
            }

            return at;
        }
    }

    // Every lift pressed by the same sharing: the one that takes the fewest treadles.
    private static ImmutableArray<int> PressedAlike(ImmutableArray<ImmutableArray<ImmutableArray<int>>> ways, int shares)
    {
        HashSet<int>? fewest = null;
        for (int share = 0; share < shares; share++)
        {
            var treadles = new HashSet<int>();
            foreach (ImmutableArray<ImmutableArray<int>> lift in ways) treadles.UnionWith(lift[share]);
            if (fewest is null || treadles.Count < fewest.Count) fewest = treadles;
        }

        return fewest is null ? [] : [.. fewest.Order()];
    }

    private static List<ulong[]> Shares(IReadOnlyList<ShaftSet> lifts, ulong all, int shafts, int feet, out bool complete)
    {
        var shares = new List<ulong[]> { new[] { all } };
        complete = true;
        if (feet == 1 || shafts == 1) return shares;
        if (shafts > MostShaftsSharedFreely)
        {
            complete = false;
            shares.AddRange(CountermarcheShares.Promising(lifts, shafts).Select(part => new[] { part, all & ~part }));
            return shares;
        }

        // The part with shaft 1 is an odd number: each division into two is met once.
        for (ulong part = 1; part < all; part += 2)
        {
            shares.Add([part, all & ~part]);
            if (feet < 3) continue;
            ulong rest = all & ~part, lowest = rest & (~rest + 1);
            for (ulong second = (rest - 1) & rest; second != 0; second = (second - 1) & rest)
            {
                if ((second & lowest) != 0) shares.Add([part, second, rest & ~second]);
            }
        }

        return shares;
    }
}
