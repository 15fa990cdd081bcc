using System.Collections.Immutable;
using System.Numerics;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Measures all runs of one value along packed lines.</summary>
/// <remarks>
/// A run starts at each change of value. Short runs are counted 64 starts at a time: a start whose line changes again L threads on is a
/// run of L. The few that are longer than <see cref="Short"/> are measured one by one.
/// </remarks>
internal sealed class FloatScan
{
    private const int Short = 8;

    private readonly int _threads;
    private readonly ClothReading _reading;
    private readonly ulong[] _changes;
    private readonly ulong[] _open;
    private readonly ulong[] _ended;
    private readonly ValueTally _clear;
    private readonly ValueTally _set;

    private FloatScan(int threads, ClothReading reading)
    {
        _threads = threads;
        _reading = reading;
        _changes = new ulong[Drawdown.WordsFor(threads) + 1];
        _open = new ulong[_changes.Length];
        _ended = new ulong[_changes.Length];
        _clear = new ValueTally(threads);
        _set = new ValueTally(threads);
    }

    /// <summary>Tallies the runs of 0 and of 1.</summary>
    /// <param name="rows">One row for each class of lines.</param>
    /// <param name="classes">The classes.</param>
    /// <param name="reading">Whether a line runs round or stops at its edges.</param>
    /// <param name="fits">How often a row fits into its line.</param>
    /// <param name="clearKind">What a run of 0 is.</param>
    /// <param name="setKind">What a run of 1 is.</param>
    public static (FloatTally Clear, FloatTally Set) Of(
        Drawdown rows, LineClasses classes, ClothReading reading, int fits, FloatKind clearKind, FloatKind setKind)
    {
        var scan = new FloatScan(rows.Ends, reading);
        for (int row = 0; row < rows.Picks; row++) scan.Line(rows.Row(row), classes.First[row], classes.Times[row]);
        return (scan._clear.Finish(clearKind, fits), scan._set.Finish(setKind, fits));
    }

    private void Line(ReadOnlySpan<ulong> row, int line, int times)
    {
        if (!MarkChanges(row))
        {
            ((row[0] & 1) != 0 ? _set : _clear).AddEndless(line, times);
            return;
        }

        Span<ulong> open = _open.AsSpan(0, row.Length);
        ReadOnlySpan<ulong> changes = _changes.AsSpan(0, row.Length);
        ReadOnlySpan<ulong> next = _changes.AsSpan(1, row.Length);
        changes.CopyTo(open);
        open[^1] &= Drawdown.LastMask(_threads);
        ulong left = ulong.MaxValue;
        for (int length = 1; length <= Short && left != 0; length++) left = EndRuns(row, open, changes, next, length, times, line);
        if (left != 0) MeasureLong(row, open, times, line);
    }

    // Ends all runs of one length; what is left of the starts is still open.
    private ulong EndRuns(
        ReadOnlySpan<ulong> row, Span<ulong> open, ReadOnlySpan<ulong> changes, ReadOnlySpan<ulong> next, int length, int times, int line)
    {
        ulong left = 0;
        int all = 0;
        int set = 0;
        Span<ulong> ended = _ended.AsSpan(0, row.Length);
        for (int w = 0; w < row.Length; w++)
        {
            ulong end = open[w] & ((changes[w] >> length) | (next[w] << (64 - length)));
            ulong still = open[w] ^ end;
            open[w] = still;
            left |= still;
            ended[w] = end;
            all += BitOperations.PopCount(end);
            set += BitOperations.PopCount(end & row[w]);
        }

        if (set > 0 && _set.Add(length, (long)set * times)) _set.Place(length, line, FirstStart(row, 0));
        if (all > set && _clear.Add(length, (long)(all - set) * times)) _clear.Place(length, line, FirstStart(row, ulong.MaxValue));
        return left;
    }

