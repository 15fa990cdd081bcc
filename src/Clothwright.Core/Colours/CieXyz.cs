namespace Clothwright.Core.Colours;

/// <summary>Tristimulus values for the 2° observer under D65, scaled so that white has Y = 1.</summary>
/// <param name="X">X.</param>
/// <param name="Y">Y: luminance relative to white.</param>
/// <param name="Z">Z.</param>
public readonly record struct CieXyz(double X, double Y, double Z)
{
    /// <summary>White of sRGB: the row sums of the matrix, so that greys have no chroma at all.</summary>
    public static CieXyz White { get; } = From(new LinearColour(1, 1, 1));

    /// <summary>Tristimulus values of a light (IEC 61966-2-1 primaries).</summary>
    public static CieXyz From(LinearColour light) => new(
        0.4123908 * light.Red + 0.3575843 * light.Green + 0.1804808 * light.Blue,
        0.2126390 * light.Red + 0.7151687 * light.Green + 0.0721923 * light.Blue,
        0.0193308 * light.Red + 0.1191948 * light.Green + 0.9505322 * light.Blue);
}
