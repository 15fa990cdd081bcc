using System.Reflection;
using SkiaSharp;

namespace Clothwright.Drawing.Fonts;

/// <summary>The bundled typefaces, loaded once; no font of the machine is ever used.</summary>
internal static class FontShelf
{
    private static readonly Lazy<SKTypeface[]> Typefaces = new(() => [.. Enum.GetValues<FontFace>().Select(Load)]);

    /// <summary>The typeface of a face.</summary>
    /// <param name="face">The face.</param>
    public static SKTypeface Of(FontFace face) => Typefaces.Value[(int)face];

    /// <summary>The name of a face, as its file is called.</summary>
    /// <param name="face">The face.</param>
    public static string NameOf(FontFace face) => face switch
    {
        FontFace.Strong => "OpenSans-Semibold",
        FontFace.Italic => "OpenSans-Italic",
        FontFace.Heading => "Caladea-Bold",
        _ => "OpenSans-Regular",
    };

    /// <summary>The font file of a face.</summary>
    /// <param name="face">The face.</param>
    public static byte[] FileOf(FontFace face)
    {
        using Stream stream = Open(face);
        byte[] file = new byte[stream.Length];
        stream.ReadExactly(file);
        return file;
    }

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

    private static SKTypeface Load(FontFace face)
    {
        using Stream stream = Open(face);
        return SKTypeface.FromStream(stream)
            ?? throw new InvalidOperationException($"The font {NameOf(face)} cannot be read.");
    }

    private static Stream Open(FontFace face)
    {
        Assembly assembly = typeof(FontShelf).Assembly;
        return assembly.GetManifestResourceStream($"Fonts/{NameOf(face)}.ttf")
            ?? throw new InvalidOperationException($"The font {NameOf(face)} is not built into {assembly.GetName().Name}.");
    }
}
