namespace Clothwright.Core.Cloths.Geometry;

/// <summary>Mass of cloth from its threads, all in one state (finished with finished).</summary>
public static class MassPerArea
{
    /// <summary>Grams per square metre of one momme: one pound in 100 yards of 45 inches.</summary>
    public const double GramsPerSquareMetrePerMomme = Quantities.Mass.KilogramsPerPound * 1000 / (100 * Quantities.Length.MetresPerYard * 45 * Quantities.Length.MetresPerInch);

    /// <summary>Grams per square metre: 0.1 (n1 T1 (1 + c1) + n2 T2 (1 + c2)), read in GATE Textile 2009.</summary>
    /// <param name="endsPerCentimetre">n1.</param>
    /// <param name="warpTex">T1.</param>
    /// <param name="warpCrimp">c1, fraction.</param>
    /// <param name="picksPerCentimetre">n2.</param>
    /// <param name="weftTex">T2.</param>
    /// <param name="weftCrimp">c2, fraction.</param>
    public static double GramsPerSquareMetre(
        double endsPerCentimetre, double warpTex, double warpCrimp, double picksPerCentimetre, double weftTex, double weftCrimp) =>
        0.1 * (endsPerCentimetre * warpTex * (1 + warpCrimp) + picksPerCentimetre * weftTex * (1 + weftCrimp));

    /// <summary>Threads per cm of a square cloth of one yarn from its mass.</summary>
    /// <param name="gramsPerSquareMetre">Mass of the cloth.</param>
    /// <param name="tex">Mass per length of the yarn.</param>
    /// <param name="crimp">Crimp of both systems, fraction.</param>
    public static double SquareSettPerCentimetre(double gramsPerSquareMetre, double tex, double crimp) =>
        gramsPerSquareMetre / (0.2 * tex * (1 + crimp));

    /// <summary>Ounces per square yard of one system: 0.6857 K (1 + c) ÷ √Ne, K = threads per inch ÷ √Ne.</summary>
    /// <param name="perInch">Threads per inch.</param>
    /// <param name="cottonCount">Cotton count.</param>
    /// <param name="crimp">Crimp, fraction.</param>
    public static double OuncesPerSquareYardOfSystem(double perInch, double cottonCount, double crimp) =>
        0.6857 * perInch / cottonCount * (1 + crimp);
}
