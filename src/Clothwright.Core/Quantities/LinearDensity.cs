namespace Clothwright.Core.Quantities;

/// <summary>Mass per length of a yarn, held in tex (grams per kilometre). Finite and above 0.</summary>
/// <remarks><c>default</c> is not a yarn: reading it throws. Counts in every trade system convert at the edge, see the Yarns folder.</remarks>
public readonly record struct LinearDensity : IQuantity<LinearDensity>
{
    /// <summary>Tex of a yarn of one yard per pound: 453.59237 g / 0.9144 m × 1000 m.</summary>
    public const double TexOfOneYardPerPound = Mass.KilogramsPerPound * 1e6 / Length.MetresPerYard;

    private readonly double _tex;

    private LinearDensity(double tex) => _tex = tex;

    /// <inheritdoc />
    public static QuantityKind Kind => QuantityKind.LinearDensity;

    /// <value>Grams in one kilometre.</value>
    /// <exception cref="InvalidOperationException">This is <c>default</c>, not a yarn.</exception>
    public double Tex => _tex > 0
        ? _tex
        : throw new InvalidOperationException("No linear density was given. Make one with LinearDensity.FromTex.");

    /// <value>Metres in one kilogram.</value>
    public double MetresPerKilogram => 1e6 / Tex;

    /// <value>Yards in one pound.</value>
    public double YardsPerPound => TexOfOneYardPerPound / Tex;

    /// <inheritdoc />
    public double BaseValue => Tex;

    /// <summary>Mass of a length of this yarn.</summary>
    public static Mass operator *(LinearDensity yarn, Length length) => Mass.FromGrams(yarn.Tex * length.Metres / 1000);

    /// <inheritdoc cref="FromTex" />
    public static LinearDensity FromBase(double baseValue) => FromTex(baseValue);

    /// <param name="tex">Grams per kilometre; finite, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tex"/> is 0 or less, or not finite.</exception>
    public static LinearDensity FromTex(double tex) => double.IsFinite(tex) && tex > 0
        ? new LinearDensity(tex)
        : throw new ArgumentOutOfRangeException(nameof(tex), tex, "A linear density in tex is a finite number above 0.");

    /// <summary>Linear density of a yarn of which a length was weighed.</summary>
    /// <param name="mass">Mass of the length; above 0.</param>
    /// <param name="length">The length; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Either is 0.</exception>
    public static LinearDensity FromMassAndLength(Mass mass, Length length) => FromTex(mass.Grams * 1000 / length.Metres);

    /// <summary>Length that a mass of this yarn holds.</summary>
    /// <param name="mass">The mass, at the moisture for which the count holds.</param>
    public Length LengthOf(Mass mass) => Length.FromMetres(mass.Grams * 1000 / Tex);

    /// <inheritdoc />
    public override string ToString() => _tex > 0 ? QuantityText.Format(Kind, _tex, UnitStyle.Metric) : "no linear density";
}
