using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Limits;

/// <summary>Brierley's maximum setts, found by weaving: n per inch = F^m √(K N), for named families of weave only.</summary>
/// <remarks>
/// K and m for cotton twill read in GATE Textile 2006; the rest from memory of Brierley 1931 and Robinson &amp; Marks. K divided
/// by the yards per pound of count 1 is 0.238 in every count system, so in tex one constant serves: n per cm = 135.3 F^m ÷ √T.
/// </remarks>
public static class Brierley
{
    /// <summary>Name of the method.</summary>
    public const string Method = "Brierley";

    /// <summary>K for cotton counts and ends per inch.</summary>
    public const double CottonK = 200;

    private static readonly double ConstantPerMetre = Math.Sqrt(CottonK * LinearDensity.TexOfOneYardPerPound / 840) / Length.MetresPerInch;

    private static readonly Source Origin = Source.FromMemoryOf("Brierley 1931 and Robinson & Marks; cotton twill read in GATE Textile 2006");

    /// <summary>The exponent m of a family.</summary>
    /// <param name="family">The family.</param>
    public static double Exponent(WeaveFamily family) => family switch
    {
        WeaveFamily.Satin => 0.42,
        WeaveFamily.Hopsack => 0.45,
        WeaveFamily.WarpRib => 0.42,
        WeaveFamily.WeftRib => 0.35,
        _ => 0.39,
    };

    /// <summary>Closest threads per inch of a square cloth.</summary>
    /// <param name="count">Count of the yarn in the system of <paramref name="k"/>.</param>
    /// <param name="k">Constant of the count system: cotton and spun silk 200, worsted 134.</param>
    /// <param name="meanFloat">F; for ribs that of the system that floats.</param>
    /// <param name="exponent">m of the family.</param>
    public static double PerInch(double count, double k, double meanFloat, double exponent) =>
        Math.Pow(meanFloat, exponent) * Math.Sqrt(k * count);

    /// <summary>Picks beside other than square ends: n2 = n^(1+g) ÷ n1^g with g = ⅔ √(T1 ÷ T2).</summary>
    /// <param name="square">Closest square sett.</param>
    /// <param name="ends">Ends, in the same unit.</param>
    /// <param name="warpTex">Tex of the warp.</param>
    /// <param name="weftTex">Tex of the weft.</param>
    public static double Picks(double square, double ends, double warpTex, double weftTex)
    {
        double g = 2.0 / 3 * Math.Sqrt(warpTex / weftTex);
        return Math.Pow(square, 1 + g) * Math.Pow(ends, -g);
    }

    /// <summary>Closest threads of a square cloth, from the mean tex of warp and weft.</summary>
    /// <param name="label">What they are, for example <c>closest ends</c>.</param>
    /// <param name="family">The family.</param>
    /// <param name="meanFloat">F; for ribs that of the system that floats.</param>
    /// <param name="warp">Mass per length of the warp.</param>
    /// <param name="weft">Mass per length of the weft.</param>
    public static Derived<Sett> Square(string label, WeaveFamily family, double meanFloat, Derived<LinearDensity> warp, Derived<LinearDensity> weft)
    {
        double m = Exponent(family);
        Derived<Number> fit = Derived.Given("scatter of woven limits", Number.FromValue(1), Origin, 0.03, "scatter of Brierley's limits");
        return Derived.From<Sett>(
            label,
            new Rule(Method, $"135.3 F^m ÷ √(mean tex) per cm, F {Text(meanFloat)}, m {Text(m)}", Origin),
            warp,
            weft,
            fit,
            (t1, t2, scatter) => scatter * ConstantPerMetre * Math.Pow(meanFloat, m) / Math.Sqrt((t1 + t2) / 2));
    }

    private static string Text(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
