using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Fields;
using Clothwright.Interchange.WorksheetJson.Sections;

namespace Clothwright.Interchange.WorksheetJson;

/// <summary>Writes worksheet files. What was written reads back as the same worksheet and writes as the same bytes.</summary>
public static class WorksheetWriter
{
    // Worksheets are files of their own, never put into a page: letters of every language stay readable.
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes a worksheet as JSON in UTF-8, indented, ending in a line feed.</summary>
    /// <param name="worksheet">The worksheet.</param>
    public static byte[] Write(Worksheet worksheet)
    {
        ArgumentNullException.ThrowIfNull(worksheet);
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Options)) Write(writer, worksheet);
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    private static void Write(Utf8JsonWriter writer, Worksheet worksheet)
    {
        writer.WriteStartObject();
        writer.WriteNumber("clothwright", Worksheet.CurrentVersion);
        writer.WriteString("title", worksheet.Title);
        if (worksheet.Note.Length > 0) writer.WriteString("note", worksheet.Note);
        writer.WriteString("units", JsonWords.Units.Of(worksheet.Units));
        writer.WriteString("currency", worksheet.Currency);
        BenchJson.Write(writer, worksheet);
        ShelfJson.Write(writer, worksheet);
        writer.WriteString("loom", worksheet.LoomId);
        WeaveJson.Write(writer, worksheet.Weave);
        writer.WriteString("purpose", JsonWords.Purposes.Of(worksheet.Purpose));
        if (worksheet.Sett is { } sett) writer.Threads("ends", sett);
        else writer.WriteString("sett", "advise");
        if (worksheet.Reed is not null) writer.WriteString("reed", worksheet.Reed);
        WarpJson.Write(writer, worksheet);
        writer.WriteStartArray("pieces");
        foreach (PieceEntry piece in worksheet.Pieces) PieceJson.Write(writer, piece);
        writer.WriteEndArray();
        AllowancesJson.Write(writer, worksheet.Allowances);
        RatesJson.Write(writer, worksheet.Rates);
        writer.WriteEndObject();
    }
}
