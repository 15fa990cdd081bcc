using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>Lines in order of the number of crossings with warp on top.</summary>
internal sealed class SummedLines
{
    private readonly int[] _order;

    private SummedLines(int[] order, int[] sums)
    {
        _order = order;
        Sums = sums;
    }

    /// <summary>The sums, in order.</summary>
    public int[] Sums { get; }

    public static SummedLines Rising(ImmutableArray<int> sums, LineClasses classes, int crossed) => Sorted(sums, classes, crossed, falling: false);

    public static SummedLines Falling(ImmutableArray<int> sums, LineClasses classes, int crossed) => Sorted(sums, classes, crossed, falling: true);

    /// <summary>The lines from one place in the order to before another, in their order in the cloth.</summary>
    public ImmutableArray<int> Taken(int from, int to)
    {
        var taken = new bool[_order.Length];
        foreach (int line in _order.AsSpan(from, to - from)) taken[line] = true;
        var lines = ImmutableArray.CreateBuilder<int>(to - from);
        for (int line = 0; line < taken.Length; line++)
        {
            if (taken[line]) lines.Add(line);
        }

        return lines.MoveToImmutable();
    }

    // Counting sort: sums are whole numbers from 0 to the number of threads crossed.
    private static SummedLines Sorted(ImmutableArray<int> sumOf, LineClasses classes, int crossed, bool falling)
    {
        var keyOfClass = new int[sumOf.Length];
        var starts = new int[crossed + 2];
        for (int row = 0; row < keyOfClass.Length; row++)
        {
            keyOfClass[row] = falling ? crossed - sumOf[row] : sumOf[row];
            starts[keyOfClass[row] + 1] += classes.Times[row];
        }

        for (int key = 1; key < starts.Length; key++) starts[key] += starts[key - 1];
        var order = new int[classes.ClassOf.Length];
        var sums = new int[order.Length];
        for (int line = 0; line < order.Length; line++)
        {
            int key = keyOfClass[classes.ClassOf[line]];
            int at = starts[key]++;
            order[at] = line;
            sums[at] = falling ? crossed - key : key;
        }

        return new SummedLines(order, sums);
    }
}
