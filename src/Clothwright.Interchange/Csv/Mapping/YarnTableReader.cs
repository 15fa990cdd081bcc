using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Csv;

/// <summary>Reads someone's table of yarns by a mapping of its columns.</summary>
public static class YarnTableReader
{
    /// <summary>Reads every row, and gathers every problem.</summary>
    /// <param name="text">The table.</param>
    /// <param name="mapping">What its columns tell.</param>
    /// <param name="isTaken">Whether an id stands on the shelf already; a yarn whose table gives no id gets a new one.</param>
    /// <param name="limits">How large it may be; null for <see cref="ReadingLimits.Usual"/>.</param>
    public static YarnTableOutcome Read(string text, YarnTableMapping mapping, Func<string, bool> isTaken, ReadingLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(mapping);
        ArgumentNullException.ThrowIfNull(isTaken);
        try
        {
            if (!YarnTableMapping.Separators.Contains(mapping.Separator)) throw CsvTable.Problem("separator", $"\"{mapping.Separator}\" separates no cells here.", "Use a comma, semicolon, tab or upright stroke.");
            List<CsvRow> rows = CsvRows.Read(text, mapping.Separator, limits ?? ReadingLimits.Usual);
            if (rows.Count > 0 && OwnTable.Is(rows[0])) return OwnTable.Read(text, rows, limits ?? ReadingLimits.Usual);
            string[] headers = [.. mapping.Columns.Select((_, i) => mapping.HasHeader && rows.Count > 0 && rows[0][i].Length > 0 ? rows[0][i] : $"{i + 1}")];
            return Gather(mapping.HasHeader ? rows.Skip(1) : rows, mapping, headers, isTaken);
        }
        catch (InputProblemException refusal)
        {
            return new YarnTableOutcome([], [], [refusal.Problem]);
        }
    }

    private static YarnTableOutcome Gather(IEnumerable<CsvRow> rows, YarnTableMapping mapping, string[] headers, Func<string, bool> isTaken)
    {
        var yarns = new List<YarnEntry>();
        var lines = new List<int>();
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        var ids = new HashSet<string>(StringComparer.Ordinal);
        var problems = ImmutableArray.CreateBuilder<InputProblem>();
        foreach (CsvRow row in rows)
        {
            try
            {
                var cells = new MappedCells(mapping, headers, row);
                YarnEntry yarn = MappedYarn.Of(cells);
                string key = cells.Text(YarnColumnRole.Id) is { Length: > 0 } own ? own : $"{yarn.Name}\n{yarn.Count} {yarn.CountSystem} {yarn.Label} {yarn.LinearDensity?.Tex}\n{yarn.Colour}\n{string.Join(' ', yarn.Fibres)}";
                if (places.TryGetValue(key, out int place))
                {
                    yarns[place] = yarns[place] with { Packages = yarns[place].Packages.AddRange(yarn.Packages) };
                    continue;
                }

                string id = yarn.Id.Length > 0 ? yarn.Id : ShelfId.Of(yarn.Name, i => isTaken(i) || ids.Contains(i));
                ids.Add(id);
                places.Add(key, yarns.Count);
                yarns.Add(yarn with { Id = id });
                lines.Add(row.Line);
            }
            catch (InputProblemException refusal)
            {
                problems.Add(refusal.Problem);
            }
        }

        return new YarnTableOutcome([.. yarns], [.. lines], problems.ToImmutable());
    }
}
