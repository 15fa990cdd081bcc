namespace Clothwright.Core.Quantities;

/// <summary>A whole number of things: ends, picks, balls, dents. 0 or more.</summary>
public readonly record struct Whole : IQuantity<Whole>, IComparable<Whole>
{
    private Whole(int count) => Count = count;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.Whole;

    /// <value>How many.</value>
    public int Count { get; }

    /// <inheritdoc />
    public double BaseValue => Count;

    /// <summary>Sum.</summary>
    public static Whole operator +(Whole left, Whole right) => FromCount(left.Count + right.Count);

    /// <summary>Fewer than.</summary>
    public static bool operator <(Whole left, Whole right) => left.Count < right.Count;

    /// <summary>More than.</summary>
    public static bool operator >(Whole left, Whole right) => left.Count > right.Count;

    /// <summary>Fewer than or as many as.</summary>
    public static bool operator <=(Whole left, Whole right) => left.Count <= right.Count;

    /// <summary>More than or as many as.</summary>
    public static bool operator >=(Whole left, Whole right) => left.Count >= right.Count;

    /// <summary>The nearest whole number.</summary>
    /// <param name="baseValue">A finite number, 0 or more, that fits an <see cref="int"/>; rounded, halves away from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 0, not finite or too large.</exception>
    public static Whole FromBase(double baseValue) => baseValue is >= 0 and <= int.MaxValue
        ? new Whole((int)Math.Round(baseValue, MidpointRounding.AwayFromZero))
        : throw new ArgumentOutOfRangeException(nameof(baseValue), baseValue, "A count of things is a whole number, 0 or more.");

    /// <param name="count">How many; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is below 0.</exception>
    public static Whole FromCount(int count) => count >= 0
        ? new Whole(count)
        : throw new ArgumentOutOfRangeException(nameof(count), count, "A count of things is a whole number, 0 or more.");

    /// <inheritdoc />
    public int CompareTo(Whole other) => Count.CompareTo(other.Count);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, Count, UnitStyle.Metric);
}
