using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Runs of one value, by length.</summary>
/// <param name="threads">Threads along a line.</param>
internal sealed class RunTally(int threads)
{
    private readonly long[] _times = new long[threads + 1];
    private long _endless;
    private int _endlessLine = int.MaxValue;
    private int _longest;
    private int _line;
    private int _start;

    /// <summary>The longest length counted so far; 0 for none.</summary>
    public int LongestCounted
    {
        get
        {
            int length = _times.Length - 1;
            while (length > 0 && _times[length] == 0) length--;
            return length;
        }
    }

    /// <summary>Counts runs of a length.</summary>
    public void Add(int length, long times) => _times[length] += times;

    /// <summary>Notes where a run is; the longest is kept, of equals that on the lowest line, then with the lowest start.</summary>
    public void Place(int length, int line, int start)
    {
        if (length < _longest || (length == _longest && (line, start).CompareTo((_line, _start)) >= 0)) return;
        (_longest, _line, _start) = (length, line, start);
    }

    /// <summary>Counts lines of one value only.</summary>
    public void AddEndless(int line, int times)
    {
        _endless += times;
        _endlessLine = Math.Min(_endlessLine, line);
    }

    /// <summary>The tally.</summary>
    /// <param name="kind">What a run is.</param>
    /// <param name="fits">How often the threads fit into a line of the cloth.</param>
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
