using System.Collections.Immutable;

namespace Clothwright.Core.Weaves;

/// <summary>Ends, or picks, sorted into those that weave alike over the whole drawdown.</summary>
/// <remarks>
/// The number of classes of ends is the fewest shafts that can weave the cloth with one shaft an end; of picks, the fewest treadles
/// with one treadle a pick. Lines are told apart by a hash of their packed words and compared in full where hashes meet.
/// </remarks>
public sealed class LineClasses
{
    private LineClasses(ImmutableArray<int> classOf, ImmutableArray<int> first, ImmutableArray<int> times)
    {
        ClassOf = classOf;
        First = first;
        Times = times;
    }

    /// <summary>Class of each line, from 0, numbered by first appearance.</summary>
    public ImmutableArray<int> ClassOf { get; }

    /// <summary>The first line of each class, 0-based, rising.</summary>
    public ImmutableArray<int> First { get; }

    /// <summary>How many lines are in each class.</summary>
    public ImmutableArray<int> Times { get; }

    /// <summary>Number of classes.</summary>
    public int Count => First.Length;

    /// <summary>Sorts picks.</summary>
    /// <param name="cloth">The drawdown.</param>
    public static LineClasses OfPicks(Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        var classOf = new int[cloth.Picks];
        var first = ImmutableArray.CreateBuilder<int>();
        var times = new List<int>();
        var byHash = new Dictionary<ulong, int>();
        var nextWithHash = new List<int>();
        for (int pick = 0; pick < classOf.Length; pick++)
        {
            ReadOnlySpan<ulong> row = cloth.Row(pick);
            ulong hash = Drawdown.LineHash(row);
            int head = byHash.TryGetValue(hash, out int known) ? known : -1;
            int found = head;
            while (found >= 0 && !cloth.Row(first[found]).SequenceEqual(row)) found = nextWithHash[found];
            if (found < 0)
            {
                found = first.Count;
                byHash[hash] = found;
                nextWithHash.Add(head);
                first.Add(pick);
                times.Add(0);
            }

            classOf[pick] = found;
            times[found]++;
        }

        return new LineClasses(ImmutableArray.Create(classOf), first.ToImmutable(), [.. times]);
    }

    // Lines that are known to be of a kind, kinds numbered by first appearance.
    internal static LineClasses OfKinds(int[] kindOf, int kinds)
    {
        var first = new int[kinds];
        var times = new int[kinds];
        for (int line = 0; line < kindOf.Length; line++)
        {
            if (times[kindOf[line]]++ == 0) first[kindOf[line]] = line;
        }

        return new LineClasses(ImmutableArray.Create(kindOf), ImmutableArray.Create(first), ImmutableArray.Create(times));
    }

    /// <summary>Sorts ends.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <remarks>Ends that agree on one pick of each class agree on all, so only those picks are turned into columns.</remarks>
    public static LineClasses OfEnds(Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return OfPicks(cloth.Picked(OfPicks(cloth).First).Transposed());
    }
}
