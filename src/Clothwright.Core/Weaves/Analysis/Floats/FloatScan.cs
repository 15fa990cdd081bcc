using System.Numerics;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Measures all runs of one value along the lines of a cloth, many lines side by side.</summary>
/// <remarks>
/// All lines are followed from thread to thread. Age k holds the lines whose value last changed k threads ago; where a line changes
/// again, its run of k ends. Runs longer than the follower counts are few: their starts are noted one by one.
/// </remarks>
internal sealed class FloatScan
{
    private readonly ClothReading _reading;
    private readonly LaneFollower _follower;
    private readonly int[] _starts;

    private FloatScan(FloatLanes lanes, int[] classAt, ClothReading reading, LaneFollower follower)
    {
        Lanes = lanes;
        ClassAt = classAt;
        _reading = reading;
        _follower = follower;
        _starts = new int[follower.Words * 64];
        Ages = new ulong[follower.Longest * follower.Words];
        Older = new ulong[follower.Words];
        Before = new ulong[follower.Words];
        Seen = new ulong[follower.Words];
        Clear = new RunTally(classAt.Length);
        Set = new RunTally(classAt.Length);
    }

    /// <summary>The lines.</summary>
    public FloatLanes Lanes { get; }

    /// <summary>Class of each thread crossed.</summary>
    public int[] ClassAt { get; }

    /// <summary>Runs of 0.</summary>
    public RunTally Clear { get; }

    /// <summary>Runs of 1.</summary>
    public RunTally Set { get; }

    /// <summary>Lanes that last changed k + 1 threads ago: k by word.</summary>
    public ulong[] Ages { get; }

    /// <summary>Lanes whose last change lies further back than the follower counts, by word.</summary>
    public ulong[] Older { get; }

    /// <summary>Lanes of 1 on the last thread, by word.</summary>
    public ulong[] Before { get; }

    /// <summary>Lanes that changed at all, by word.</summary>
    public ulong[] Seen { get; }

    /// <summary>Tallies the runs of 0 and of 1.</summary>
    /// <param name="lanes">The lines.</param>
    /// <param name="classAt">Class of each thread crossed: a row of the lanes' table.</param>
    /// <param name="reading">Whether a line runs round or stops at its edges.</param>
    /// <param name="rows">One row for each class of lines, where the first short run is looked for.</param>
    /// <param name="lines">The classes of lines.</param>
    /// <param name="follower">How the lines are followed; as suits the machine if left out.</param>
    public static (RunTally Clear, RunTally Set) Of(
        FloatLanes lanes, int[] classAt, ClothReading reading, Drawdown rows, LineClasses lines, LaneFollower? follower = null)
    {
        var scan = new FloatScan(lanes, classAt, reading, follower ?? LaneFollower.ForThisMachine());
        for (int word = 0; word < lanes.Times.Length; word += scan._follower.Words) scan.Follow(word);
        scan.PlaceShort(scan.Clear, value: false, rows, lines);
        scan.PlaceShort(scan.Set, value: true, rows, lines);
        return (scan.Clear, scan.Set);
    }

    /// <summary>Counts runs that ended in a word.</summary>
    public void Count(int length, int word, long all, long set)
    {
        Set.Add(length, set * Lanes.Times[word]);
        Clear.Add(length, (all - set) * Lanes.Times[word]);
    }

    /// <summary>Notes where runs that have become long began.</summary>
    public void NoteStarts(ulong grown, int start, int slot)
    {
        for (; grown != 0; grown &= grown - 1) _starts[slot * 64 + BitOperations.TrailingZeroCount(grown)] = start;
    }

    /// <summary>Counts and places long runs that end at a thread.</summary>
    public void EndLong(ulong ended, ulong value, int at, int word, int slot)
    {
        for (; ended != 0; ended &= ended - 1)
        {
            int bit = BitOperations.TrailingZeroCount(ended);
            int start = _starts[slot * 64 + bit];
            RunTally tally = ((value >> bit) & 1) != 0 ? Set : Clear;
            tally.Add(at - start, Lanes.Times[word]);
            tally.Place(at - start, Lanes.LineAt[word * 64 + bit], start);
        }
    }

    private ulong Value(int thread, int word) => Lanes.Table.Row(ClassAt[thread])[word];

    // Follows a few words from the first thread to the last, and each round again until every run has ended.
    private void Follow(int word)
    {
        int words = Math.Min(_follower.Words, Lanes.Times.Length - word);
        Array.Clear(Before);
        for (int slot = 0; slot < words; slot++)
        {
            ulong before = _reading == ClothReading.Cut ? ~Value(0, word + slot) : Value(ClassAt.Length - 1, word + slot);
            Before[slot] = before & Lanes.Filled(word + slot);
        }

        _follower.Follow(this, word, words);
        for (int slot = 0; slot < words; slot++)
        {
            ulong filled = Lanes.Filled(word + slot);
            Endless(filled & ~Seen[slot], word + slot);
            Close(filled & Seen[slot], word, slot);
        }
    }

    private void Endless(ulong endless, int word)
    {
        for (; endless != 0; endless &= endless - 1)
        {
            int bit = BitOperations.TrailingZeroCount(endless);
            (((Value(0, word) >> bit) & 1) != 0 ? Set : Clear).AddEndless(Lanes.LineAt[word * 64 + bit], Lanes.Times[word]);
        }
    }

    // The runs still open end at the first change of the next round, or at the edge.
    private void Close(ulong open, int word, int slot)
    {
        int longest = _follower.Longest, words = _follower.Words;
        ulong before = Before[slot];
        for (int at = ClassAt.Length; open != 0; at++)
        {
            ulong value = _reading == ClothReading.Cut ? ~before : Value(at - ClassAt.Length, word + slot);
            ulong change = value ^ before, ended = change & open;
            EndLong(Older[slot] & ended, before, at, word + slot, slot);
            ulong grown = Ages[(longest - 1) * words + slot];
            if ((grown & ended) != 0) CountEnded(longest, grown & ended, before, word + slot);
            NoteStarts(grown & ~change, at - longest, slot);
            Older[slot] = (Older[slot] | grown) & ~change;
            for (int age = longest - 2; age >= 0; age--)
            {
                ulong run = Ages[age * words + slot];
                if ((run & ended) != 0) CountEnded(age + 1, run & ended, before, word + slot);
                Ages[(age + 1) * words + slot] = run & ~change;
            }

            Ages[slot] = change;
            open &= ~change;
            before = value;
        }
    }

    private void CountEnded(int length, ulong ended, ulong value, int word) =>
        Count(length, word, BitOperations.PopCount(ended), BitOperations.PopCount(ended & value));

    private void PlaceShort(RunTally tally, bool value, Drawdown rows, LineClasses lines)
    {
        int longest = tally.LongestCounted;
        if (longest == 0 || longest > _follower.Longest) return;
        if (FirstRun.Of(rows, ClassAt.Length, longest, value, _reading) is var (row, start)) tally.Place(longest, lines.First[row], start);
    }
}
