namespace Clothwright.Core.Colours;

/// <summary>CIELAB under D65: lightness and two opponent axes (CIE 15; ISO/CIE 11664-4).</summary>
/// <param name="L">Lightness, 0 black to 100 white.</param>
/// <param name="A">Green (below 0) to red.</param>
/// <param name="B">Blue (below 0) to yellow.</param>
public readonly record struct CieLab(double L, double A, double B)
{
    private const double Knee = 6.0 / 29;

    /// <summary>Chroma: distance from grey.</summary>
    public double Chroma => Math.Sqrt(A * A + B * B);

    /// <summary>The Lab of tristimulus values relative to <see cref="CieXyz.White"/>.</summary>
    public static CieLab From(CieXyz xyz)
    {
        double x = Compress(xyz.X / CieXyz.White.X);
        double y = Compress(xyz.Y / CieXyz.White.Y);
        double z = Compress(xyz.Z / CieXyz.White.Z);
        return new CieLab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    /// <summary>The Lab of a light.</summary>
    public static CieLab From(LinearColour light) => From(CieXyz.From(light));

    /// <summary>The Lab of sRGB codes.</summary>
    public static CieLab From(SrgbColour colour) => From(LinearColour.From(colour));

    private static double Compress(double t) =>
        t > Knee * Knee * Knee ? Math.Cbrt(t) : t / (3 * Knee * Knee) + 4.0 / 29;
}
