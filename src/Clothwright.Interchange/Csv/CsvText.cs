using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Clothwright.Interchange.Csv;

/// <summary>Writes a table of comma-separated values (RFC 4180): lines end in CR LF, values are guarded against being run as formulas.</summary>
internal static class CsvText
{
    public static string Write(IEnumerable<string> columns, IEnumerable<IEnumerable<string>> rows)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var writer = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" }))
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
}
