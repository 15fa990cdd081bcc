namespace Clothwright.Core.Quantities;

/// <summary>Mass per area of cloth, held in grams per square metre. Finite, 0 or more.</summary>
public readonly record struct ArealDensity : IQuantity<ArealDensity>, IComparable<ArealDensity>
{
    private ArealDensity(double value) => GramsPerSquareMetre = value;

    /// <summary>Nothing at all.</summary>
    public static ArealDensity Zero => default;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.ArealDensity;

    /// <value>Grams in one square metre.</value>
    public double GramsPerSquareMetre { get; }

    /// <inheritdoc />
    public double BaseValue => GramsPerSquareMetre;

    /// <summary>Sum.</summary>
    public static ArealDensity operator +(ArealDensity left, ArealDensity right) => FromGramsPerSquareMetre(left.GramsPerSquareMetre + right.GramsPerSquareMetre);

    /// <summary>Taken a number of times.</summary>
    public static ArealDensity operator *(ArealDensity left, double factor) => FromGramsPerSquareMetre(left.GramsPerSquareMetre * factor);

    /// <summary>Less than.</summary>
    public static bool operator <(ArealDensity left, ArealDensity right) => left.GramsPerSquareMetre < right.GramsPerSquareMetre;

    /// <summary>More than.</summary>
    public static bool operator >(ArealDensity left, ArealDensity right) => left.GramsPerSquareMetre > right.GramsPerSquareMetre;

    /// <summary>Less than or as much as.</summary>
    public static bool operator <=(ArealDensity left, ArealDensity right) => left.GramsPerSquareMetre <= right.GramsPerSquareMetre;

    /// <summary>More than or as much as.</summary>
    public static bool operator >=(ArealDensity left, ArealDensity right) => left.GramsPerSquareMetre >= right.GramsPerSquareMetre;

    /// <inheritdoc cref="FromGramsPerSquareMetre" />
    public static ArealDensity FromBase(double baseValue) => FromGramsPerSquareMetre(baseValue);

    /// <param name="value">Grams in one square metre; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite, 0 or more.</exception>
    public static ArealDensity FromGramsPerSquareMetre(double value) => double.IsFinite(value) && value >= 0
        ? new ArealDensity(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A mass per area in grams per square metre is a finite number, 0 or more.");

    /// <summary>Grams per square metre in one ounce per square yard: 28.349523125 g / 0.83612736 m².</summary>
    public const double GramsPerSquareMetrePerOuncePerSquareYard = Mass.KilogramsPerPound * 1000 / 16 / (Length.MetresPerYard * Length.MetresPerYard);

    /// <value>Ounces in one square yard.</value>
    public double OuncesPerSquareYard => GramsPerSquareMetre / GramsPerSquareMetrePerOuncePerSquareYard;

    /// <inheritdoc />
    public int CompareTo(ArealDensity other) => GramsPerSquareMetre.CompareTo(other.GramsPerSquareMetre);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, GramsPerSquareMetre, UnitStyle.Metric);
}
