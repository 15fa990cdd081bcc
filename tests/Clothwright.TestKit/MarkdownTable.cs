namespace Clothwright.TestKit;

/// <summary>Reads a table of check values from a Markdown file, so that one page serves reader and test alike.</summary>
public sealed class MarkdownTable
{
    private MarkdownTable(IReadOnlyList<IReadOnlyDictionary<string, string>> rows) => Rows = rows;

    /// <summary>The rows, each by column name.</summary>
    public IReadOnlyList<IReadOnlyDictionary<string, string>> Rows { get; }

    /// <summary>All tables of a file that have the wanted first column, joined.</summary>
    /// <param name="path">Path below the tests' output folder, for example <c>Tables/yarn-counts.md</c>.</param>
    /// <param name="firstColumn">Name of the first column.</param>
    /// <exception cref="InvalidDataException">The file holds no such table, or a row has another number of cells than its head.</exception>
    public static MarkdownTable Load(string path, string firstColumn = "id")
    {
        var rows = new List<IReadOnlyDictionary<string, string>>();
        string[]? head = null;
        int number = 0;
        foreach (string line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, path)))
        {
            number++;
            if (!line.StartsWith('|'))
            {
                head = null;
                continue;
            }

            string[] cells = Cells(line);
            if (cells.All(c => c.Length > 0 && c.All(ch => ch is '-' or ':'))) continue;
            if (head is null)
            {
                head = cells;
                continue;
            }

            if (head[0] != firstColumn) continue;
            if (cells.Length != head.Length)
            {
                throw new InvalidDataException($"{path}, line {number}: {cells.Length} cells under a head of {head.Length}.");
            }

            rows.Add(head.Zip(cells).ToDictionary(p => p.First, p => p.Second));
        }

        return rows.Count > 0
            ? new MarkdownTable(rows)
            : throw new InvalidDataException($"{path} holds no table whose first column is \"{firstColumn}\".");
    }

    // A bar inside a cell is written \|.
    private static string[] Cells(string line) =>
        [.. line.Replace("\\|", "\u0001", StringComparison.Ordinal).Trim().Trim('|').Split('|').Select(c => c.Trim().Replace('\u0001', '|'))];
}
