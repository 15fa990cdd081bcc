using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Diameters;

/// <summary>Peirce's rule for cotton: d = 1 ÷ (28 √Ne) inch, a yarn of specific volume 1.1.</summary>
public static class PeirceDiameter
{
    /// <summary>Threads of cotton count 1 that touch in one inch.</summary>
    public const double ThreadsPerInchOfCountOne = 28;

    /// <summary>Tex of cotton count 1: 840 yards in a pound.</summary>
    public const double TexOfCottonCountOne = LinearDensity.TexOfOneYardPerPound / 840;

    private static readonly Rule Form = new(
        "Peirce, cotton",
        "d = 1 inch ÷ (28 √(cotton count))",
        Source.Published("Balasubramanian, Fabric geometry (lecture notes), after Peirce 1937"));

    /// <summary>Diameter in millimetres.</summary>
    /// <param name="tex">Grams per kilometre, above 0.</param>
    public static double Millimetres(double tex) => 25.4 / (ThreadsPerInchOfCountOne * Math.Sqrt(TexOfCottonCountOne / tex));

    /// <summary>Diameter with its working.</summary>
    /// <param name="yarn">Mass per length.</param>
    /// <param name="label">What the diameter is called.</param>
    public static Derived<Length> Of(Derived<LinearDensity> yarn, string label = YarnDiameter.PlainLabel) =>
        Derived.From<Length>(label, Form, yarn, tex => Millimetres(tex) / 1000);
}
