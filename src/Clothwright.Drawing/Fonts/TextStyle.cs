using Clothwright.Core.Colours;

namespace Clothwright.Drawing.Fonts;

/// <summary>How a line of text is set.</summary>
/// <param name="Face">The face.</param>
/// <param name="Size">Size in points.</param>
/// <param name="Colour">Colour of the letters.</param>
internal sealed record TextStyle(FontFace Face, float Size, SrgbColour Colour)
{
    /// <summary>Distance from one line of text to the next, in points.</summary>
    public float LineHeight { get; init; } = Size * 1.38f;
}
