using Clothwright.Drawing.Fonts;
using SkiaSharp;

namespace Clothwright.Drawing.Tests.Fonts;

public class TrueTypeSubsetTests
{
    [Fact]
    public void A_subset_draws_its_glyphs_as_the_whole_font_does()
    {
        SKTypeface whole = FontShelf.Of(FontFace.Text);
        ushort[] glyphs = [.. "Wé ä½".Select(c => whole.GetGlyph(c))];
        byte[] subset = TrueTypeSubset.Of(new TrueTypeTables(FontShelf.FileOf(FontFace.Text)), glyphs);
        using var data = SKData.CreateCopy(subset);
        using SKTypeface small = SKTypeface.FromData(data);
        using var drawn = new SKFont(small, 1000);
        using var expected = new SKFont(whole, 1000);

        Assert.NotNull(small);
        Assert.True(subset.Length < FontShelf.FileOf(FontFace.Text).Length / 5);
        Assert.All(glyphs, g => Assert.Equal(expected.GetGlyphPath(g)?.ToSvgPathData(), drawn.GetGlyphPath(g)?.ToSvgPathData()));
    }

    [Fact]
    public void A_letter_with_an_accent_brings_its_parts()
    {
        var font = new TrueTypeTables(FontShelf.FileOf(FontFace.Text));
        ushort accented = FontShelf.Of(FontFace.Text).GetGlyph('é');
        ushort[] parts = [.. font.PartsOf(accented)];

        Assert.Equal(2, parts.Length); // e and the acute
        var subset = new TrueTypeTables(TrueTypeSubset.Of(font, [accented]));
        Assert.All(parts, p => Assert.True(subset.Outline(p).StartsWith(font.Outline(p)))); // filled up to four bytes
        Assert.Equal(0, subset.Outline(FontShelf.Of(FontFace.Text).GetGlyph('W')).Length);
    }

    [Theory]
    [InlineData("head")]
    [InlineData("hmtx")]
    [InlineData("maxp")]
    public void Measures_stay_as_they_are(string table)
    {
        var font = new TrueTypeTables(FontShelf.FileOf(FontFace.Heading));
        var subset = new TrueTypeTables(TrueTypeSubset.Of(font, [40]));

        Assert.Equal((font.Glyphs, font.UnitsPerEm, font.Ascent, font.Descent), (subset.Glyphs, subset.UnitsPerEm, subset.Ascent, subset.Descent));
        Assert.Equal(font.Table(table).Length, subset.Table(table).Length);
    }
}
