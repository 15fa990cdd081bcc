using System.Collections.Immutable;

namespace Clothwright.Core.Quantities;

/// <summary>Reads the tables of trade data that are part of this assembly.</summary>
/// <remarks>
/// A table is a text file: lines from <c>#</c> on are for the reader, a line of cells parted by <c>|</c> is a row,
/// the first row names the columns. Its resource name is its file name.
/// </remarks>
internal static class EmbeddedTable
{
    /// <summary>The rows of a table, each by column name.</summary>
    /// <exception cref="InvalidOperationException">No such table, or a row with a wrong number of cells.</exception>
    public static ImmutableArray<ImmutableDictionary<string, string>> Rows(string name)
    {
        string[]? head = null;
        var rows = ImmutableArray.CreateBuilder<ImmutableDictionary<string, string>>();
        foreach (string line in Lines(name))
        {
            string[] cells = line.Split('|', StringSplitOptions.TrimEntries);
            if (head is null)
            {
                head = cells;
                continue;
            }

            if (cells.Length != head.Length) throw new InvalidOperationException($"{name}: {cells.Length} cells under a head of {head.Length} in \"{line}\".");
            rows.Add(head.Zip(cells).ToImmutableDictionary(c => c.First, c => c.Second, StringComparer.Ordinal));
        }

        return rows.ToImmutable();
    }

    /// <summary>The lines of a table that hold data.</summary>
    /// <exception cref="InvalidOperationException">No such table.</exception>
    public static IEnumerable<string> Lines(string name)
    {
        using Stream stream = typeof(EmbeddedTable).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The assembly holds no table {name}.");
        using var reader = new StreamReader(stream);
        var lines = new List<string>();
        while (reader.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#' && !string.IsNullOrWhiteSpace(line)) lines.Add(line);
        }

        return lines;
    }
}
