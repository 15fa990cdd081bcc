using Clothwright.Core.Colours;

namespace Clothwright.Drawing.Figures;

/// <summary>The inks: undyed linen, iron gall and three plant dyes.</summary>
internal static class Palette
{
    /// <summary>Paper.</summary>
    public static SrgbColour Paper { get; } = new(0xff, 0xff, 0xff);

    /// <summary>Undyed linen, the ground behind pictures.</summary>
    public static SrgbColour Linen { get; } = new(0xf6, 0xf1, 0xe4);

    /// <summary>The line between things on linen.</summary>
    public static SrgbColour LinenLine { get; } = new(0xcf, 0xc5, 0xae);

    /// <summary>Iron-gall ink.</summary>
    public static SrgbColour Ink { get; } = new(0x23, 0x26, 0x2b);

    /// <summary>Iron-gall ink, thinned, for notes; contrast with paper above 4.5 to 1.</summary>
    public static SrgbColour ThinInk { get; } = new(0x5c, 0x5d, 0x5f);

    /// <summary>Woad blue.</summary>
    public static SrgbColour Woad { get; } = new(0x2a, 0x58, 0x79);

    /// <summary>Madder red.</summary>
    public static SrgbColour Madder { get; } = new(0x98, 0x3a, 0x2b);

    /// <summary>Weld yellow.</summary>
    public static SrgbColour Weld { get; } = new(0xb5, 0x8f, 0x1e);

    /// <summary>Weld over woad.</summary>
    public static SrgbColour Moss { get; } = new(0x55, 0x70, 0x3f);
}
