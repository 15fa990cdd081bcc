using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>A face as pages use it: only the glyphs that are drawn are embedded, and each says which sign it writes.</summary>
/// <param name="face">The face.</param>
internal sealed class PdfFont(FontFace face)
{
    // Stem width for readers that must replace the font; it is embedded, so none should. Common practice, no source.
    private const int StemWidth = 80;
    private const int MostSignsInList = 100;
    private readonly SortedDictionary<ushort, int> _signs = [];

    /// <summary>Its name on pages.</summary>
    public string Name { get; } = $"F{(int)face}";

    /// <summary>Notes that a glyph is drawn.</summary>
    /// <param name="glyph">The glyph.</param>
    /// <param name="sign">The sign that it writes; of several the first in the code is kept.</param>
    public void Use(ushort glyph, int sign)
    {
        if (!_signs.TryGetValue(glyph, out int known) || sign < known) _signs[glyph] = sign;
    }

    /// <summary>Writes the font.</summary>
    /// <param name="objects">Where to write.</param>
    /// <returns>The number of the font.</returns>
    public int Write(PdfObjects objects)
    {
        var tables = new TrueTypeTables(FontShelf.FileOf(face));
        byte[] subset = TrueTypeSubset.Of(tables, _signs.Keys);
        int file = objects.AddStream(string.Create(CultureInfo.InvariantCulture, $"/Length1 {subset.Length}"), subset);
        string name = $"{Tag()}+{FontShelf.NameOf(face)}";
        (int left, int bottom, int right, int top) = tables.Box;
        double unit = 1000.0 / tables.UnitsPerEm;
        int slanted = tables.ItalicAngle != 0 ? 64 : 0;
        int descriptor = objects.Add(string.Create(CultureInfo.InvariantCulture, $"<< /Type /FontDescriptor /FontName /{name} /Flags {4 + slanted} /FontBBox [{left * unit:0} {bottom * unit:0} {right * unit:0} {top * unit:0}] /ItalicAngle {tables.ItalicAngle:0.##} /Ascent {tables.Ascent * unit:0} /Descent {tables.Descent * unit:0} /CapHeight {tables.Ascent * unit * 0.67:0} /StemV {StemWidth} /FontFile2 {PdfSyntax.Reference(file)} >>"));
        int glyphs = objects.Add($"<< /Type /Font /Subtype /CIDFontType2 /BaseFont /{name} /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> /CIDToGIDMap /Identity /W [{Widths()}] /FontDescriptor {PdfSyntax.Reference(descriptor)} >>");
        int signs = objects.AddStream("", SignMap());
        return objects.Add($"<< /Type /Font /Subtype /Type0 /BaseFont /{name} /Encoding /Identity-H /DescendantFonts [{PdfSyntax.Reference(glyphs)}] /ToUnicode {PdfSyntax.Reference(signs)} >>");
    }

    private string Widths()
    {
        var metrics = FaceMetrics.Of(face);
        return string.Join(' ', _signs.Keys.Select(g => string.Create(CultureInfo.InvariantCulture, $"{g} [{PdfSyntax.Number(metrics.Width(g) * 1000)}]")));
    }

    // Six letters that differ with the glyphs embedded (ISO 32000-1, section 9.6.4).
    private string Tag()
    {
        byte[] used = new byte[_signs.Count * 2];
        int at = 0;
        foreach (ushort glyph in _signs.Keys) BinaryPrimitives.WriteUInt16BigEndian(used.AsSpan(2 * at++), glyph);
        return string.Concat(SHA256.HashData(used).Take(6).Select(b => (char)('A' + b % 26)));
    }

    // From glyphs back to signs, so that text can be selected and read aloud (ISO 32000-1, section 9.10.3).
    private byte[] SignMap()
    {
        var map = new StringBuilder("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n");
        foreach (KeyValuePair<ushort, int>[] chunk in _signs.Chunk(MostSignsInList))
        {
            map.Append(CultureInfo.InvariantCulture, $"{chunk.Length} beginbfchar\n");
            foreach ((ushort glyph, int sign) in chunk)
            {
                string text = Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(char.ConvertFromUtf32(sign)));
                map.Append(CultureInfo.InvariantCulture, $"<{glyph:X4}> <{text}>\n");
            }

            map.Append("endbfchar\n");
        }

        return Encoding.ASCII.GetBytes(map.Append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n").ToString());
    }
}
