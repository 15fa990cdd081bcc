using System.Runtime.Intrinsics;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Follows lines in vectors of eight words, the widest there are; a machine with narrower ones joins several.</summary>
internal sealed class WideFollower : LaneFollower
{
    private const int LongestCounted = 12;

    private readonly RunCounter[] _counters = [.. Enumerable.Range(0, 2 * LongestCounted).Select(_ => new RunCounter())];
    private readonly AlignedVectors _block = new(2 * LongestCounted * RunCounter.Block);
    private readonly AlignedVectors _ages = new(LongestCounted + 1);

    /// <inheritdoc />
    public override int Words => Vector512<ulong>.Count;

    /// <inheritdoc />
    public override int Longest => LongestCounted;

    /// <inheritdoc />
    public override void Follow(FloatScan scan, int word, int words)
    {
        Span<Vector512<ulong>> block = _block.Span;
        Span<Vector512<ulong>> ages = _ages.Span;
        ages.Clear();
        foreach (RunCounter counter in _counters) counter.Clear();
        var before = Vector512.Create(scan.Before);
        Vector512<ulong> seen = Vector512<ulong>.Zero, older = Vector512<ulong>.Zero;
        int threads = scan.ClassAt.Length;
        for (int first = 0; first < threads; first += RunCounter.Block)
        {
            int count = Math.Min(RunCounter.Block, threads - first);
            if (count < RunCounter.Block) block.Clear();
            for (int i = 0; i < count; i++)
            {
                ReadOnlySpan<ulong> row = scan.Lanes.Table.Row(scan.ClassAt[first + i]).Slice(word, words);
                Vector512<ulong> value = words == Vector512<ulong>.Count ? Vector512.Create(row) : Partial(row);
                Vector512<ulong> change = value ^ before;
                seen |= change;
                Step(block[i..], ages, change, before);
                Vector512<ulong> longer = older & change;
                if (longer != Vector512<ulong>.Zero) EndLong(scan, longer, before, first + i, word);
                Vector512<ulong> grown = ages[LongestCounted];
                if (grown != Vector512<ulong>.Zero) NoteStarts(scan, grown, first + i - LongestCounted);
                older = Vector512.AndNot(older, change) | grown;
                before = value;
            }

            for (int i = 0; i < _counters.Length; i++) _counters[i].Add(block.Slice(i * RunCounter.Block, RunCounter.Block));
        }

        for (int slot = 0; slot < words; slot++)
        {
            for (int age = 0; age < LongestCounted; age++)
            {
                long all = _counters[2 * age].Count(slot);
                if (all > 0) scan.Count(age + 1, word + slot, all, _counters[(2 * age) + 1].Count(slot));
            }
        }

        for (int age = 0; age < LongestCounted; age++) ages[age].CopyTo(scan.Ages, age * Vector512<ulong>.Count);
        older.CopyTo(scan.Older);
        before.CopyTo(scan.Before);
        seen.CopyTo(scan.Seen);
    }

    // Ends the runs of the lines that change at a thread, and lets the others grow.
    private static void Step(Span<Vector512<ulong>> block, Span<Vector512<ulong>> ages, Vector512<ulong> change, Vector512<ulong> value)
    {
        for (int age = LongestCounted - 1; age >= 0; age--)
        {
            Vector512<ulong> run = ages[age];
            Vector512<ulong> ended = run & change;
            block[2 * age * RunCounter.Block] = ended;
            block[((2 * age) + 1) * RunCounter.Block] = ended & value;
            ages[age + 1] = Vector512.AndNot(run, change);
        }

        ages[0] = change;
    }

    private static void EndLong(FloatScan scan, Vector512<ulong> ended, Vector512<ulong> value, int at, int word)
    {
        for (int slot = 0; slot < Vector512<ulong>.Count; slot++)
        {
            if (ended[slot] != 0) scan.EndLong(ended[slot], value[slot], at, word + slot, slot);
        }
    }

    private static void NoteStarts(FloatScan scan, Vector512<ulong> grown, int start)
    {
        for (int slot = 0; slot < Vector512<ulong>.Count; slot++)
        {
            if (grown[slot] != 0) scan.NoteStarts(grown[slot], start, slot);
        }
    }

    private static Vector512<ulong> Partial(ReadOnlySpan<ulong> words)
    {
        Span<ulong> all = stackalloc ulong[Vector512<ulong>.Count];
        all.Clear();
        words.CopyTo(all);
        return Vector512.Create(all);
    }
}
