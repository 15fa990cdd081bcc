namespace Clothwright.Interchange.Tests.Samples;

/// <summary>A warp reckoned with nothing but a pencil's arithmetic, from rates of take-up and shrinkage taken as given.</summary>
/// <remarks>The chain is that of the practice: finished, before washing, as warp; reed width; yarn by length and tex.</remarks>
internal static class SampleArithmetic
{
    /// <summary>Warp for a woven length, metres: finished ÷ (1 − shrinkage) ÷ (1 − take-up).</summary>
    public static double WarpFor(double finished, double shrinkage, double takeUp) => finished / (1 - shrinkage) / (1 - takeUp);

    /// <summary>Warp in two twisted fringes, metres: each finished ÷ 0.85 and 3 cm of knot (middle of 10 to 20 % and of 2 to 4 cm).</summary>
    public static double TwistedFringes(double finished) => 2 * (finished / 0.85 + 0.03);

    /// <summary>Weft across a reed width for a number of picks, metres: the cloth off the loom holds it with its take-up.</summary>
    public static double WeftFor(double picks, double reedWidth, double drawIn, double takeUp) => picks * reedWidth * (1 - drawIn) / (1 - takeUp);
}
