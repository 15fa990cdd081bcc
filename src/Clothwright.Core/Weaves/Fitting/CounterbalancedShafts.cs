using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Spreads the kinds of ends over so many shafts that as many rise as sink in every shed.</summary>
internal static class CounterbalancedShafts
{
    /// <summary>How many shafts each kind of end takes; null if no sharing-out balances every shed.</summary>
    /// <param name="kinds">Kinds of ends.</param>
    /// <param name="up">For each kind of pick the kinds of ends that rise, one bit each.</param>
    /// <param name="most">Most shafts.</param>
    public static int[]? Share(int kinds, IReadOnlyList<ulong> up, int most)
    {
        for (int shafts = kinds + (kinds & 1); shafts <= most; shafts += 2)
        {
            int[] share = new int[kinds];
            if (Fill(share, 0, shafts, up, shafts)) return share;
        }

        return null;
    }

    /// <summary>The kinds that rise on each kind of pick, packed; kinds beyond 64 do not fit.</summary>
    public static ImmutableArray<ulong> Rising(ClothKinds lines) =>
        [.. Enumerable.Range(0, lines.PickKinds).Select(pick =>
            Enumerable.Range(0, lines.EndKinds).Aggregate(0UL, (bits, end) => lines.Up(pick, end) ? bits | 1UL << end : bits))];

    private static bool Fill(int[] share, int kind, int left, IReadOnlyList<ulong> up, int shafts)
    {
        int others = share.Length - kind - 1;
        if (others == 0)
        {
            share[kind] = left;
            return left > 0 && up.All(lift => Enumerable.Range(0, share.Length).Sum(k => (lift >> k & 1) == 1 ? share[k] : 0) * 2 == shafts);
        }

        for (int mine = 1; mine <= left - others; mine++)
        {
            share[kind] = mine;
            if (Fill(share, kind + 1, left - mine, up, shafts)) return true;
        }

        return false;
    }
}
