using Clothwright.Core.Weaves;

namespace Clothwright.Core.Tests.Weaves.Analysis.Layers;

/// <summary>The second way to find layers: by searching which thread lies on which, without sums.</summary>
internal static class LiftingSearch
{
    /// <summary>
    /// The pieces of a cloth from top to bottom; strands are numbered ends first, then picks. A piece is a set of strands each of which
    /// lies, directly or through others, on every other of the set.
    /// </summary>
    public static List<SortedSet<int>> Pieces(Drawdown cloth)
    {
        int strands = cloth.Ends + cloth.Picks;
        ulong[][] below = [.. Enumerable.Range(0, strands).Select(s => Reach(cloth, s))];
        var pieces = new List<SortedSet<int>>();
        for (int strand = 0; strand < strands; strand++)
        {
            if (pieces.Any(p => p.Contains(strand))) continue;
            pieces.Add([.. Enumerable.Range(0, strands).Where(other => other == strand || (Has(below[strand], other) && Has(below[other], strand)))]);
        }

        // A piece above another reaches it and is not reached by it, so it reaches more strands.
        return [.. pieces.OrderByDescending(p => Enumerable.Range(0, strands).Count(other => Has(below[p.Min], other)))];
    }

    /// <summary>Whether no set of strands but all or none can be lifted off, by trying every set.</summary>
    public static bool HangsByEverySet(Drawdown cloth)
    {
        int strands = cloth.Ends + cloth.Picks;
        for (int set = 1; set < (1 << strands) - 1; set++)
        {
            if (CanBeLifted(cloth, set)) return false;
        }

        return true;
    }

    private static bool CanBeLifted(Drawdown cloth, int set)
    {
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            bool pickIn = ((set >> (cloth.Ends + pick)) & 1) != 0;
            for (int end = 0; end < cloth.Ends; end++)
            {
                bool endIn = ((set >> end) & 1) != 0;
                if (pickIn != endIn && cloth[pick, end] != endIn) return false;
            }
        }

        return true;
    }

    private static ulong[] Reach(Drawdown cloth, int start)
    {
        int strands = cloth.Ends + cloth.Picks;
        var reached = new ulong[(strands + 63) / 64];
        var queue = new Queue<int>([start]);
        while (queue.TryDequeue(out int strand))
        {
            for (int other = 0; other < strands; other++)
            {
                if (!LiesOn(cloth, strand, other) || Has(reached, other)) continue;
                reached[other >> 6] |= 1UL << (other & 63);
                queue.Enqueue(other);
            }
        }

        return reached;
    }

    private static bool LiesOn(Drawdown cloth, int upper, int lower) => (upper < cloth.Ends, lower < cloth.Ends) switch
    {
        (true, false) => cloth[lower - cloth.Ends, upper],
        (false, true) => !cloth[upper - cloth.Ends, lower],
        _ => false,
    };

    private static bool Has(ulong[] set, int member) => ((set[member >> 6] >> (member & 63)) & 1) != 0;
}
