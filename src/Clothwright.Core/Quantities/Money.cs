namespace Clothwright.Core.Quantities;

/// <summary>An amount of money in the currency of the worksheet. Finite, 0 or more.</summary>
public readonly record struct Money : IQuantity<Money>, IComparable<Money>
{
    private Money(double value) => Amount = value;

    /// <summary>Nothing at all.</summary>
    public static Money Zero => default;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.Money;

    /// <value>The amount in the currency of the worksheet.</value>
    public double Amount { get; }

    /// <inheritdoc />
    public double BaseValue => Amount;

    /// <summary>Sum.</summary>
    public static Money operator +(Money left, Money right) => FromAmount(left.Amount + right.Amount);

    /// <summary>Taken a number of times.</summary>
    public static Money operator *(Money left, double factor) => FromAmount(left.Amount * factor);

    /// <summary>Less than.</summary>
    public static bool operator <(Money left, Money right) => left.Amount < right.Amount;

    /// <summary>More than.</summary>
    public static bool operator >(Money left, Money right) => left.Amount > right.Amount;

    /// <summary>Less than or as much as.</summary>
    public static bool operator <=(Money left, Money right) => left.Amount <= right.Amount;

    /// <summary>More than or as much as.</summary>
    public static bool operator >=(Money left, Money right) => left.Amount >= right.Amount;

    /// <inheritdoc cref="FromAmount" />
    public static Money FromBase(double baseValue) => FromAmount(baseValue);

    /// <param name="value">The amount in the currency of the worksheet; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite, 0 or more.</exception>
    public static Money FromAmount(double value) => double.IsFinite(value) && value >= 0
        ? new Money(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "An amount of money is a finite number, 0 or more.");

    /// <inheritdoc />
    public int CompareTo(Money other) => Amount.CompareTo(other.Amount);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, Amount, UnitStyle.Metric);
}
