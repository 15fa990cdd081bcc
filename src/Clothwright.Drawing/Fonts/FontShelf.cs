using System.Reflection;
using SkiaSharp;

namespace Clothwright.Drawing.Fonts;

/// <summary>The bundled typefaces, loaded once; no font of the machine is ever used.</summary>
internal static class FontShelf
{
    private static readonly Lazy<SKTypeface[]> Typefaces = new(() =>
        [Load("OpenSans-Regular.ttf"), Load("OpenSans-Semibold.ttf"), Load("OpenSans-Italic.ttf"), Load("Caladea-Bold.ttf")]);

    /// <summary>The typeface of a face.</summary>
    /// <param name="face">The face.</param>
    public static SKTypeface Of(FontFace face) => Typefaces.Value[(int)face];

    /// <summary>The face that can write a sign: the wanted one, else another that holds it, else null.</summary>
    /// <param name="wanted">The wanted face.</param>
    /// <param name="codePoint">The sign as a Unicode code point.</param>
    public static FontFace? Holding(FontFace wanted, int codePoint)
    {
        if (Of(wanted).GetGlyph(codePoint) != 0) return wanted;
        foreach (FontFace other in (ReadOnlySpan<FontFace>)[FontFace.Text, FontFace.Heading])
        {
            if (Of(other).GetGlyph(codePoint) != 0) return other;
        }

        return null;
    }

    private static SKTypeface Load(string name)
    {
        Assembly assembly = typeof(FontShelf).Assembly;
        using Stream stream = assembly.GetManifestResourceStream($"Fonts/{name}")
            ?? throw new InvalidOperationException($"The font {name} is not built into {assembly.GetName().Name}.");
        return SKTypeface.FromStream(stream)
            ?? throw new InvalidOperationException($"The font {name} cannot be read.");
    }
}
