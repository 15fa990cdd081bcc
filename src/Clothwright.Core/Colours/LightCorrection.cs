namespace Clothwright.Core.Colours;

/// <summary>Takes the colour and the strength of the light out of a photograph, by a spot of it that is known to be neutral.</summary>
/// <remarks>Each of red, green and blue is scaled by itself (von Kries' rule, in linear sRGB).</remarks>
/// <param name="RedFactor">Factor of red.</param>
/// <param name="GreenFactor">Factor of green.</param>
/// <param name="BlueFactor">Factor of blue.</param>
public readonly record struct LightCorrection(double RedFactor, double GreenFactor, double BlueFactor)
{
    /// <summary>Share of light that white writing paper throws back; common practice, no source.</summary>
    public const double PaperReflectanceShare = 0.88;

    /// <summary>Share of light that a photographer's grey card throws back.</summary>
    public const double GreyCardReflectanceShare = 0.18;

    /// <summary>The photograph as it is.</summary>
    public static LightCorrection None { get; } = new(1, 1, 1);

    /// <summary>The correction that makes a spot come out neutral.</summary>
    /// <param name="spot">Mean light of the spot; every part above 0.</param>
    /// <param name="reflectanceShare">Share of light that it throws back, 0 to 1.</param>
    public static LightCorrection FromNeutral(LinearColour spot, double reflectanceShare) =>
        new(reflectanceShare / spot.Red, reflectanceShare / spot.Green, reflectanceShare / spot.Blue);

    /// <summary>A light of the photograph, corrected; parts may exceed 1.</summary>
    /// <param name="light">The light.</param>
    public LinearColour Of(LinearColour light) => new(light.Red * RedFactor, light.Green * GreenFactor, light.Blue * BlueFactor);
}
