using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Lines side by side, one bit a line, so that all of them are followed from thread to thread at once.</summary>
/// <remarks>Lines that stand for equally many others share words: what is counted in a word counts so many times.</remarks>
internal sealed class FloatLanes
{
    private FloatLanes(Drawdown table, int[] lineAt, int[] times)
    {
        Table = table;
        LineAt = lineAt;
        Times = times;
    }

    /// <summary>A row for each kind of thread crossed; bit = whether the warp is on top there, by lane.</summary>
    public Drawdown Table { get; }

    /// <summary>The line that each lane stands for, by its number in the cloth; -1 for an empty lane.</summary>
    public int[] LineAt { get; }

    /// <summary>How many lines each lane of a word stands for.</summary>
    public int[] Times { get; }

    /// <summary>Lays out lines.</summary>
    /// <param name="lines">The lines, sorted.</param>
    /// <param name="crossed">A row of crossings for each class of lines.</param>
    /// <param name="turned">The same table turned: a row for each class of threads crossed.</param>
    public static FloatLanes Of(LineClasses lines, Drawdown crossed, Drawdown turned)
    {
        int[] order = Order(lines.Times);
        bool asTheyAre = order.Length == lines.Count && order.AsSpan().SequenceEqual([.. Enumerable.Range(0, order.Length)]);
        Drawdown table = asTheyAre ? turned : crossed.Arranged(order).Transposed();
        var lineAt = new int[table.WordsPerPick * 64];
        Array.Fill(lineAt, -1);
        var times = new int[table.WordsPerPick];
        for (int lane = 0; lane < order.Length; lane++)
        {
            if (order[lane] < 0) continue;
            lineAt[lane] = lines.First[order[lane]];
            times[lane >> 6] = lines.Times[order[lane]];
        }

        return new FloatLanes(table, lineAt, times);
    }

    /// <summary>The lanes of a word that stand for a line.</summary>
    public ulong Filled(int word)
    {
        ulong filled = 0;
        for (int bit = 0; bit < 64; bit++)
        {
            if (LineAt[word * 64 + bit] >= 0) filled |= 1UL << bit;
        }

        return filled;
    }

    // Classes by the number of lines they stand for; a new word for each such number.
    private static int[] Order(ImmutableArray<int> times)
    {
        var order = new List<int>(times.Length);
        foreach (IGrouping<int, int> alike in Enumerable.Range(0, times.Length).GroupBy(c => times[c]))
        {
            while (order.Count % 64 != 0) order.Add(-1);
            order.AddRange(alike);
        }

        return [.. order];
    }
}
