using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Colours;

/// <summary>A colour as it is sent to a screen or a printer: three 8-bit sRGB codes (IEC 61966-2-1).</summary>
/// <param name="Red">Code of red, 0 to 255.</param>
/// <param name="Green">Code of green, 0 to 255.</param>
/// <param name="Blue">Code of blue, 0 to 255.</param>
public readonly record struct SrgbColour(byte Red, byte Green, byte Blue)
{
    /// <summary>Reads a colour written as <c>#rrggbb</c>.</summary>
    /// <param name="text">The text; case does not matter.</param>
    public static Parsed<SrgbColour> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string trimmed = text.Trim();
        return trimmed.Length == 7 && trimmed[0] == '#'
            && int.TryParse(trimmed.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out int code)
            ? new SrgbColour((byte)(code >> 16), (byte)((code >> 8) & 255), (byte)(code & 255))
            : new InputProblem($"\"{text}\" is not a colour.", "colour", "Write it as # and six hexadecimal digits, for example #3b7a78.") { Text = text, Position = 0 };
    }

    /// <summary>The colour as <c>#rrggbb</c>, lower case.</summary>
    public override string ToString() => $"#{Red:x2}{Green:x2}{Blue:x2}";
}
