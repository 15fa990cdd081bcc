using Clothwright.Core.Colours;

namespace Clothwright.Core.Cloths.Faces;

/// <summary>The weft colour that would give a wanted face over a given warp.</summary>
public static class WeftForFace
{
    /// <summary>Light that the weft has to send: (face − warp share × warp) ÷ (1 − warp share).</summary>
    /// <param name="face">The wanted colour of the face.</param>
    /// <param name="warp">The warp's colour.</param>
    /// <param name="warpShare">Share of the face that is warp, 0 to below 1.</param>
    /// <returns>The light; parts outside 0 to 1 say that no yarn can have it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1, or 1.</exception>
    public static LinearColour Light(LinearColour face, LinearColour warp, double warpShare)
    {
        if (warpShare is not (>= 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(warpShare), warpShare, "A share of warp runs from 0 to below 1.");
        return (face + warp * -warpShare) * (1 / (1 - warpShare));
    }

    /// <summary>Whether a yarn can send such a light.</summary>
    /// <param name="light">The light.</param>
    public static bool IsReachable(LinearColour light) => InRange(light.Red) && InRange(light.Green) && InRange(light.Blue);

    private static bool InRange(double part) => part is >= 0 and <= 1;
}
