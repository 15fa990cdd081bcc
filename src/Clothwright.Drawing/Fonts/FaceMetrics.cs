using System.Collections.Concurrent;
using SkiaSharp;

namespace Clothwright.Drawing.Fonts;

/// <summary>Widths and kerning of a face, asked of the font once for each glyph and pair.</summary>
internal sealed class FaceMetrics
{
    private static readonly ConcurrentDictionary<FontFace, FaceMetrics> Known = new();
    private readonly ConcurrentDictionary<ushort, float> _widths = new();
    private readonly ConcurrentDictionary<(ushort Left, ushort Right), float> _kerning = new();
    private readonly SKTypeface _typeface;

    private FaceMetrics(FontFace face) => _typeface = FontShelf.Of(face);

    /// <summary>The metrics of a face.</summary>
    /// <param name="face">The face.</param>
    public static FaceMetrics Of(FontFace face) => Known.GetOrAdd(face, static f => new FaceMetrics(f));

    /// <summary>Width of a glyph as a share of the size.</summary>
    /// <param name="glyph">The glyph.</param>
    public float Width(ushort glyph) => _widths.GetOrAdd(glyph, static (g, typeface) =>
    {
        using var font = new SKFont(typeface, typeface.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true, Subpixel = true };
        return font.GetGlyphWidths([g])[0] / typeface.UnitsPerEm;
    }, _typeface);

    /// <summary>What is added between two glyphs as a share of the size; below 0 draws them together.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    public float Kerning(ushort left, ushort right) => _kerning.GetOrAdd((left, right), static (pair, typeface) =>
    {
        int[] adjustment = new int[1];
        return typeface.GetKerningPairAdjustments([pair.Left, pair.Right], adjustment) ? (float)adjustment[0] / typeface.UnitsPerEm : 0;
    }, _typeface);
}
