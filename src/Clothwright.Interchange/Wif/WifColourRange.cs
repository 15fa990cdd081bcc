using Clothwright.Core.Colours;

namespace Clothwright.Interchange.Wif;

/// <summary>The scale on which a file writes the parts of a colour, for example 0 to 999.</summary>
/// <param name="Low">The number that means none of a part.</param>
/// <param name="High">The number that means all of it; above <paramref name="Low"/>.</param>
public readonly record struct WifColourRange(double Low, double High)
{
    /// <summary>The scale files are written in.</summary>
    public static WifColourRange EightBits { get; } = new(0, 255);

    /// <summary>Brings one part to 8 bits: (v − low) · 255 / (high − low), rounded, halves up; clipped to 0 and 255.</summary>
    /// <param name="part">Red, green or blue on this scale; finite.</param>
    public byte ToCode(double part) =>
        (byte)Math.Clamp(Math.Floor((part - Low) * 255 / (High - Low) + 0.5), 0, 255);

    /// <summary>Brings a colour to 8 bits.</summary>
    /// <param name="red">Red on this scale.</param>
    /// <param name="green">Green on this scale.</param>
    /// <param name="blue">Blue on this scale.</param>
    public SrgbColour ToColour(double red, double green, double blue) => new(ToCode(red), ToCode(green), ToCode(blue));

    /// <summary>Whether a part lies on this scale.</summary>
    /// <param name="part">Red, green or blue.</param>
    public bool Holds(double part) => part >= Low && part <= High;
}
