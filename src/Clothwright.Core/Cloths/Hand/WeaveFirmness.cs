namespace Clothwright.Core.Cloths.Hand;

/// <summary>Firmness of a cloth beside a square plain jam of solid yarn, which is 1.</summary>
/// <remarks>
/// Form of V. Milasius 2000, from memory: φ = √(12/π) (1/P) √(T/ρ) S2^(1/(1+g)) S1^(g/(1+g)), g = ⅔ √(T1/T2). His coefficients for P are not
/// at hand, so the geometric factor w = √3 M ÷ (√3 + M − 1) stands in for it; it is 1 for plain weave.
/// </remarks>
public static class WeaveFirmness
{
    /// <summary>Geometric weave factor of a mean float.</summary>
    /// <param name="meanFloat">Mean float, 1 or more.</param>
    public static double GeometricFactor(double meanFloat) => Math.Sqrt(3) * meanFloat / (Math.Sqrt(3) + meanFloat - 1);

    /// <summary>Geometric weave factor of a weave with unlike mean floats: geometric mean, our choice.</summary>
    /// <param name="endFloat">M1.</param>
    /// <param name="pickFloat">M2.</param>
    public static double GeometricFactor(double endFloat, double pickFloat) =>
        Math.Sqrt(GeometricFactor(endFloat) * GeometricFactor(pickFloat));

    /// <summary>Firmness φ.</summary>
    /// <param name="warpTex">T1.</param>
    /// <param name="weftTex">T2.</param>
    /// <param name="fibreDensityGramsPerCubicCentimetre">ρ of the solid fibre.</param>
    /// <param name="endsPerMillimetre">S1.</param>
    /// <param name="picksPerMillimetre">S2.</param>
    /// <param name="weaveFactor">P, or the geometric factor; 1 for plain weave.</param>
    public static double Phi(
        double warpTex, double weftTex, double fibreDensityGramsPerCubicCentimetre, double endsPerMillimetre, double picksPerMillimetre, double weaveFactor)
    {
        double g = 2.0 / 3 * Math.Sqrt(warpTex / weftTex);
        // tex is 10⁻³ g/m = 10⁻³ mm² × g/cm³: √(T/ρ) in mm takes √10⁻³.
        double scale = Math.Sqrt(12 / Math.PI * (warpTex + weftTex) / 2 / fibreDensityGramsPerCubicCentimetre / 1000);
        return scale / weaveFactor * Math.Pow(picksPerMillimetre, 1 / (1 + g)) * Math.Pow(endsPerMillimetre, g / (1 + g));
    }
}
