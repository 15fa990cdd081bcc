using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>The numbered objects of a PDF file and the file they make (ISO 32000-1, sections 7.3 and 7.5).</summary>
/// <remarks>Small objects are packed together in object streams: a tagged document has thousands of them.</remarks>
internal sealed class PdfObjects
{
    private const int MostInPack = 400;
    private readonly List<string?> _plain = [];
    private readonly HashSet<int> _open = [];
    private readonly List<(int Number, string Entries, byte[] Packed)> _streams = [];

    /// <summary>Sets a number aside for an object that is written later.</summary>
    public int Reserve()
    {
        _plain.Add(null);
        return _plain.Count;
    }

    /// <summary>Gives a reserved object its body.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="body">Its body.</param>
    public void Set(int number, string body) => _plain[number - 1] = body;

    /// <summary>Adds an object.</summary>
    /// <param name="body">Its body.</param>
    /// <returns>Its number.</returns>
    public int Add(string body)
    {
        int number = Reserve();
        Set(number, body);
        return number;
    }

    /// <summary>Adds an object that is not packed, for readers that look into files without unpacking.</summary>
    /// <param name="body">Its body.</param>
    /// <returns>Its number.</returns>
    public int AddOpen(string body)
    {
        int number = Add(body);
        _open.Add(number);
        return number;
    }

    /// <summary>Adds a stream, packed.</summary>
    /// <param name="entries">Entries of its dictionary beside length and filter.</param>
    /// <param name="contents">What it holds.</param>
    /// <returns>Its number.</returns>
    public int AddStream(string entries, ReadOnlySpan<byte> contents)
    {
        int number = Reserve();
        _streams.Add((number, $"{entries} /Filter /FlateDecode".TrimStart(), Pack(contents)));
        return number;
    }

    /// <summary>Adds a stream as it is, for readers that look into files without unpacking.</summary>
    /// <param name="entries">Entries of its dictionary beside the length.</param>
    /// <param name="contents">What it holds.</param>
    /// <returns>Its number.</returns>
    public int AddOpenStream(string entries, ReadOnlySpan<byte> contents)
    {
        int number = Reserve();
        _streams.Add((number, entries, contents.ToArray()));
        return number;
    }

    /// <summary>Writes the file.</summary>
    /// <param name="stream">Where to write; stays open.</param>
    /// <param name="catalog">Number of the catalogue.</param>
    /// <param name="information">Number of the information dictionary.</param>
    public void Write(Stream stream, int catalog, int information)
    {
        var places = new Dictionary<int, (int Kind, long Place, int Index)>();
        PackPlain(places);
        var file = new PdfBytes().Add("%PDF-1.7\n%").Add([0xe2, 0xe3, 0xcf, 0xd3]).Add("\n");
        foreach (int number in _open.Order())
        {
            places[number] = (1, file.Count, 0);
            file.Add(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n{_plain[number - 1]}\nendobj\n"));
        }

        foreach ((int number, string entries, byte[] packed) in _streams)
        {
            places[number] = (1, file.Count, 0);
            AddStream(file, number, entries, packed);
        }

        int start = file.Count;
        int table = Reserve();
        places[table] = (1, start, 0);
        string id = Convert.ToHexString(SHA256.HashData(file.Written)[..16]);
        string size = (_plain.Count + 1).ToString(CultureInfo.InvariantCulture);
        AddStream(file, table, $"/Type /XRef /Size {size} /W [1 4 2] /Root {PdfSyntax.Reference(catalog)} /Info {PdfSyntax.Reference(information)} /ID [<{id}> <{id}>] /Filter /FlateDecode", Pack(Table(places)));
        file.Add($"startxref\n{start.ToString(CultureInfo.InvariantCulture)}\n%%EOF\n");
        stream.Write(file.Written);
    }

    private void PackPlain(Dictionary<int, (int Kind, long Place, int Index)> places)
    {
        foreach ((int Number, string Body)[] pack in _plain.Select((body, i) => (Number: i + 1, Body: body!)).Where(o => o.Body is not null && !_open.Contains(o.Number)).Chunk(MostInPack).ToArray())
        {
            var head = new PdfBytes();
            var bodies = new PdfBytes();
            int number = Reserve();
            for (int i = 0; i < pack.Length; i++)
            {
                head.Add(string.Create(CultureInfo.InvariantCulture, $"{pack[i].Number} {bodies.Count} "));
                bodies.Add(pack[i].Body).Add("\n");
                places[pack[i].Number] = (2, number, i);
            }

            string entries = string.Create(CultureInfo.InvariantCulture, $"/Type /ObjStm /N {pack.Length} /First {head.Count} /Filter /FlateDecode");
            _streams.Add((number, entries, Pack(head.Add(bodies.Written).Written)));
        }
    }

    // One row an object: its kind, then where it lies in the file, or in which pack and at which place there.
    private byte[] Table(Dictionary<int, (int Kind, long Place, int Index)> places)
    {
        byte[] rows = new byte[(_plain.Count + 1) * 7];
        rows[5] = rows[6] = 0xff;
        for (int number = 1; number <= _plain.Count; number++)
        {
            if (!places.TryGetValue(number, out (int Kind, long Place, int Index) at)) continue;
            Span<byte> row = rows.AsSpan(number * 7, 7);
            row[0] = (byte)at.Kind;
            System.Buffers.Binary.BinaryPrimitives.WriteUInt32BigEndian(row[1..], (uint)at.Place);
            System.Buffers.Binary.BinaryPrimitives.WriteUInt16BigEndian(row[5..], (ushort)at.Index);
        }

        return rows;
    }

    private static void AddStream(PdfBytes file, int number, string entries, byte[] packed) => file
        .Add(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n<< {entries} /Length {packed.Length} >>\nstream\n"))
        .Add(packed)
        .Add("\nendstream\nendobj\n");

    private static byte[] Pack(ReadOnlySpan<byte> contents)
    {
        using var packed = new MemoryStream();
        using (var zip = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true)) zip.Write(contents);
        return packed.ToArray();
    }
}
