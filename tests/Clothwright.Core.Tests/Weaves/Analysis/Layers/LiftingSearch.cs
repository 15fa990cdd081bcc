using System.Numerics;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Tests.Weaves.Analysis.Layers;

/// <summary>The second way to find layers: by searching which thread lies on which, without sums. At most 64 threads, ends first, one bit each.</summary>
internal static class LiftingSearch
{
    /// <summary>
    /// The pieces of a cloth from top to bottom. A piece is a set of threads each of which lies, directly or through others, on every
    /// other of the set; found by searching downwards from every thread.
    /// </summary>
    public static List<ulong> Pieces(Drawdown cloth)
    {
        ulong[] on = LiesOn(cloth);
        ulong[] below = [.. on.Select((_, thread) => Search(on, thread))];
        var pieces = new List<ulong>();
        ulong placed = 0;
        for (int thread = 0; thread < on.Length; thread++)
        {
            if (Has(placed, thread)) continue;
            ulong piece = 1UL << thread;
            for (int other = 0; other < on.Length; other++)
            {
                if (Has(below[thread], other) && Has(below[other], thread)) piece |= 1UL << other;
            }

            pieces.Add(piece);
            placed |= piece;
        }

        // A piece above another reaches it and is not reached by it, so it reaches more threads.
        return [.. pieces.OrderByDescending(p => BitOperations.PopCount(below[BitOperations.TrailingZeroCount(p)]))];
    }

    /// <summary>Whether no set of threads but all or none can be lifted off, by trying every set.</summary>
    public static bool HangsByEverySet(Drawdown cloth)
    {
        ulong[] on = LiesOn(cloth);
        ulong ends = (1UL << cloth.Ends) - 1;
        ulong all = (1UL << on.Length) - 1;
        for (ulong set = 1; set < all; set++)
        {
            if (CanBeLifted(on, set, ends, all)) return false;
        }

        return true;
    }

    // Every thread of the set lies on every thread it crosses outside the set.
    private static bool CanBeLifted(ulong[] on, ulong set, ulong ends, ulong all)
    {
        for (int thread = 0; thread < on.Length; thread++)
        {
            if (!Has(set, thread)) continue;
            ulong crossed = Has(ends, thread) ? all & ~ends : ends;
            if ((crossed & ~set & ~on[thread]) != 0) return false;
        }

        return true;
    }

    private static ulong Search(ulong[] on, int start)
    {
        ulong reached = on[start];
        ulong searched = 0;
        while ((reached & ~searched) != 0)
        {
            int thread = BitOperations.TrailingZeroCount(reached & ~searched);
            searched |= 1UL << thread;
            reached |= on[thread];
        }

        return reached;
    }

    private static ulong[] LiesOn(Drawdown cloth)
    {
        var on = new ulong[cloth.Ends + cloth.Picks];
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            for (int end = 0; end < cloth.Ends; end++)
            {
                if (cloth[pick, end]) on[end] |= 1UL << (cloth.Ends + pick);
                else on[cloth.Ends + pick] |= 1UL << end;
            }
        }

        return on;
    }

    private static bool Has(ulong set, int member) => ((set >> member) & 1) != 0;
}
