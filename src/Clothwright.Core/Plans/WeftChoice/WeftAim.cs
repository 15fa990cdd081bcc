using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.WeftChoice;

/// <summary>What a weft is looked for.</summary>
/// <param name="Kind">The aim.</param>
/// <param name="Wanted">The colour that the face is to have; only for <see cref="WeftAimKind.Colour"/>.</param>
public readonly record struct WeftAim(WeftAimKind Kind, SrgbColour? Wanted)
{
    /// <summary>Reads <c>clear</c>, <c>shimmer</c> or a colour <c>#rrggbb</c>.</summary>
    /// <param name="text">The text.</param>
    public static Parsed<WeftAim> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string word = text.Trim();
        if (string.Equals(word, "clear", StringComparison.OrdinalIgnoreCase)) return new WeftAim(WeftAimKind.Clear, null);
        if (string.Equals(word, "shimmer", StringComparison.OrdinalIgnoreCase)) return new WeftAim(WeftAimKind.Shimmer, null);
        return SrgbColour.Parse(word).TryGet(out SrgbColour colour)
            ? new WeftAim(WeftAimKind.Colour, colour)
            : new InputProblem($"\"{text}\" is no aim for a weft.", "aim", "Write clear, shimmer, or the colour that the face is to have, for example #3b7a78.") { Text = text, Position = 0 };
    }
}
