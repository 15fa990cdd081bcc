using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Diameters;

/// <summary>The diameter of a round thread from its mass per length and the density of yarn with the air in it.</summary>
public static class BulkDensityDiameter
{
    private static readonly Rule Form = new(
        "fibre density and packing",
        "d = √(4 T ÷ (1000 π ρ)) mm, T tex, ρ = fibre density × packing in g/cm³",
        Source.Derivation);

    /// <summary>Diameter in millimetres.</summary>
    /// <param name="tex">Grams per kilometre, above 0.</param>
    /// <param name="gramsPerCubicCentimetre">Bulk density of the yarn, above 0.</param>
    public static double Millimetres(double tex, double gramsPerCubicCentimetre) =>
        Math.Sqrt(4 * tex / (1000 * Math.PI * gramsPerCubicCentimetre));

    /// <summary>Diameter with its working.</summary>
    /// <param name="yarn">Mass per length.</param>
    /// <param name="bulkDensity">Bulk density of the yarn, above 0.</param>
    /// <param name="label">What the diameter is called.</param>
    public static Derived<Length> Of(Derived<LinearDensity> yarn, Derived<Density> bulkDensity, string label = YarnDiameter.PlainLabel) =>
        Derived.From<Length>(label, Form, yarn, bulkDensity, (tex, density) => Millimetres(tex, density) / 1000);
}
