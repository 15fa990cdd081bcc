using System.Numerics;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Finds the first run of a length along packed lines.</summary>
internal static class FirstRun
{
    /// <summary>The line and start of the first run of a length; lines first, then starts.</summary>
    /// <param name="rows">One row for each class of lines, in the order of their first lines.</param>
    /// <param name="threads">Threads along a line that count.</param>
    /// <param name="length">Threads in the run, 1 to 63.</param>
    /// <param name="value">The value of the run.</param>
    /// <param name="reading">Whether a line runs round or stops at its edges.</param>
    /// <returns>0-based row and thread; null if there is none.</returns>
    public static (int Row, int Start)? Of(Drawdown rows, int threads, int length, bool value, ClothReading reading)
    {
        var changes = new ulong[Drawdown.WordsFor(threads) + 1];
        ulong flip = value ? 0 : ulong.MaxValue;
        for (int row = 0; row < rows.Picks; row++)
        {
            ReadOnlySpan<ulong> line = rows.Row(row);
            Mark(line, changes, threads, length, reading);
            for (int w = 0; w < changes.Length - 1; w++)
            {
                ulong starts = changes[w] & (line[w] ^ flip);
                if (w == changes.Length - 2) starts &= Drawdown.LastMask(threads);
                for (int within = 1; within < length && starts != 0; within++) starts &= ~After(changes, w, within);
                starts &= After(changes, w, length);
                if (starts != 0) return (row, w * 64 + BitOperations.TrailingZeroCount(starts));
            }
        }

        return null;
    }

    private static ulong After(ulong[] changes, int word, int threads) => (changes[word] >> threads) | (changes[word + 1] << (64 - threads));

    // The threads at which the value changes, and, past the last thread, those of the next repeat or the edge.
    private static void Mark(ReadOnlySpan<ulong> line, ulong[] changes, int threads, int length, ClothReading reading)
    {
        int words = changes.Length - 1;
        ulong carry = (line[(threads - 1) >> 6] >> ((threads - 1) & 63)) & 1;
        for (int w = 0; w < words; w++)
        {
            changes[w] = line[w] ^ ((line[w] << 1) | carry);
            carry = line[w] >> 63;
        }

        changes[words - 1] &= Drawdown.LastMask(threads);
        changes[words] = 0;
        if (reading == ClothReading.Cut)
        {
            changes[0] |= 1;
            changes[threads >> 6] |= 1UL << (threads & 63);
            return;
        }

        for (int i = 0; i < length; i++)
        {
            int from = i % threads;
            if (((changes[from >> 6] >> (from & 63)) & 1) != 0) changes[(threads + i) >> 6] |= 1UL << ((threads + i) & 63);
        }
    }
}
