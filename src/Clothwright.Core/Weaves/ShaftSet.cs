using System.Numerics;

namespace Clothwright.Core.Weaves;

/// <summary>A set of shafts, or of treadles, numbered from 1 to 64. Bit 0 is number 1.</summary>
/// <param name="Bits">One bit a member.</param>
public readonly record struct ShaftSet(ulong Bits)
{
    /// <summary>The highest number a set can hold.</summary>
    public const int Highest = 64;

    /// <summary>No shaft at all.</summary>
    public static ShaftSet None => default;

    /// <summary>How many members.</summary>
    public int Count => BitOperations.PopCount(Bits);

    /// <summary>The highest member, or 0 for none.</summary>
    public int Max => 64 - BitOperations.LeadingZeroCount(Bits);

    /// <summary>Whether a number is in the set.</summary>
    /// <param name="number">1 to 64.</param>
    public bool Contains(int number) => number is >= 1 and <= Highest && ((Bits >> (number - 1)) & 1) != 0;

    /// <summary>Whether the two sets share a member.</summary>
    public bool Overlaps(ShaftSet other) => (Bits & other.Bits) != 0;

    /// <summary>The members that are not in another set.</summary>
    public ShaftSet Without(ShaftSet other) => new(Bits & ~other.Bits);

    /// <summary>Members of either.</summary>
    public static ShaftSet operator |(ShaftSet left, ShaftSet right) => new(left.Bits | right.Bits);

    /// <summary>Members of both.</summary>
    public static ShaftSet operator &(ShaftSet left, ShaftSet right) => new(left.Bits & right.Bits);

    /// <summary>A set of numbers.</summary>
    /// <param name="numbers">1 to 64 each.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside 1 to 64.</exception>
    public static ShaftSet Of(params ReadOnlySpan<int> numbers)
    {
        ulong bits = 0;
        foreach (int number in numbers)
        {
            if (number is < 1 or > Highest)
            {
                throw new ArgumentOutOfRangeException(nameof(numbers), number, "A shaft or treadle is numbered from 1 to 64.");
            }

            bits |= 1UL << (number - 1);
        }

        return new ShaftSet(bits);
    }

    /// <summary>The set 1 to <paramref name="count"/>.</summary>
    /// <param name="count">0 to 64.</param>
    public static ShaftSet FirstOf(int count) => new(count >= Highest ? ulong.MaxValue : (1UL << count) - 1);

    /// <summary>The members, rising.</summary>
    public IEnumerable<int> Members()
    {
        for (ulong rest = Bits; rest != 0; rest &= rest - 1) yield return BitOperations.TrailingZeroCount(rest) + 1;
    }

    /// <summary>The members with blanks between, for example <c>1 3</c>; a dash for none.</summary>
    public override string ToString() => Bits == 0 ? "–" : string.Join(' ', Members());
}
