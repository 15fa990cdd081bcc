using System.Buffers;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Fields;
using Clothwright.Interchange.WorksheetJson.Sections;

namespace Clothwright.Interchange.Http;

/// <summary>Yarns of the shelf as JSON: each written as it is on a worksheet.</summary>
public static class ShelfText
{
    private static readonly JsonWriterOptions Pretty = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Reads one yarn.</summary>
    /// <param name="utf8">The text.</param>
    public static Parsed<YarnEntry> ReadYarn(ReadOnlyMemory<byte> utf8) =>
        RecordText.Read(utf8, root => ShelfJson.ReadYarn(new JsonSection(root, "", ShelfJson.Fields)));

    /// <summary>Writes one yarn.</summary>
    /// <param name="yarn">The yarn.</param>
    public static byte[] Write(YarnEntry yarn) => Written(writer => ShelfJson.Write(writer, yarn));

    /// <summary>Reads the whole shelf: <c>{ "yarns": [ { "version": 1, "item": { … } } ] }</c>.</summary>
    /// <param name="utf8">The text.</param>
    public static Parsed<ImmutableArray<Kept<YarnEntry>>> ReadShelf(ReadOnlyMemory<byte> utf8) => RecordText.Read(utf8, root =>
        new JsonSection(root, "", ["yarns"]).Sections("yarns", ["version", "item"])
            .Select(kept => new Kept<YarnEntry>(kept.Whole("version", 1, int.MaxValue), ShelfJson.ReadYarn(kept.Section("item", ShelfJson.Fields))))
            .ToImmutableArray());

    /// <summary>Writes the whole shelf.</summary>
    /// <param name="yarns">The yarns with their versions, in order.</param>
    public static byte[] Write(IEnumerable<Kept<YarnEntry>> yarns) => Written(writer =>
    {
        writer.WriteStartObject();
        writer.WriteStartArray("yarns");
        foreach (Kept<YarnEntry> kept in yarns)
        {
            writer.WriteStartObject();
            writer.WriteNumber("version", kept.Version);
            writer.WritePropertyName("item");
            ShelfJson.Write(writer, kept.Item);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    internal static byte[] Written(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Pretty)) write(writer);
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }
}
