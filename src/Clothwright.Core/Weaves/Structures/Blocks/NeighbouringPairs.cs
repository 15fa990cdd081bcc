using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Threadings on four shafts that are woven by lifting two neighbouring shafts (overshot, crackle, name drafts).</summary>
public static class NeighbouringPairs
{
    /// <summary>Whether every end lies on a shaft next to that of the end before, so that tabby 13 / 24 is there; read round the repeat.</summary>
    /// <param name="threading">Shafts 1 to 4.</param>
    public static bool KeepsParity(IReadOnlyList<int> threading) =>
        Enumerable.Range(0, threading.Count).All(i => AreNext(threading[i], threading[(i + 1) % threading.Count]));

    /// <summary>The longest weft float: the longest run of ends within one pair of neighbouring shafts, read round the repeat.</summary>
    /// <param name="threading">Shafts 1 to 4.</param>
    /// <returns>Ends floated over; null if the float is endless.</returns>
    public static int? LongestFloat(IReadOnlyList<int> threading)
    {
        int longest = 0;
        for (int block = 1; block <= 4; block++)
        {
            if (threading.All(s => IsIn(block, s))) return null;
            int run = 0;
            for (int i = 0; i < 2 * threading.Count; i++)
            {
                run = IsIn(block, threading[i % threading.Count]) ? run + 1 : 0;
                longest = Math.Max(longest, run);
            }
        }

        return longest;
    }

    /// <summary>The block of the pair on which two neighbouring ends lie: 1 for shafts 1 2, … 4 for shafts 4 1.</summary>
    internal static int BlockOf(int shaft, int next) => DrawOrder.Wrap(shaft + 1, 4) == next ? shaft : next;

    /// <summary>Whether a shaft belongs to a block: the block's own number or the next.</summary>
    internal static bool IsIn(int block, int shaft) => shaft == block || shaft == DrawOrder.Wrap(block + 1, 4);

    /// <summary>The pattern lift of a block: the two shafts not in it.</summary>
    internal static ShaftSet LiftOf(int block) => ShaftSet.Of(DrawOrder.Wrap(block + 2, 4), DrawOrder.Wrap(block + 3, 4));

    internal static bool AreNext(int shaft, int next) => Math.Abs(shaft - next) is 1 or 3;

    /// <summary>Pattern picks with tabby 13 / 24 by turns after each; gone through twice where the picks are odd in number.</summary>
    internal static Weave WithTabby(string name, Rule rule, IReadOnlyList<int> threading, IReadOnlyList<ShaftSet> pattern)
    {
        IEnumerable<ShaftSet> all = pattern.Count % 2 == 0 ? pattern : pattern.Concat(pattern);
        ShaftSet[] lifts = [.. all.SelectMany((lift, i) => new[] { lift, i % 2 == 0 ? ShaftSet.Of(1, 3) : ShaftSet.Of(2, 4) })];
        return Weave.FromLifts(name, rule, threading, lifts).WithPatternPicks(p => p % 2 == 0);
    }
}
