using System.Buffers;
using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Clothwright.Interchange.Csv;

/// <summary>Writes a table of comma-separated values (RFC 4180): lines end in CR LF, values are guarded against being run as formulas.</summary>
internal static class CsvText
{
    private static readonly SearchValues<char> NeedQuotes = SearchValues.Create(",;\t\"\r\n");

    public static string Write(IEnumerable<string> columns, IEnumerable<IEnumerable<string>> rows)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n", ShouldQuote = static cell => NeedsQuotes(cell.Field) };
        using (var writer = new CsvWriter(text, configuration))
        {
            foreach (IEnumerable<string> row in rows.Prepend(columns))
            {
                foreach (string cell in row) writer.WriteField(CsvGuard.Guarded(cell));
                writer.NextRecord();
            }
        }

        return text.ToString();
    }

    /// <summary>The shortest text of a number that reads back as the same.</summary>
    public static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A length or mass with twelve digits: the noise of changing units does not belong in a table.</summary>
    public static string Measure(double number) => number.ToString("G12", CultureInfo.InvariantCulture);

    // By itself the library leaves a lone line feed or carriage return unquoted, and a reader would see two rows.
    private static bool NeedsQuotes(string? cell) =>
        !string.IsNullOrEmpty(cell) && (cell.AsSpan().ContainsAny(NeedQuotes) || cell[0] == ' ' || cell[^1] == ' ');
}
