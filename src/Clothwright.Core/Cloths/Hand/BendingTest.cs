namespace Clothwright.Core.Cloths.Hand;

/// <summary>The cantilever test of cloth stiffness: a strip bends over an edge under its own weight.</summary>
/// <remarks>Peirce 1930 and ASTM D1388, from memory; rigidity read in GATE Textile 2020.</remarks>
public static class BendingTest
{
    private const double Gravity = 9.80665; // m/s²

    /// <summary>Bending length ÷ overhanging length at an angle: [cos(a/2) ÷ (8 tan a)]^(1/3).</summary>
    /// <param name="angleDegrees">Angle of the line from edge to tip below the horizontal, above 0 and below 90.</param>
    public static double LengthFactor(double angleDegrees)
    {
        double angle = angleDegrees * Math.PI / 180;
        return Math.Cbrt(Math.Cos(angle / 2) / (8 * Math.Tan(angle)));
    }

    /// <summary>Flexural rigidity in µN·m.</summary>
    /// <param name="gramsPerSquareMetre">Mass of the cloth.</param>
    /// <param name="bendingLengthMillimetres">Bending length.</param>
    public static double RigidityMicronewtonMetre(double gramsPerSquareMetre, double bendingLengthMillimetres) =>
        Gravity * 1e-6 * gramsPerSquareMetre * bendingLengthMillimetres * bendingLengthMillimetres * bendingLengthMillimetres;

    /// <summary>Bending length in millimetres.</summary>
    /// <param name="gramsPerSquareMetre">Mass of the cloth.</param>
    /// <param name="rigidityMicronewtonMetre">Flexural rigidity.</param>
    public static double BendingLengthMillimetres(double gramsPerSquareMetre, double rigidityMicronewtonMetre) =>
        Math.Cbrt(rigidityMicronewtonMetre / (Gravity * 1e-6 * gramsPerSquareMetre));

    /// <summary>Bending rigidity of one round fibre in N·mm²: η E T² ÷ (4 π ρ) × 10⁻³ (Morton &amp; Hearle, from memory).</summary>
    /// <param name="tex">Mass per length of the fibre.</param>
    /// <param name="densityGramsPerCubicCentimetre">Density of the fibre.</param>
    /// <param name="modulusNewtonPerTex">Initial modulus.</param>
    /// <param name="shapeFactor">η, about 0.8 for wool, 1 for a circle.</param>
    public static double FibreRigidityNewtonSquareMillimetre(double tex, double densityGramsPerCubicCentimetre, double modulusNewtonPerTex, double shapeFactor) =>
        shapeFactor * modulusNewtonPerTex * tex * tex / (4 * Math.PI * densityGramsPerCubicCentimetre) * 1e-3;
}
