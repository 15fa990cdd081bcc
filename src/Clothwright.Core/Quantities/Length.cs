namespace Clothwright.Core.Quantities;

/// <summary>A length, held in metres. Finite; 0 or more (a piece, a warp, a gap cannot be less than nothing).</summary>
public readonly record struct Length : IQuantity<Length>, IComparable<Length>
{
    /// <summary>Metres in one inch; exact (international inch, 1959).</summary>
    public const double MetresPerInch = 0.0254;

    /// <summary>Metres in one yard; exact (international yard, 1959).</summary>
    public const double MetresPerYard = 0.9144;

    private Length(double metres) => Metres = metres;

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.Length;

    /// <value>The length in metres.</value>
    public double Metres { get; }

    /// <value>The length in centimetres.</value>
    public double Centimetres => Metres * 100;

    /// <value>The length in millimetres.</value>
    public double Millimetres => Metres * 1000;

    /// <value>The length in inches.</value>
    public double Inches => Metres / MetresPerInch;

    /// <value>The length in yards.</value>
    public double Yards => Metres / MetresPerYard;

    /// <inheritdoc />
    public double BaseValue => Metres;

    /// <summary>Sum of two lengths.</summary>
    public static Length operator +(Length left, Length right) => FromMetres(left.Metres + right.Metres);

    /// <summary>Difference of two lengths.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The difference is below 0.</exception>
    public static Length operator -(Length left, Length right) => FromMetres(left.Metres - right.Metres);

    /// <summary>A length taken a number of times.</summary>
    public static Length operator *(Length left, double factor) => FromMetres(left.Metres * factor);

    /// <summary>A length shared out.</summary>
    public static Length operator /(Length left, double divisor) => FromMetres(left.Metres / divisor);

    /// <summary>How many times one length goes into another.</summary>
    public static double operator /(Length left, Length right) => left.Metres / right.Metres;

    /// <summary>Shorter than.</summary>
    public static bool operator <(Length left, Length right) => left.Metres < right.Metres;

    /// <summary>Longer than.</summary>
    public static bool operator >(Length left, Length right) => left.Metres > right.Metres;

    /// <summary>Shorter than or as long as.</summary>
    public static bool operator <=(Length left, Length right) => left.Metres <= right.Metres;

    /// <summary>Longer than or as long as.</summary>
    public static bool operator >=(Length left, Length right) => left.Metres >= right.Metres;

    /// <inheritdoc cref="FromMetres" />
    public static Length FromBase(double baseValue) => FromMetres(baseValue);

    /// <param name="metres">Metres; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="metres"/> is below 0 or not finite.</exception>
    public static Length FromMetres(double metres) => double.IsFinite(metres) && metres >= 0
        ? new Length(metres)
        : throw new ArgumentOutOfRangeException(nameof(metres), metres, "A length in metres is a finite number, 0 or more.");

    /// <param name="centimetres">Centimetres; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is below 0 or not finite.</exception>
    public static Length FromCentimetres(double centimetres) => FromMetres(centimetres / 100);

    /// <param name="millimetres">Millimetres; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is below 0 or not finite.</exception>
    public static Length FromMillimetres(double millimetres) => FromMetres(millimetres / 1000);

    /// <param name="inches">Inches; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is below 0 or not finite.</exception>
    public static Length FromInches(double inches) => FromMetres(inches * MetresPerInch);

    /// <param name="yards">Yards; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is below 0 or not finite.</exception>
    public static Length FromYards(double yards) => FromMetres(yards * MetresPerYard);

    /// <inheritdoc />
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <inheritdoc />
    public override string ToString() => QuantityText.Format(Kind, Metres, UnitStyle.Metric);
}
