using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Counts the set bits of many vectors, word by word.</summary>
/// <remarks>
/// Sixteen vectors are added bit by bit into ones, twos, fours, eights and a carry of sixteens, and only the carry is counted
/// (carry-save adders after Harley and Seal; H. S. Warren, Hacker's Delight, section 5-1, from memory).
/// </remarks>
internal sealed class RunCounter
{
    /// <summary>Vectors taken in at a time.</summary>
    public const int Block = 16;

    private readonly long[] _sixteens = new long[Vector512<ulong>.Count];
    private Vector512<ulong> _ones;
    private Vector512<ulong> _twos;
    private Vector512<ulong> _fours;
    private Vector512<ulong> _eights;

    /// <summary>Takes in a block.</summary>
    /// <param name="block"><see cref="Block"/> vectors.</param>
    public void Add(ReadOnlySpan<Vector512<ulong>> block)
    {
        // Held in locals while the block lasts: fields would be written back at every step.
        Vector512<ulong> ones = _ones, twos = _twos, fours = _fours, eights = _eights;
        Vector512<ulong> fourth = Four(ref ones, ref twos, block);
        Vector512<ulong> eighth = Sum(ref fours, fourth, Four(ref ones, ref twos, block[4..]));
        fourth = Four(ref ones, ref twos, block[8..]);
        Vector512<ulong> otherEighth = Sum(ref fours, fourth, Four(ref ones, ref twos, block[12..]));
        Vector512<ulong> sixteens = Sum(ref eights, eighth, otherEighth);
        (_ones, _twos, _fours, _eights) = (ones, twos, fours, eights);
        if (sixteens == Vector512<ulong>.Zero) return;
        for (int word = 0; word < _sixteens.Length; word++) _sixteens[word] += BitOperations.PopCount(sixteens[word]);
    }

    /// <summary>The bits counted in a word.</summary>
    /// <param name="word">Word of the vectors.</param>
    public long Count(int word) => 16 * _sixteens[word]
        + 8 * BitOperations.PopCount(_eights[word])
        + 4 * BitOperations.PopCount(_fours[word])
        + 2 * BitOperations.PopCount(_twos[word])
        + BitOperations.PopCount(_ones[word]);

    /// <summary>Begins anew.</summary>
    public void Clear()
    {
        Array.Clear(_sixteens);
        _ones = _twos = _fours = _eights = Vector512<ulong>.Zero;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<ulong> Four(ref Vector512<ulong> ones, ref Vector512<ulong> twos, ReadOnlySpan<Vector512<ulong>> block)
    {
        Vector512<ulong> pair = Sum(ref ones, block[0], block[1]);
        return Sum(ref twos, pair, Sum(ref ones, block[2], block[3]));
    }

    // Adds two bits to a third in each place and gives the carry.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<ulong> Sum(ref Vector512<ulong> sum, Vector512<ulong> a, Vector512<ulong> b)
    {
        Vector512<ulong> either = sum ^ a;
        Vector512<ulong> carry = (sum & a) | (either & b);
        sum = either ^ b;
        return carry;
    }
}
