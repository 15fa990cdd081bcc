using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;
using CsvHelper;
using CsvHelper.Configuration;

namespace Clothwright.Interchange.Csv;

/// <summary>A table of comma-separated values (RFC 4180) whose first line names its columns.</summary>
internal sealed class CsvTable
{
    private readonly Dictionary<string, int> _columns;

    private CsvTable(Dictionary<string, int> columns, List<CsvRow> rows)
    {
        _columns = columns;
        Rows = rows;
    }

    public IReadOnlyList<CsvRow> Rows { get; }

    public int IndexOf(string column) => _columns.GetValueOrDefault(column, -1);

    /// <summary>Reads a table; the separator is the comma, semicolon or tab of its first line.</summary>
    /// <exception cref="InputProblemException">It cannot be read, is too large, or a needed column is missing.</exception>
    public static CsvTable Read(string text, ReadingLimits limits, params ReadOnlySpan<string> needed)
    {
        if (text.Length > limits.MaxBytes) throw Problem("table", $"The table is longer than {limits.MaxBytes} characters.", "Give the rows that are needed.");
        int firstEnd = text.AsSpan().IndexOfAny('\r', '\n');
        ReadOnlySpan<char> head = firstEnd < 0 ? text : text.AsSpan(0, firstEnd);
        int fault = 0;
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = SeparatorOf(head).ToString(),
            BadDataFound = bad => fault = fault == 0 ? bad.Context.Parser?.RawRow ?? 1 : fault,
            MaxFieldSize = limits.MaxLineCharacters,
            TrimOptions = TrimOptions.None,
        };
        using var reader = new StringReader(text);
        using var parser = new CsvParser(reader, configuration);
        try
        {
            if (!parser.Read()) throw Problem("line 1", "The table is empty.", $"Name the columns in the first line: {string.Join(',', needed)}.");
            Dictionary<string, int> columns = Columns(parser.Record!);
            foreach (string column in needed)
            {
                if (!columns.ContainsKey(column)) throw Problem("line 1", $"There is no column \"{column}\".", $"Name the columns in the first line: {string.Join(',', needed)}.");
            }

            var rows = new List<CsvRow>();
            while (parser.Read())
            {
                if (fault > 0) throw Problem($"line {fault}", "A quotation mark stands where none can.", "Put the whole value in quotation marks and double those inside it, for example \"the \"\"tide\"\" yarn\".");
                if (rows.Count == limits.MaxLines) throw Problem($"line {parser.RawRow}", $"There are more than {limits.MaxLines} rows.", "Give the rows that are needed.");
                string[] cells = parser.Record!;
                if (cells.All(string.IsNullOrWhiteSpace)) continue;
                rows.Add(new CsvRow(parser.RawRow, [.. cells.Select(CsvGuard.Unguarded)]));
            }

            return new CsvTable(columns, rows);
        }
        catch (CsvHelperException)
        {
            throw Problem($"line {Math.Max(1, parser.RawRow)}", "The row cannot be read as separated values.", $"Keep each value under {limits.MaxLineCharacters} characters and close every quotation mark.");
        }
    }

    /// <summary>The separator a first line uses: the one of comma, semicolon and tab that stands in it most often.</summary>
    public static char SeparatorOf(ReadOnlySpan<char> head)
    {
        int commas = head.Count(',');
        int semicolons = head.Count(';');
        int tabs = head.Count('\t');
        return semicolons > commas && semicolons >= tabs ? ';' : tabs > commas ? '\t' : ',';
    }

    private static Dictionary<string, int> Columns(string[] head)
    {
        var columns = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        for (int i = 0; i < head.Length; i++)
        {
            string name = head[i].Trim();
            if (name.Length > 0 && !columns.TryAdd(name, i)) throw Problem("line 1", $"Two columns are named \"{name}\".", "Give each column a name of its own.");
        }

        return columns;
    }

    public static InputProblemException Problem(string where, string what, string mend) => new(new InputProblem(what, where, mend));
}
