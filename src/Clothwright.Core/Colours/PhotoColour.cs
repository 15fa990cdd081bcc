namespace Clothwright.Core.Colours;

/// <summary>Takes the colour of a yarn from a photo.</summary>
public static class PhotoColour
{
    // White writing paper throws back near nine tenths of the light; common practice, no source.
    private const double PaperReflectance = 0.88;
    private const double LeastLight = 0.02;

    /// <summary>The colour of a yarn as it would look beside white paper in even light.</summary>
    /// <param name="yarn">Mean light of a spot of the yarn in the photo.</param>
    /// <param name="paper">Mean light of white paper in the same photo; null where there is none: the photo is then taken as it is.</param>
    /// <remarks>Each of red, green and blue is scaled by itself so that the paper comes out white (von Kries' rule, in linear sRGB).</remarks>
    public static SrgbColour Of(LinearColour yarn, LinearColour? paper = null)
    {
        if (paper is not { } white) return yarn.ToSrgb();
        return new LinearColour(Scaled(yarn.Red, white.Red), Scaled(yarn.Green, white.Green), Scaled(yarn.Blue, white.Blue)).ToSrgb();
    }

    private static double Scaled(double light, double white) => Math.Clamp(light * PaperReflectance / Math.Max(white, LeastLight), 0, 1);
}
