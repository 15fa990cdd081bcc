namespace Clothwright.Core.Cloths.Look.Tilts;

/// <summary>How much narrower or wider each set of threads is painted so that a tilted cloth shows what the eye sees of it.</summary>
/// <param name="WarpFactor">Factor of the ends' widths.</param>
/// <param name="WeftFactor">Factor of the picks' widths.</param>
public readonly record struct TiltedWidths(double WarpFactor, double WeftFactor)
{
    /// <summary>Lying flat.</summary>
    public static TiltedWidths Flat { get; } = new(1, 1);

    /// <summary>The factors that turn the shares seen from above into those seen from aside.</summary>
    /// <remarks>
    /// Shares by covers are warp = K1 (1 − (1 − F) K2), weft = K2 (1 − F K1). With P = K1 K2 both are linear in P, and P itself solves
    /// F (1 − F) P² − (1 − F warp − (1 − F) weft) P + warp weft = 0, of which the smaller root is meant.
    /// </remarks>
    /// <param name="warpUpShare">F: share of crossings with the warp on top.</param>
    /// <param name="warpCover">K1: share of the width that ends cover, lying flat.</param>
    /// <param name="weftCover">K2: share of the length that picks cover, lying flat.</param>
    /// <param name="flat">Shares seen from straight above.</param>
    /// <param name="tilted">Shares seen from aside.</param>
    public static TiltedWidths Of(double warpUpShare, double warpCover, double weftCover, TiltedShares flat, TiltedShares tilted)
    {
        double up = warpUpShare;
        double warp = warpCover * (1 - (1 - up) * weftCover) * Ratio(tilted.WarpShare, flat.WarpShare);
        double weft = weftCover * (1 - up * warpCover) * Ratio(tilted.WeftShare, flat.WeftShare);
        double over = Math.Max(1, warp + weft);
        (warp, weft) = (warp / over, weft / over);
        double square = up * (1 - up);
        double line = 1 - up * warp - (1 - up) * weft;
        double product = warp * weft;
        double both = square < 1e-9
            ? line > 1e-9 ? product / line : 0
            : (line - Math.Sqrt(Math.Max(0, line * line - 4 * square * product))) / (2 * square);
        return new TiltedWidths(Ratio(Math.Min(1, warp + (1 - up) * both), warpCover), Ratio(Math.Min(1, weft + up * both), weftCover));
    }

    private static double Ratio(double tilted, double flat) => flat > 1e-9 ? tilted / flat : 1;
}
