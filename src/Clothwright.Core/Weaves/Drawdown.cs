using System.Numerics;

namespace Clothwright.Core.Weaves;

/// <summary>The face of a cloth, thread by thread: which of warp and weft is on top at each crossing.</summary>
/// <remarks>
/// Row = pick, first pick first (nearest the weaver); column = end, end 1 first, at the left. 1 = warp on top.
/// Rows are packed in 64-bit words, end 1 in bit 0 of the first word; bits past the last end are 0.
/// </remarks>
public sealed partial class Drawdown : IEquatable<Drawdown>
{
    private readonly ulong[] _words;

    internal Drawdown(int ends, int picks, ulong[] words)
    {
        Ends = ends;
        Picks = picks;
        WordsPerPick = WordsFor(ends);
        _words = words;
    }

    /// <summary>Ends, above 0.</summary>
    public int Ends { get; }

    /// <summary>Picks, above 0.</summary>
    public int Picks { get; }

    /// <summary>64-bit words in one packed row.</summary>
    public int WordsPerPick { get; }

    /// <summary>Whether the warp is on top.</summary>
    /// <param name="pick">0-based pick.</param>
    /// <param name="end">0-based end.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such crossing.</exception>
    public bool this[int pick, int end]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfNegative(end);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(end, Ends);
            return ((Row(pick)[end >> 6] >> (end & 63)) & 1) != 0;
        }
    }

    /// <summary>The packed row of a pick.</summary>
    /// <param name="pick">0-based pick.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such pick.</exception>
    public ReadOnlySpan<ulong> Row(int pick) => _words.AsSpan(pick * WordsPerPick, WordsPerPick);

    /// <summary>All packed rows, one after the other.</summary>
    public ReadOnlySpan<ulong> Rows => _words;

    /// <summary>Makes a drawdown from a rule.</summary>
    /// <param name="ends">Ends, above 0.</param>
    /// <param name="picks">Picks, above 0.</param>
    /// <param name="warpOnTop">Whether the warp is on top, by 0-based pick and end.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no ends or no picks.</exception>
    public static Drawdown From(int ends, int picks, Func<int, int, bool> warpOnTop)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(ends, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(picks, 1);
        int perPick = WordsFor(ends);
        var words = new ulong[perPick * picks];
        for (int pick = 0; pick < picks; pick++)
        {
            for (int end = 0; end < ends; end++)
            {
                if (warpOnTop(pick, end)) words[pick * perPick + (end >> 6)] |= 1UL << (end & 63);
            }
        }

        return new Drawdown(ends, picks, words);
    }

    /// <inheritdoc />
    public bool Equals(Drawdown? other) =>
        other is not null && Ends == other.Ends && Picks == other.Picks && _words.AsSpan().SequenceEqual(other._words);

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as Drawdown);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Ends, Picks, LineHash(_words));

    internal static int WordsFor(int ends) => (ends + 63) >> 6;

    // The bits of the last word of a row that stand for ends.
    internal static ulong LastMask(int ends) => (ends & 63) == 0 ? ulong.MaxValue : (1UL << (ends & 63)) - 1;

    internal static ulong LineHash(ReadOnlySpan<ulong> line)
    {
        unchecked
        {
            // Multiply and fold, four words side by side; lines whose hashes meet are always compared in full.
            const ulong Odd = 0xD6E8FEB86659FD93UL;
            ulong a = 1, b = 2, c = 3, d = 4;
            int i = 0;
            for (; i + 4 <= line.Length; i += 4)
            {
                a = BitOperations.RotateLeft((a ^ line[i]) * Odd, 32);
                b = BitOperations.RotateLeft((b ^ line[i + 1]) * Odd, 32);
                c = BitOperations.RotateLeft((c ^ line[i + 2]) * Odd, 32);
                d = BitOperations.RotateLeft((d ^ line[i + 3]) * Odd, 32);
            }

            for (; i < line.Length; i++) a = BitOperations.RotateLeft((a ^ line[i]) * Odd, 32);
            ulong hash = (a * Odd) ^ BitOperations.RotateLeft(b * Odd, 16) ^ BitOperations.RotateLeft(c * Odd, 32) ^ BitOperations.RotateLeft(d * Odd, 48);
            hash = (hash ^ (hash >> 32)) * Odd;
            hash ^= hash >> 32;
            return hash;
        }
    }
}
