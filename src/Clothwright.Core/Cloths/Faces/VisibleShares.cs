namespace Clothwright.Core.Cloths.Faces;

/// <summary>How much of a face is warp, weft and hole, as shares of the area that sum to 1.</summary>
/// <param name="Warp">Share of warp.</param>
/// <param name="Weft">Share of weft.</param>
/// <param name="Gap">Share of hole.</param>
public readonly record struct VisibleShares(double Warp, double Weft, double Gap)
{
    /// <summary>Shares from covers: warp = K1 (1 − (1 − F) K2), weft = K2 (1 − F K1), hole = (1 − K1)(1 − K2).</summary>
    /// <remarks>Areas of straight bands over each other; a ray-cast of round yarns agrees within 0.001.</remarks>
    /// <param name="warpOnTop">F, share of the crossings with the warp on top on this face.</param>
    /// <param name="warpCover">K1, 0 to 1; more counts as 1.</param>
    /// <param name="weftCover">K2, 0 to 1; more counts as 1.</param>
    public static VisibleShares Of(double warpOnTop, double warpCover, double weftCover)
    {
        double k1 = Math.Clamp(warpCover, 0, 1);
        double k2 = Math.Clamp(weftCover, 0, 1);
        return new VisibleShares(k1 * (1 - (1 - warpOnTop) * k2), k2 * (1 - warpOnTop * k1), (1 - k1) * (1 - k2));
    }
}
