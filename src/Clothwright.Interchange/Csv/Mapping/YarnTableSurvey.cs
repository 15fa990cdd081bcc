using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Csv;

/// <summary>A table of yarns as someone keeps it: its rows, and how it seems to be meant.</summary>
/// <param name="Mapping">How it seems to be meant, to be confirmed.</param>
/// <param name="Headers">Names of the columns; numbers where it has none.</param>
/// <param name="Samples">The first rows below the names.</param>
/// <param name="Rows">How many rows there are below the names.</param>
public sealed record YarnTableSurvey(YarnTableMapping Mapping, ImmutableArray<string> Headers, ImmutableArray<ImmutableArray<string>> Samples, int Rows)
{
    private const int SamplesShown = 4;

    /// <summary>Looks a table over.</summary>
    /// <param name="text">The table.</param>
    /// <param name="separator">What stands between the cells; null to find out.</param>
    /// <param name="limits">How large it may be; null for <see cref="ReadingLimits.Usual"/>.</param>
    public static Parsed<YarnTableSurvey> Of(string text, char? separator = null, ReadingLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            char between = separator ?? TableGuess.Separator(text);
            List<CsvRow> rows = CsvRows.Read(text, between, limits ?? ReadingLimits.Usual);
            if (rows.Count == 0) return new InputProblem("The table is empty.", "line 1", "Give a table with a row for each yarn or package.");
            return Of(rows, between);
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }

    private static YarnTableSurvey Of(List<CsvRow> rows, char separator)
    {
        int width = rows.Max(r => r.Cells.Length);
        bool header = TableGuess.HasHeader(rows);
        List<CsvRow> below = header ? rows[1..] : rows;
        ImmutableArray<string> headers = [.. Enumerable.Range(0, width).Select(i => header && rows[0][i].Length > 0 ? rows[0][i] : $"{i + 1}")];
        ImmutableArray<YarnColumn> columns = TableGuess.Columns(header ? headers : [.. headers.Select(_ => "")], below);
        return new YarnTableSurvey(
            new YarnTableMapping(separator, TableGuess.DecimalComma(below, separator), header, columns),
            headers,
            [.. below.Take(SamplesShown).Select(r => Enumerable.Range(0, width).Select(i => r[i]).ToImmutableArray())],
            below.Count);
    }
}
