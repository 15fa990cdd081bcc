using System.Buffers.Binary;
using System.Text;

namespace Clothwright.Drawing.Fonts;

/// <summary>The tables of a TrueType font and the outlines in them.</summary>
internal sealed class TrueTypeTables
{
    private const int ArgumentsAreWords = 0x1;
    private const int HasScale = 0x8;
    private const int MorePartsFollow = 0x20;
    private const int HasTwoScales = 0x40;
    private const int HasMatrix = 0x80;

    private readonly byte[] _font;
    private readonly Dictionary<string, (int Offset, int Length)> _tables = new(StringComparer.Ordinal);
    private readonly bool _longPlaces;

    /// <param name="font">The font file.</param>
    public TrueTypeTables(byte[] font)
    {
        _font = font;
        int count = Word(4);
        for (int i = 0; i < count; i++)
        {
            int entry = 12 + 16 * i;
            _tables[Encoding.ASCII.GetString(font, entry, 4)] = (Long(entry + 8), Long(entry + 12));
        }

        _longPlaces = Word(At("head") + 50) == 1;
        Glyphs = Word(At("maxp") + 4);
    }

    /// <summary>How many glyphs there are.</summary>
    public int Glyphs { get; }

    /// <summary>Units to the em square.</summary>
    public int UnitsPerEm => Word(At("head") + 18);

    /// <summary>The box that holds every glyph: left, bottom, right, top in units.</summary>
    public (int Left, int Bottom, int Right, int Top) Box =>
        (Signed(At("head") + 36), Signed(At("head") + 38), Signed(At("head") + 40), Signed(At("head") + 42));

    /// <summary>Height above the baseline in units.</summary>
    public int Ascent => Signed(At("hhea") + 4);

    /// <summary>Depth below the baseline in units; below 0.</summary>
    public int Descent => Signed(At("hhea") + 6);

    /// <summary>Slant in degrees; below 0 leans to the right.</summary>
    public double ItalicAngle => Long(At("post") + 4) / 65536.0;

    /// <summary>Whether the font has a table.</summary>
    /// <param name="tag">Its tag.</param>
    public bool Has(string tag) => _tables.ContainsKey(tag);

    /// <summary>A table.</summary>
    /// <param name="tag">Its tag.</param>
    public ReadOnlySpan<byte> Table(string tag) => _font.AsSpan(_tables[tag].Offset, _tables[tag].Length);

    /// <summary>The outline of a glyph; empty for a blank.</summary>
    /// <param name="glyph">The glyph.</param>
    public ReadOnlySpan<byte> Outline(ushort glyph)
    {
        int from = Place(glyph);
        return _font.AsSpan(At("glyf") + from, Place(glyph + 1) - from);
    }

    /// <summary>The glyphs that a glyph is made of, such as a letter and its accent; none for one drawn by itself.</summary>
    /// <param name="glyph">The glyph.</param>
    public IEnumerable<ushort> PartsOf(ushort glyph)
    {
        if (Outline(glyph).Length < 10) yield break;
        int at = At("glyf") + Place(glyph);
        if (Signed(at) >= 0) yield break;
        at += 10;
        int flags = MorePartsFollow;
        while ((flags & MorePartsFollow) != 0)
        {
            flags = Word(at);
            yield return (ushort)Word(at + 2);
            at += 4 + ((flags & ArgumentsAreWords) != 0 ? 4 : 2)
                + ((flags & HasScale) != 0 ? 2 : (flags & HasTwoScales) != 0 ? 4 : (flags & HasMatrix) != 0 ? 8 : 0);
        }
    }

    private int At(string tag) => _tables[tag].Offset;

    private int Place(int glyph) => _longPlaces ? Long(At("loca") + glyph * 4) : Word(At("loca") + glyph * 2) * 2;

    private int Word(int at) => BinaryPrimitives.ReadUInt16BigEndian(_font.AsSpan(at));

    private int Signed(int at) => BinaryPrimitives.ReadInt16BigEndian(_font.AsSpan(at));

    private int Long(int at) => BinaryPrimitives.ReadInt32BigEndian(_font.AsSpan(at));
}
