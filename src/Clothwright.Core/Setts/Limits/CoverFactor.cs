namespace Clothwright.Core.Setts.Limits;

/// <summary>Cover factor: threads per inch over the root of the cotton count. Threads touch at 28.</summary>
/// <remarks>Forms read in Balasubramanian's notes and GATE Textile 2007 and 2010.</remarks>
public static class CoverFactor
{
    /// <summary>Cover factor at which cotton threads touch.</summary>
    public const double Touching = 28;

    /// <summary>Cotton cover factor of threads of a cotton count.</summary>
    /// <param name="perInch">Threads per inch.</param>
    /// <param name="cottonCount">Cotton count.</param>
    public static double OfCottonCount(double perInch, double cottonCount) => perInch / Math.Sqrt(cottonCount);

    /// <summary>Cover factor in tex units: threads per cm × √tex ÷ 10.</summary>
    /// <param name="perCentimetre">Threads per centimetre.</param>
    /// <param name="tex">Grams per kilometre.</param>
    public static double OfTex(double perCentimetre, double tex) => perCentimetre * Math.Sqrt(tex) / 10;

    /// <summary>Cotton cover factor of threads in tex.</summary>
    /// <param name="perCentimetre">Threads per centimetre.</param>
    /// <param name="tex">Grams per kilometre.</param>
    public static double OfTexAsCotton(double perCentimetre, double tex) =>
        OfCottonCount(perCentimetre * 2.54, Diameters.PeirceDiameter.TexOfCottonCountOne / tex);

    /// <summary>Cover factor of the cloth from those of its two systems.</summary>
    /// <param name="warp">Cotton cover factor of the warp.</param>
    /// <param name="weft">Cotton cover factor of the weft.</param>
    public static double OfCloth(double warp, double weft) => warp + weft - warp * weft / Touching;
}
