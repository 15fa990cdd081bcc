using System.Collections.Concurrent;

namespace Clothwright.Drawing.Fonts;

/// <summary>Which glyph of which bundled face writes a sign.</summary>
/// <param name="Face">The face.</param>
/// <param name="Glyph">The glyph in it.</param>
internal readonly record struct GlyphChoice(FontFace Face, ushort Glyph)
{
    private static readonly ConcurrentDictionary<(FontFace Face, int CodePoint), GlyphChoice> Known = new();

    /// <summary>The glyph for a sign: of the wanted face, else of another that holds it, else the stand-in.</summary>
    /// <param name="wanted">The wanted face.</param>
    /// <param name="codePoint">The sign as a Unicode code point.</param>
    public static GlyphChoice Of(FontFace wanted, int codePoint) => Known.GetOrAdd((wanted, codePoint), static sign =>
    {
        FontFace? holding = FontShelf.Holding(sign.Face, sign.CodePoint);
        FontFace face = holding ?? FontFace.Text;
        return new GlyphChoice(face, FontShelf.Of(face).GetGlyph(holding is null ? PrintableText.StandIn : sign.CodePoint));
    });
}
