using System.Buffers.Binary;
using System.Text;

namespace Clothwright.Drawing.Fonts;

/// <summary>A TrueType font with the outlines of a few glyphs only; glyphs keep their numbers.</summary>
/// <remarks>Tables as in ISO/IEC 14496-22 (Open Font Format).</remarks>
internal static class TrueTypeSubset
{
    // What a page needs to draw glyphs by their numbers; names, kerning and layout are left out.
    private static readonly string[] Kept = ["cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "prep"];

    /// <summary>The font with the outlines of the wanted glyphs and of those that they are made of.</summary>
    /// <param name="font">The whole font.</param>
    /// <param name="wanted">The glyphs.</param>
    public static byte[] Of(TrueTypeTables font, IEnumerable<ushort> wanted)
    {
        var glyphs = new SortedSet<ushort> { 0 };
        foreach (ushort glyph in wanted) AddWithParts(font, glyph, glyphs);
        byte[] outlines = new byte[glyphs.Sum(g => Padded(font.Outline(g).Length))];
        byte[] places = new byte[(font.Glyphs + 1) * 4];
        int at = 0;
        for (int glyph = 0; glyph < font.Glyphs; glyph++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(places.AsSpan(glyph * 4), (uint)at);
            if (!glyphs.Contains((ushort)glyph)) continue;
            ReadOnlySpan<byte> outline = font.Outline((ushort)glyph);
            outline.CopyTo(outlines.AsSpan(at));
            at += Padded(outline.Length);
        }

        BinaryPrimitives.WriteUInt32BigEndian(places.AsSpan(font.Glyphs * 4), (uint)at);
        byte[] head = font.Table("head").ToArray();
        BinaryPrimitives.WriteUInt32BigEndian(head.AsSpan(8), 0); // sum of the file, filled in below
        BinaryPrimitives.WriteInt16BigEndian(head.AsSpan(50), 1); // places of outlines in four bytes
        return Joined([.. Kept.Where(font.Has).Select(tag => (tag, tag switch
        {
            "glyf" => outlines,
            "loca" => places,
            "head" => head,
            _ => font.Table(tag).ToArray(),
        }))]);
    }

    private static void AddWithParts(TrueTypeTables font, ushort glyph, SortedSet<ushort> glyphs)
    {
        if (!glyphs.Add(glyph)) return;
        foreach (ushort part in font.PartsOf(glyph)) AddWithParts(font, part, glyphs);
    }

    private static byte[] Joined((string Tag, byte[] Contents)[] tables)
    {
        int head = 12 + 16 * tables.Length;
        byte[] file = new byte[head + tables.Sum(t => Padded(t.Contents.Length))];
        int power = (int)Math.Log2(tables.Length);
        BinaryPrimitives.WriteUInt32BigEndian(file, 0x00010000);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(4), (ushort)tables.Length);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(6), (ushort)(16 << power));
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(8), (ushort)power);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(10), (ushort)(16 * tables.Length - (16 << power)));
        int at = head;
        int headAt = 0;
        for (int i = 0; i < tables.Length; i++)
        {
            (string tag, byte[] contents) = tables[i];
            contents.CopyTo(file, at);
            Span<byte> entry = file.AsSpan(12 + 16 * i, 16);
            Encoding.ASCII.GetBytes(tag, entry);
            BinaryPrimitives.WriteUInt32BigEndian(entry[4..], Sum(file.AsSpan(at, Padded(contents.Length))));
            BinaryPrimitives.WriteUInt32BigEndian(entry[8..], (uint)at);
            BinaryPrimitives.WriteUInt32BigEndian(entry[12..], (uint)contents.Length);
            if (tag == "head") headAt = at;
            at += Padded(contents.Length);
        }

        BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(headAt + 8), unchecked(0xB1B0AFBA - Sum(file)));
        return file;
    }

    private static uint Sum(ReadOnlySpan<byte> bytes)
    {
        uint sum = 0;
        for (int i = 0; i + 4 <= bytes.Length; i += 4) sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(bytes[i..]));
        return sum;
    }

    private static int Padded(int length) => (length + 3) / 4 * 4;
}
