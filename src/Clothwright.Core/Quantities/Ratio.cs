namespace Clothwright.Core.Quantities;

/// <summary>A number without unit: a share, a crimp, a take-up, a shrinkage, all as fractions (0.08 is 8 %). Finite; may be below 0.</summary>
public readonly record struct Ratio : IQuantity<Ratio>, IComparable<Ratio>
{
    private Ratio(double value) => Value = value;

    /// <summary>Nothing at all.</summary>
    public static Ratio Zero => default;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.Ratio;

    /// <value>The plain number.</value>
    public double Value { get; }

    /// <inheritdoc />
    public double BaseValue => Value;

    /// <summary>Sum.</summary>
    public static Ratio operator +(Ratio left, Ratio right) => FromValue(left.Value + right.Value);

    /// <summary>Taken a number of times.</summary>
    public static Ratio operator *(Ratio left, double factor) => FromValue(left.Value * factor);

    /// <summary>Less than.</summary>
    public static bool operator <(Ratio left, Ratio right) => left.Value < right.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Ratio left, Ratio right) => left.Value > right.Value;

    /// <summary>Less than or as much as.</summary>
    public static bool operator <=(Ratio left, Ratio right) => left.Value <= right.Value;

    /// <summary>More than or as much as.</summary>
    public static bool operator >=(Ratio left, Ratio right) => left.Value >= right.Value;

    /// <inheritdoc cref="FromValue" />
    public static Ratio FromBase(double baseValue) => FromValue(baseValue);

    /// <param name="value">The plain number; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite.</exception>
    public static Ratio FromValue(double value) => double.IsFinite(value)
        ? new Ratio(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A ratio is a finite number.");

    /// <value>The number in hundredths.</value>
    public double Percent => Value * 100;

    /// <param name="percent">Hundredths; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static Ratio FromPercent(double percent) => FromValue(percent / 100);

    /// <inheritdoc />
    public int CompareTo(Ratio other) => Value.CompareTo(other.Value);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, Value, UnitStyle.Metric);
}
