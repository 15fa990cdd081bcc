namespace Clothwright.Core.Quantities;

/// <summary>Threads per unit of width or length: ends on the loom or in the cloth, picks, dents.</summary>
/// <remarks>Held as threads per metre, above 0 and finite. <c>default</c> is not a sett: reading it throws.</remarks>
public readonly record struct Sett : IQuantity<Sett>, IComparable<Sett>
{
    private readonly double _perMetre;

    private Sett(double perMetre) => _perMetre = perMetre;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.Sett;

    /// <value>Threads in one metre.</value>
    /// <exception cref="InvalidOperationException">This is <c>default</c>, not a sett.</exception>
    public double PerMetre => _perMetre > 0
        ? _perMetre
        : throw new InvalidOperationException("No sett was given. Make one with Sett.FromPerCentimetre or Sett.FromPerInch.");

    /// <value>Threads in one centimetre.</value>
    public double PerCentimetre => PerMetre / 100;

    /// <value>Threads in one inch.</value>
    public double PerInch => PerMetre * Length.MetresPerInch;

    /// <value>Distance from the middle of one thread to the middle of the next.</value>
    public Length Spacing => Length.FromMetres(1 / PerMetre);

    /// <inheritdoc />
    public double BaseValue => PerMetre;

    /// <summary>Threads in a width, not rounded.</summary>
    public static double operator *(Sett sett, Length width) => sett.PerMetre * width.Metres;

    /// <summary>A sett made closer or more open by a factor.</summary>
    public static Sett operator *(Sett sett, double factor) => FromPerMetre(sett.PerMetre * factor);

    /// <summary>More open than.</summary>
    public static bool operator <(Sett left, Sett right) => left.PerMetre < right.PerMetre;

    /// <summary>Closer than.</summary>
    public static bool operator >(Sett left, Sett right) => left.PerMetre > right.PerMetre;

    /// <summary>More open than or the same as.</summary>
    public static bool operator <=(Sett left, Sett right) => left.PerMetre <= right.PerMetre;

    /// <summary>Closer than or the same as.</summary>
    public static bool operator >=(Sett left, Sett right) => left.PerMetre >= right.PerMetre;

    /// <inheritdoc cref="FromPerMetre" />
    public static Sett FromBase(double baseValue) => FromPerMetre(baseValue);

    /// <param name="perMetre">Threads per metre; finite, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="perMetre"/> is 0 or less, or not finite.</exception>
    public static Sett FromPerMetre(double perMetre) => double.IsFinite(perMetre) && perMetre > 0
        ? new Sett(perMetre)
        : throw new ArgumentOutOfRangeException(nameof(perMetre), perMetre, "A sett in threads per metre is a finite number above 0.");

    /// <param name="perCentimetre">Threads per centimetre; finite, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sett is 0 or less, or not finite.</exception>
    public static Sett FromPerCentimetre(double perCentimetre) => FromPerMetre(perCentimetre * 100);

    /// <param name="perInch">Threads per inch; finite, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sett is 0 or less, or not finite.</exception>
    public static Sett FromPerInch(double perInch) => FromPerMetre(perInch / Length.MetresPerInch);

    /// <inheritdoc />
    public int CompareTo(Sett other) => _perMetre.CompareTo(other._perMetre);

    /// <inheritdoc />
    public override string ToString() => _perMetre > 0 ? QuantityText.Format(Kind, _perMetre, UnitStyle.Metric) : "no sett";
}
