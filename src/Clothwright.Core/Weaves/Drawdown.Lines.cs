using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;

namespace Clothwright.Core.Weaves;

public sealed partial class Drawdown
{
    /// <summary>Share of the crossings at which the warp is on top, 0 to 1.</summary>
    public double WarpFaceFraction => (double)WarpOnTop / ((long)Ends * Picks);

    /// <summary>Crossings at which the warp is on top.</summary>
    public long WarpOnTop
    {
        get
        {
            long count = 0;
            foreach (ulong word in _words) count += BitOperations.PopCount(word);
            return count;
        }
    }

    /// <summary>Ends and picks exchanged, the values kept: a table for reading columns fast, not the cloth turned.</summary>
    public Drawdown Transposed()
    {
        int perLine = WordsFor(Picks);
        var words = new ulong[perLine * Ends];
        Span<ulong> block = stackalloc ulong[64];
        Span<Vector256<ulong>> four = stackalloc Vector256<ulong>[64];
        for (int pickBlock = 0; pickBlock < perLine; pickBlock++)
        {
            int firstPick = pickBlock * 64;
            int pickCount = Math.Min(64, Picks - firstPick);
            int endBlock = 0;
            if (Vector256.IsHardwareAccelerated)
            {
                for (; endBlock + Vector256<ulong>.Count <= WordsPerPick; endBlock += Vector256<ulong>.Count)
                {
                    four.Clear();
                    for (int i = 0, at = firstPick * WordsPerPick + endBlock; i < pickCount; i++, at += WordsPerPick) four[i] = Vector256.Create(_words.AsSpan(at, 4));
                    BitBlock.Transpose(four);
                    for (int part = 0; part < Vector256<ulong>.Count; part++)
                    {
                        int firstEnd = (endBlock + part) * 64;
                        int endCount = Math.Min(64, Ends - firstEnd);
                        for (int i = 0, at = firstEnd * perLine + pickBlock; i < endCount; i++, at += perLine) words[at] = four[i][part];
                    }
                }
            }

            for (; endBlock < WordsPerPick; endBlock++)
            {
                block.Clear();
                for (int i = 0, at = firstPick * WordsPerPick + endBlock; i < pickCount; i++, at += WordsPerPick) block[i] = _words[at];
                BitBlock.Transpose(block);
                int endCount = Math.Min(64, Ends - endBlock * 64);
                for (int i = 0, at = endBlock * 64 * perLine + pickBlock; i < endCount; i++, at += perLine) words[at] = block[i];
            }
        }

        return new Drawdown(Picks, Ends, words);
    }

    /// <summary>Every crossing the other way: what was warp on top is weft on top.</summary>
    public Drawdown Complement()
    {
        var words = new ulong[_words.Length];
        for (int i = 0; i < words.Length; i++) words[i] = ~_words[i];
        ulong mask = LastMask(Ends);
        for (int i = WordsPerPick - 1; i < words.Length; i += WordsPerPick) words[i] &= mask;
        return new Drawdown(Ends, Picks, words);
    }

    /// <summary>The other face of the cloth, turned over side to side: complement, with the last end first.</summary>
    public Drawdown OtherFace() => Complement().EndsReversed();

    /// <summary>The cloth turned a quarter clockwise: picks become ends. A twill line changes hand.</summary>
    public Drawdown TurnedClockwise() => EndsReversed().Transposed().Complement();

    /// <summary>The last end first.</summary>
    public Drawdown EndsReversed() => From(Ends, Picks, (pick, end) => this[pick, Ends - 1 - end]);

    /// <summary>The last pick first.</summary>
    public Drawdown PicksReversed()
    {
        var words = new ulong[_words.Length];
        for (int pick = 0; pick < Picks; pick++) Row(Picks - 1 - pick).CopyTo(words.AsSpan(pick * WordsPerPick));
        return new Drawdown(Ends, Picks, words);
    }

    /// <summary>A piece cut out, or, where it reaches past the edge, the drawdown repeated and cut.</summary>
    /// <param name="firstEnd">0-based first end of the piece.</param>
    /// <param name="ends">Ends of the piece, above 0.</param>
    /// <param name="firstPick">0-based first pick of the piece.</param>
    /// <param name="picks">Picks of the piece, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A start is below 0, or the piece has no ends or no picks.</exception>
    public Drawdown Piece(int firstEnd, int ends, int firstPick, int picks)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(firstEnd);
        ArgumentOutOfRangeException.ThrowIfNegative(firstPick);
        ArgumentOutOfRangeException.ThrowIfLessThan(ends, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(picks, 1);
        return From(ends, picks, (pick, end) => this[(firstPick + pick) % Picks, (firstEnd + end) % Ends]);
    }

    /// <summary>The drawdown repeated, from end 1 and pick 1, to a size.</summary>
    /// <param name="ends">Ends, above 0.</param>
    /// <param name="picks">Picks, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no ends or no picks.</exception>
    public Drawdown Repeated(int ends, int picks) => Piece(0, ends, 0, picks);

    // The picks named, rising; all of them are the drawdown itself.
    internal Drawdown Picked(ImmutableArray<int> picks)
    {
        if (picks.Length == Picks && picks[^1] == Picks - 1 && picks[0] == 0) return this;
        var words = new ulong[picks.Length * WordsPerPick];
        for (int i = 0; i < picks.Length; i++) Row(picks[i]).CopyTo(words.AsSpan(i * WordsPerPick));
        return new Drawdown(Ends, picks.Length, words);
    }

    // The picks named, in that order; an empty row for -1.
    internal Drawdown Arranged(ReadOnlySpan<int> picks)
    {
        var words = new ulong[picks.Length * WordsPerPick];
        for (int i = 0; i < picks.Length; i++)
        {
            if (picks[i] >= 0) Row(picks[i]).CopyTo(words.AsSpan(i * WordsPerPick));
        }

        return new Drawdown(Ends, picks.Length, words);
    }

    // The ends named, each as a packed row over the picks.
    internal Drawdown EndsAsRows(ImmutableArray<int> ends)
    {
        // Turning the whole table costs about as much as reading one crossing in eight.
        if (ends.Length > Math.Max(8, Ends / 8)) return Transposed().Picked(ends);
        int perLine = WordsFor(Picks);
        var words = new ulong[perLine * ends.Length];
        for (int i = 0; i < ends.Length; i++)
        {
            Span<ulong> line = words.AsSpan(i * perLine, perLine);
            int shift = ends[i] & 63;
            int at = ends[i] >> 6;
            for (int pick = 0; pick < Picks; pick++, at += WordsPerPick) line[pick >> 6] |= ((_words[at] >> shift) & 1) << (pick & 63);
        }

        return new Drawdown(Picks, ends.Length, words);
    }
}
