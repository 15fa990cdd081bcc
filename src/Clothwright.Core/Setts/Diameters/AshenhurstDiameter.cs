using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Diameters;

/// <summary>Ashenhurst's rule: threads touching in one inch = K √(yards per pound).</summary>
/// <remarks>K is 0.92 for cotton, linen and silk, 0.90 for worsted, 0.84 for woollen; Taylor takes 0.95 for cotton.</remarks>
public static class AshenhurstDiameter
{
    /// <summary>Bulk density that K stands for, in g/cm³, is this times K²: 4 × 496054.65 ÷ (1000 π × 25.4²).</summary>
    public const double GramsPerCubicCentimetreOfUnitK = 4 * LinearDensity.TexOfOneYardPerPound / (1000 * Math.PI * 25.4 * 25.4);

    private static readonly Rule Form = new(
        "Ashenhurst, diameters per inch",
        "d = 1 inch ÷ (K √(yards per pound))",
        Source.Published("Ashenhurst's rule as set out for handweavers, study-group page, 1999"));

    /// <summary>Threads touching in one inch.</summary>
    /// <param name="yardsPerPound">Yards in a pound, above 0.</param>
    /// <param name="k">Ashenhurst's K, above 0.</param>
    public static double ThreadsPerInch(double yardsPerPound, double k) => k * Math.Sqrt(yardsPerPound);

    /// <summary>K that gives the same diameter as a bulk density.</summary>
    /// <param name="gramsPerCubicCentimetre">Bulk density of the yarn, above 0.</param>
    public static double KOf(double gramsPerCubicCentimetre) => Math.Sqrt(gramsPerCubicCentimetre / GramsPerCubicCentimetreOfUnitK);

    /// <summary>Bulk density of the yarn, in g/cm³, that K stands for.</summary>
    /// <param name="k">Ashenhurst's K, above 0.</param>
    public static double GramsPerCubicCentimetreOf(double k) => GramsPerCubicCentimetreOfUnitK * k * k;

    /// <summary>Diameter with its working.</summary>
    /// <param name="yarn">Mass per length.</param>
    /// <param name="k">Ashenhurst's K, above 0.</param>
    /// <param name="label">What the diameter is called.</param>
    public static Derived<Length> Of(Derived<LinearDensity> yarn, Derived<Number> k, string label = YarnDiameter.PlainLabel) => Derived.From<Length>(
        label,
        Form,
        yarn,
        k,
        (tex, factor) => Length.MetresPerInch / ThreadsPerInch(LinearDensity.TexOfOneYardPerPound / tex, factor));
}
