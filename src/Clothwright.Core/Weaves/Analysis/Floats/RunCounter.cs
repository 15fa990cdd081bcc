using System.Numerics;
using System.Runtime.CompilerServices;

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

    private readonly long[] _sixteens = new long[Vector<ulong>.Count];
    private Vector<ulong> _ones;
    private Vector<ulong> _twos;
    private Vector<ulong> _fours;
    private Vector<ulong> _eights;

    /// <summary>Takes in a block.</summary>
    /// <param name="block"><see cref="Block"/> vectors.</param>
    public void Add(ReadOnlySpan<Vector<ulong>> block)
    {
        // Held in locals while the block lasts: fields would be written back at every step.
        Vector<ulong> ones = _ones, twos = _twos, fours = _fours, eights = _eights;
        Vector<ulong> fourth = Four(ref ones, ref twos, block);
        Vector<ulong> eighth = Sum(ref fours, fourth, Four(ref ones, ref twos, block[4..]));
        fourth = Four(ref ones, ref twos, block[8..]);
        Vector<ulong> otherEighth = Sum(ref fours, fourth, Four(ref ones, ref twos, block[12..]));
        Vector<ulong> sixteens = Sum(ref eights, eighth, otherEighth);
        (_ones, _twos, _fours, _eights) = (ones, twos, fours, eights);
        if (sixteens == Vector<ulong>.Zero) return;
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
        _ones = _twos = _fours = _eights = Vector<ulong>.Zero;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<ulong> Four(ref Vector<ulong> ones, ref Vector<ulong> twos, ReadOnlySpan<Vector<ulong>> block)
    {
        Vector<ulong> pair = Sum(ref ones, block[0], block[1]);
        return Sum(ref twos, pair, Sum(ref ones, block[2], block[3]));
    }

    // Adds two bits to a third in each place and gives the carry.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<ulong> Sum(ref Vector<ulong> sum, Vector<ulong> a, Vector<ulong> b)
    {
        Vector<ulong> either = sum ^ a;
        Vector<ulong> carry = (sum & a) | (either & b);
        sum = either ^ b;
        return carry;
    }
}
