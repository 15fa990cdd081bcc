namespace Clothwright.Core.Quantities;

/// <summary>A number that is neither a share nor a whole number of things: a count of yarn, a factor from a table. Finite, 0 or more.</summary>
/// <remarks>Where the number has a unit, its label names it, for example <c>tenacity, cN/tex</c>.</remarks>
public readonly record struct Number : IQuantity<Number>, IComparable<Number>
{
    private Number(double value) => Value = value;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.Number;

    /// <value>The number itself.</value>
    public double Value { get; }

    /// <inheritdoc />
    public double BaseValue => Value;

    /// <summary>Less than.</summary>
    public static bool operator <(Number left, Number right) => left.Value < right.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Number left, Number right) => left.Value > right.Value;

    /// <summary>Less than or as much as.</summary>
    public static bool operator <=(Number left, Number right) => left.Value <= right.Value;

    /// <summary>More than or as much as.</summary>
    public static bool operator >=(Number left, Number right) => left.Value >= right.Value;

    /// <inheritdoc cref="FromValue" />
    public static Number FromBase(double baseValue) => FromValue(baseValue);

    /// <param name="value">The number; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is below 0 or not finite.</exception>
    public static Number FromValue(double value) => double.IsFinite(value) && value >= 0
        ? new Number(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A number is finite, 0 or more.");

    /// <inheritdoc />
    public int CompareTo(Number other) => Value.CompareTo(other.Value);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, Value, UnitStyle.Metric);
}
