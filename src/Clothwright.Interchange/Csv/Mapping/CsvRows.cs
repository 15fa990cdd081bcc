using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;
using CsvHelper;
using CsvHelper.Configuration;

namespace Clothwright.Interchange.Csv;

/// <summary>The rows of a table whose columns may be named or not.</summary>
internal static class CsvRows
{
    /// <summary>Reads every row that is not empty.</summary>
    /// <exception cref="InputProblemException">A row cannot be read, or the table is too large.</exception>
    public static List<CsvRow> Read(string text, char separator, ReadingLimits limits)
    {
        if (text.Length > limits.MaxBytes) throw CsvTable.Problem("table", $"The table is longer than {limits.MaxBytes} characters.", "Give the rows that are needed.");
        int fault = 0;
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = separator.ToString(),
            BadDataFound = bad => fault = fault == 0 ? bad.Context.Parser?.RawRow ?? 1 : fault,
            MaxFieldSize = limits.MaxLineCharacters,
            TrimOptions = TrimOptions.None,
        };
        using var reader = new StringReader(text.TrimStart('\uFEFF'));
        using var parser = new CsvParser(reader, configuration);
        var rows = new List<CsvRow>();
        try
        {
            while (parser.Read())
            {
                if (fault > 0) throw CsvTable.Problem($"line {fault}", "A quotation mark stands where none can.", "Put the whole value in quotation marks and double those inside it, for example \"the \"\"tide\"\" yarn\".");
                if (rows.Count > limits.MaxLines) throw CsvTable.Problem($"line {parser.RawRow}", $"There are more than {limits.MaxLines} rows.", "Give the rows that are needed.");
                string[] cells = parser.Record!;
                if (!cells.All(string.IsNullOrWhiteSpace)) rows.Add(new CsvRow(parser.RawRow, [.. cells.Select(CsvGuard.Unguarded)]));
            }
        }
        catch (CsvHelperException)
        {
            throw CsvTable.Problem($"line {Math.Max(1, parser.RawRow)}", "The row cannot be read as separated values.", $"Keep each value under {limits.MaxLineCharacters} characters and close every quotation mark.");
        }

        return rows;
    }
}
