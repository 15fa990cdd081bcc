namespace Clothwright.Core.Quantities;

/// <summary>Mass per volume of a fibre or a yarn, held in grams per cubic centimetre. Finite, 0 or more.</summary>
public readonly record struct Density : IQuantity<Density>, IComparable<Density>
{
    private Density(double value) => GramsPerCubicCentimetre = value;

    /// <summary>Nothing at all.</summary>
    public static Density Zero => default;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.Density;

    /// <value>Grams in one cubic centimetre.</value>
    public double GramsPerCubicCentimetre { get; }

    /// <inheritdoc />
    public double BaseValue => GramsPerCubicCentimetre;

    /// <summary>Sum.</summary>
    public static Density operator +(Density left, Density right) => FromGramsPerCubicCentimetre(left.GramsPerCubicCentimetre + right.GramsPerCubicCentimetre);

    /// <summary>Taken a number of times.</summary>
    public static Density operator *(Density left, double factor) => FromGramsPerCubicCentimetre(left.GramsPerCubicCentimetre * factor);

    /// <summary>Less than.</summary>
    public static bool operator <(Density left, Density right) => left.GramsPerCubicCentimetre < right.GramsPerCubicCentimetre;

    /// <summary>More than.</summary>
    public static bool operator >(Density left, Density right) => left.GramsPerCubicCentimetre > right.GramsPerCubicCentimetre;

    /// <summary>Less than or as much as.</summary>
    public static bool operator <=(Density left, Density right) => left.GramsPerCubicCentimetre <= right.GramsPerCubicCentimetre;

    /// <summary>More than or as much as.</summary>
    public static bool operator >=(Density left, Density right) => left.GramsPerCubicCentimetre >= right.GramsPerCubicCentimetre;

    /// <inheritdoc cref="FromGramsPerCubicCentimetre" />
    public static Density FromBase(double baseValue) => FromGramsPerCubicCentimetre(baseValue);

    /// <param name="value">Grams in one cubic centimetre; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite, 0 or more.</exception>
    public static Density FromGramsPerCubicCentimetre(double value) => double.IsFinite(value) && value >= 0
        ? new Density(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A density in grams per cubic centimetre is a finite number, 0 or more.");

    /// <inheritdoc />
    public int CompareTo(Density other) => GramsPerCubicCentimetre.CompareTo(other.GramsPerCubicCentimetre);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, GramsPerCubicCentimetre, UnitStyle.Metric);
}
