using System.Collections.Immutable;
using System.Numerics;

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

    public static SummedLines Rising(Drawdown rows, LineClasses classes) => Sorted(rows, classes, falling: false);

    public static SummedLines Falling(Drawdown rows, LineClasses classes) => Sorted(rows, classes, falling: true);

    /// <summary>The lines from one place in the order to before another, in their order in the cloth.</summary>
    public ImmutableArray<int> Taken(int from, int to)
    {
        int[] lines = _order[from..to];
        Array.Sort(lines);
        return ImmutableArray.Create(lines);
    }

    // Counting sort: sums are whole numbers from 0 to the number of threads crossed.
    private static SummedLines Sorted(Drawdown rows, LineClasses classes, bool falling)
    {
        int crossed = rows.Ends;
        var keyOfClass = new int[rows.Picks];
        var starts = new int[crossed + 2];
        for (int row = 0; row < keyOfClass.Length; row++)
        {
            int sum = 0;
            foreach (ulong word in rows.Row(row)) sum += BitOperations.PopCount(word);
            keyOfClass[row] = falling ? crossed - sum : sum;
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
