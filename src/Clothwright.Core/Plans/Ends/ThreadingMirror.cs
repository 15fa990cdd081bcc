using System.Collections.Immutable;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Plans.Ends;

/// <summary>Finds how many ends a repeat has to be followed by so that left and right edge mirror each other.</summary>
public static class ThreadingMirror
{
    /// <summary>The fewest ends, from the start of the repeat, that make any number of repeats read the same from both sides.</summary>
    /// <param name="threading">One repeat.</param>
    /// <returns>0 to one less than the repeat; 0 also when no number does, as in a straight draw.</returns>
    /// <remarks>A point draw 1 2 3 4 3 2 needs 1: … 4 3 2 | 1.</remarks>
    public static int BalancingEnds(ImmutableArray<ShaftSet> threading)
    {
        int repeat = threading.Length;
        for (int extra = 0; extra < repeat; extra++)
        {
            if (Mirrors(threading, extra)) return extra;
        }

        return 0;
    }

    // Thread i from the left equals thread i from the right end of repeats + extra; the repeats cancel out round the cycle.
    private static bool Mirrors(ImmutableArray<ShaftSet> threading, int extra)
    {
        int repeat = threading.Length;
        for (int i = 0; i < repeat; i++)
        {
            int mirrored = ((extra - 1 - i) % repeat + repeat) % repeat;
            if (threading[i] != threading[mirrored]) return false;
        }

        return true;
    }
}
