using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>Conversions between the units in which strength of fibres and yarns is printed.</summary>
public static class Tenacity
{
    // Standard gravity 9.80665 m/s² exactly (3rd CGPM 1901); 1 den = 1/9 tex; cN/tex = 9.80665 mN / (1/9 tex) / 10.
    private const double CentinewtonPerTexInOneGramForcePerDenier = 9.80665 * 9 / 10;

    /// <summary>cN/tex of a strength in grams-force per denier.</summary>
    /// <param name="gramForcePerDenier">Grams-force per denier.</param>
    public static double CentinewtonPerTexFromGramForcePerDenier(double gramForcePerDenier) => gramForcePerDenier * CentinewtonPerTexInOneGramForcePerDenier;

    /// <summary>Grams-force per denier of a strength in cN/tex.</summary>
    /// <param name="centinewtonPerTex">cN/tex.</param>
    public static double GramForcePerDenierFromCentinewtonPerTex(double centinewtonPerTex) => centinewtonPerTex / CentinewtonPerTexInOneGramForcePerDenier;

    /// <summary>cN/tex of a stress on the solid fibre: MPa / (10 × density in g/cm³).</summary>
    /// <param name="megapascal">Stress, MPa.</param>
    /// <param name="density">Density of the solid fibre; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is 0.</exception>
    public static double CentinewtonPerTexFromMegapascal(double megapascal, Density density) => density.GramsPerCubicCentimetre > 0
        ? megapascal / (10 * density.GramsPerCubicCentimetre)
        : throw new ArgumentOutOfRangeException(nameof(density), density.GramsPerCubicCentimetre, "A fibre has a density above 0.");
}
