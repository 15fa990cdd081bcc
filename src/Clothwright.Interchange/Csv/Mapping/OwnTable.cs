using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Csv;

/// <summary>The table that this program writes itself: it needs no guessing, and is read with nothing lost.</summary>
internal static class OwnTable
{
    /// <summary>Whether the first row names the columns that this program writes.</summary>
    public static bool Is(CsvRow head) => head.Cells.Length >= YarnColumns.All.Length - 1 && YarnColumns.All.SkipLast(1).Select((name, i) => head[i] == name).All(same => same);

    /// <summary>Reads it.</summary>
    public static YarnTableOutcome Read(string text, List<CsvRow> rows, ReadingLimits limits)
    {
        Parsed<ImmutableArray<Yarn>> yarns = YarnShelfTable.Read(text.TrimStart('\uFEFF'), limits);
        if (!yarns.TryGet(out ImmutableArray<Yarn> read)) return new YarnTableOutcome([], [], [yarns.Problem!]);
        return new YarnTableOutcome([.. read.Select(YarnEntry.Of)], [.. read.Select(y => rows.First(r => r[0] == y.Id).Line)], []);
    }
}
