namespace Clothwright.Core.Quantities;

/// <summary>A mass, held in kilograms. Finite, 0 or more.</summary>
public readonly record struct Mass : IQuantity<Mass>, IComparable<Mass>
{
    /// <summary>Kilograms in one pound avoirdupois; exact (1959).</summary>
    public const double KilogramsPerPound = 0.45359237;

    private Mass(double kilograms) => Kilograms = kilograms;

    /// <summary>No mass at all.</summary>
    public static Mass Zero => default;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.Mass;

    /// <value>The mass in kilograms.</value>
    public double Kilograms { get; }

    /// <value>The mass in grams.</value>
    public double Grams => Kilograms * 1000;

    /// <value>The mass in pounds.</value>
    public double Pounds => Kilograms / KilogramsPerPound;

    /// <value>The mass in ounces, sixteen to the pound.</value>
    public double Ounces => Pounds * 16;

    /// <inheritdoc />
    public double BaseValue => Kilograms;

    /// <summary>Sum of two masses.</summary>
    public static Mass operator +(Mass left, Mass right) => FromKilograms(left.Kilograms + right.Kilograms);

    /// <summary>Difference of two masses.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The difference is below 0.</exception>
    public static Mass operator -(Mass left, Mass right) => FromKilograms(left.Kilograms - right.Kilograms);

    /// <summary>A mass taken a number of times.</summary>
    public static Mass operator *(Mass left, double factor) => FromKilograms(left.Kilograms * factor);

    /// <summary>How many times one mass goes into another.</summary>
    public static double operator /(Mass left, Mass right) => left.Kilograms / right.Kilograms;

    /// <summary>Lighter than.</summary>
    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    /// <summary>Heavier than.</summary>
    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    /// <summary>Lighter than or as heavy as.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    /// <summary>Heavier than or as heavy as.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;

    /// <inheritdoc cref="FromKilograms" />
    public static Mass FromBase(double baseValue) => FromKilograms(baseValue);

    /// <param name="kilograms">Kilograms; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kilograms"/> is below 0 or not finite.</exception>
    public static Mass FromKilograms(double kilograms) => double.IsFinite(kilograms) && kilograms >= 0
        ? new Mass(kilograms)
        : throw new ArgumentOutOfRangeException(nameof(kilograms), kilograms, "A mass in kilograms is a finite number, 0 or more.");

    /// <param name="grams">Grams; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is below 0 or not finite.</exception>
    public static Mass FromGrams(double grams) => FromKilograms(grams / 1000);

    /// <param name="pounds">Pounds avoirdupois; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is below 0 or not finite.</exception>
    public static Mass FromPounds(double pounds) => FromKilograms(pounds * KilogramsPerPound);

    /// <param name="ounces">Ounces, sixteen to the pound; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is below 0 or not finite.</exception>
    public static Mass FromOunces(double ounces) => FromPounds(ounces / 16);

    /// <inheritdoc />
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, Kilograms, UnitStyle.Metric);
}
