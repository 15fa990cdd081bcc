namespace Clothwright.Core.Colours;

/// <summary>A colour as light: linear sRGB, each part 0 to 1. Every average of colours is taken here, never on sRGB codes.</summary>
/// <param name="Red">Linear red, 0 to 1.</param>
/// <param name="Green">Linear green, 0 to 1.</param>
/// <param name="Blue">Linear blue, 0 to 1.</param>
public readonly record struct LinearColour(double Red, double Green, double Blue)
{
    /// <summary>Sum of two lights.</summary>
    public static LinearColour operator +(LinearColour left, LinearColour right) =>
        new(left.Red + right.Red, left.Green + right.Green, left.Blue + right.Blue);

    /// <summary>A light made stronger or weaker.</summary>
    public static LinearColour operator *(LinearColour light, double factor) =>
        new(light.Red * factor, light.Green * factor, light.Blue * factor);

    /// <summary>Decodes sRGB codes to light (IEC 61966-2-1: threshold 0.04045, exponent 2.4).</summary>
    public static LinearColour From(SrgbColour colour) => new(Decode(colour.Red), Decode(colour.Green), Decode(colour.Blue));

    /// <summary>Encodes light to sRGB codes; parts outside 0 to 1 are clipped.</summary>
    public SrgbColour ToSrgb() => new(Encode(Red), Encode(Green), Encode(Blue));

    private const int Steps = 2048;

    // The least light of codes 1 to 255: half a code below each.
    private static readonly double[] LeastLight = [.. Enumerable.Range(1, 255).Select(code => Decode((code - 0.5) / 255))];

    // The code at the beginning of each step of light: a code is then found a few comparisons on, without a power for every pixel.
    private static readonly byte[] CodeOfStep = [.. Enumerable.Range(0, Steps + 1).Select(step => (byte)LeastLight.Count(least => least <= (double)step / Steps))];

    private static double Decode(byte code) => Decode(code / 255.0);

    private static double Decode(double part) => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);

    private static byte Encode(double part)
    {
        if (!(part > 0)) return 0;
        if (part >= 1) return 255;
        int code = CodeOfStep[(int)(part * Steps)];
        while (code < LeastLight.Length && LeastLight[code] <= part) code++;
        return (byte)code;
    }
}
