using Clothwright.TestKit;

namespace Clothwright.Core.Tests.Wordings;

/// <summary>The texts of the tables of trade data.</summary>
internal static class TableTexts
{
    /// <summary>The cell behind a key in every row that begins with it.</summary>
    public static IEnumerable<string> Rows(string table, string key, int cell) => Lines(table).Where(c => c[0] == key).Select(c => c[cell]);

    /// <summary>Every cell of some columns.</summary>
    public static IEnumerable<string> Columns(string table, params string[] columns)
    {
        string[][] lines = [.. Lines(table)];
        int[] at = [.. columns.Select(c => Array.IndexOf(lines[0], c))];
        return lines.Skip(1).SelectMany(l => at.Select(i => l[i])).Where(t => t.Length > 0);
    }

    private static IEnumerable<string[]> Lines(string table) => File.ReadAllLines(Repository.PathOf("src", "Clothwright.Core", table))
        .Where(l => l.Length > 0 && l[0] != '#')
        .Select(l => l.Split('|', StringSplitOptions.TrimEntries));
}
