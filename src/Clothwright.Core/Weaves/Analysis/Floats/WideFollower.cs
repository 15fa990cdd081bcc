using System.Numerics;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Follows lines in the widest vectors of the machine.</summary>
internal sealed class WideFollower : LaneFollower
{
    private const int LongestCounted = 12;

    private readonly RunCounter[] _counters = [.. Enumerable.Range(0, 2 * LongestCounted).Select(_ => new RunCounter())];
    private readonly Vector<ulong>[] _block = new Vector<ulong>[2 * LongestCounted * RunCounter.Block];
    private readonly Vector<ulong>[] _ages = new Vector<ulong>[LongestCounted + 1];

    /// <inheritdoc />
    public override int Words => Vector<ulong>.Count;

    /// <inheritdoc />
    public override int Longest => LongestCounted;

    /// <inheritdoc />
    public override void Follow(FloatScan scan, int word, int words)
    {
        Array.Clear(_ages);
        foreach (RunCounter counter in _counters) counter.Clear();
        var before = new Vector<ulong>(scan.Before);
        Vector<ulong> seen = Vector<ulong>.Zero, older = Vector<ulong>.Zero;
        int threads = scan.ClassAt.Length;
        for (int first = 0; first < threads; first += RunCounter.Block)
        {
            int count = Math.Min(RunCounter.Block, threads - first);
            if (count < RunCounter.Block) Array.Clear(_block);
            for (int i = 0; i < count; i++)
            {
                ReadOnlySpan<ulong> row = scan.Lanes.Table.Row(scan.ClassAt[first + i]).Slice(word, words);
                Vector<ulong> value = words == Vector<ulong>.Count ? new Vector<ulong>(row) : Partial(row);
                Vector<ulong> change = value ^ before;
                seen |= change;
                Step(_block.AsSpan(i), change, before);
                Vector<ulong> longer = older & change;
                if (longer != Vector<ulong>.Zero) EndLong(scan, longer, before, first + i, word);
                Vector<ulong> grown = _ages[LongestCounted];
                if (grown != Vector<ulong>.Zero) NoteStarts(scan, grown, first + i - LongestCounted);
                older = Vector.AndNot(older, change) | grown;
                before = value;
            }

            for (int i = 0; i < _counters.Length; i++) _counters[i].Add(_block.AsSpan(i * RunCounter.Block, RunCounter.Block));
        }

        for (int slot = 0; slot < words; slot++)
        {
            for (int age = 0; age < LongestCounted; age++)
            {
                long all = _counters[2 * age].Count(slot);
                if (all > 0) scan.Count(age + 1, word + slot, all, _counters[(2 * age) + 1].Count(slot));
            }
        }

        for (int age = 0; age < LongestCounted; age++) _ages[age].CopyTo(scan.Ages, age * Vector<ulong>.Count);
        older.CopyTo(scan.Older);
        before.CopyTo(scan.Before);
        seen.CopyTo(scan.Seen);
    }

    // Ends the runs of the lines that change at a thread, and lets the others grow.
    private void Step(Span<Vector<ulong>> block, Vector<ulong> change, Vector<ulong> value)
    {
        Span<Vector<ulong>> ages = _ages;
        for (int age = LongestCounted - 1; age >= 0; age--)
        {
            Vector<ulong> run = ages[age];
            Vector<ulong> ended = run & change;
            block[2 * age * RunCounter.Block] = ended;
            block[((2 * age) + 1) * RunCounter.Block] = ended & value;
            ages[age + 1] = Vector.AndNot(run, change);
        }

        ages[0] = change;
    }

    private static void EndLong(FloatScan scan, Vector<ulong> ended, Vector<ulong> value, int at, int word)
    {
        for (int slot = 0; slot < Vector<ulong>.Count; slot++)
        {
            if (ended[slot] != 0) scan.EndLong(ended[slot], value[slot], at, word + slot, slot);
        }
    }

    private static void NoteStarts(FloatScan scan, Vector<ulong> grown, int start)
    {
        for (int slot = 0; slot < Vector<ulong>.Count; slot++)
        {
            if (grown[slot] != 0) scan.NoteStarts(grown[slot], start, slot);
        }
    }

    private static Vector<ulong> Partial(ReadOnlySpan<ulong> words)
    {
        Span<ulong> all = stackalloc ulong[Vector<ulong>.Count];
        all.Clear();
        words.CopyTo(all);
        return new Vector<ulong>(all);
    }
}