    // The first start among the runs just ended, of 1s when flip is 0, of 0s when it is all bits.
    private int FirstStart(ReadOnlySpan<ulong> row, ulong flip)
    {
        int w = 0;
        while ((_ended[w] & (row[w] ^ flip)) == 0) w++;
        return w * 64 + BitOperations.TrailingZeroCount(_ended[w] & (row[w] ^ flip));
    }

    private void MeasureLong(ReadOnlySpan<ulong> row, ReadOnlySpan<ulong> open, int times, int line)
    {
        for (int w = 0; w < open.Length; w++)
        {
            for (ulong rest = open[w]; rest != 0; rest &= rest - 1)
            {
                int start = w * 64 + BitOperations.TrailingZeroCount(rest);
                ValueTally tally = ((row[w] >> (start & 63)) & 1) != 0 ? _set : _clear;
                int length = EndOf(start) - start;
                if (tally.Add(length, times)) tally.Place(length, line, start);
            }
        }
    }

    // Marks the threads at which the value changes, and, past the last thread, the first changes of the next repeat or the edge.
    private bool MarkChanges(ReadOnlySpan<ulong> row)
    {
        int last = _threads - 1;
        ulong carry = (row[last >> 6] >> (last & 63)) & 1;
        ulong any = 0;
        for (int w = 0; w < row.Length; w++)
        {
            ulong word = row[w];
            ulong change = word ^ ((word << 1) | carry);
            if (w == row.Length - 1) change &= Drawdown.LastMask(_threads);
            carry = word >> 63;
            any |= change;
            _changes[w] = change;
        }

        _changes[row.Length] = 0;
        if (_reading == ClothReading.Cut)
        {
            _changes[0] |= 1;
            Mark(_threads);
            return true;
        }

        if (any == 0) return false;
        for (int i = 0; i < Short; i++)
        {
            int from = i % _threads;
            if (((_changes[from >> 6] >> (from & 63)) & 1) != 0) Mark(_threads + i);
        }

        return true;
    }

    private void Mark(int thread) => _changes[thread >> 6] |= 1UL << (thread & 63);

    // The change that ends a run longer than the short ones; past the last thread it lies in the next repeat.
    private int EndOf(int start)
    {
        int from = start + Short + 1;
        int end = from < _threads ? NextChange(from) : _threads;
        if (end < _threads || _reading == ClothReading.Cut) return Math.Min(end, _threads);
        return _threads + NextChange(Math.Max(0, from - _threads));
    }

    private int NextChange(int from)
    {
        int w = from >> 6;
        ulong word = _changes[w] & (ulong.MaxValue << (from & 63));
        while (word == 0)
        {
            if (++w >= _changes.Length) return _threads;
            word = _changes[w];
        }

        return w * 64 + BitOperations.TrailingZeroCount(word);
    }

    private sealed class ValueTally(int threads)
    {
        private readonly long[] _times = new long[threads + 1];
        private long _endless;
        private int _endlessLine = int.MaxValue;
        private int _longest;
        private int _line;
        private int _start;

        /// <summary>Counts floats of a length; true when they are the longest so far.</summary>
        public bool Add(int length, long times)
        {
            _times[length] += times;
            return length > _longest;
        }

        /// <summary>Notes where the longest so far begins.</summary>
        public void Place(int length, int line, int start)
        {
            _longest = length;
            _line = line;
            _start = start;
        }

        public void AddEndless(int line, int times)
        {
            _endless += times;
            _endlessLine = Math.Min(_endlessLine, line);
        }

        public FloatTally Finish(FloatKind kind, int fits)
        {
            var counts = ImmutableArray.CreateBuilder<FloatCount>();
            for (int length = 1; length < _times.Length; length++)
            {
                if (_times[length] > 0) counts.Add(new FloatCount(length, _times[length] * fits));
            }

            ThreadFloat? longest = _endless > 0 ? new ThreadFloat(kind, _endlessLine, 0, threads * fits, Endless: true)
                : _longest > 0 ? new ThreadFloat(kind, _line, _start, _longest, Endless: false)
                : null;
            return new FloatTally(kind, counts.ToImmutable(), _endless, longest);
        }
    }
}
