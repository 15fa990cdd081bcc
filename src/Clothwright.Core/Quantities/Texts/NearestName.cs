namespace Clothwright.Core.Quantities;

/// <summary>Finds the name a person most likely meant.</summary>
public static class NearestName
{
    /// <summary>The name that needs the fewest single changes of a letter to be made from what was written.</summary>
    /// <param name="written">What the person wrote.</param>
    /// <param name="names">The names there are.</param>
    /// <returns>The nearest name, the first of several equally near; null when none shares at least half of its letters.</returns>
    public static string? Of(string written, IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(names);
        string from = written.Length > LongestCompared ? written[..LongestCompared] : written;
        string? best = null;
        int fewest = int.MaxValue;
        foreach (string name in names)
        {
            int changes = Changes(from, name);
            if (changes >= fewest || changes * 2 > Math.Max(from.Length, name.Length)) continue;
            fewest = changes;
            best = name;
        }

        return best;
    }

    /// <summary>The names nearest to what was written, nearest first; names equally near in the order of the alphabet.</summary>
    /// <param name="written">What the person wrote.</param>
    /// <param name="names">The names there are.</param>
    /// <param name="most">How many to give at most.</param>
    /// <returns>Names that differ by a third of the letters or by two letters; empty when none does.</returns>
    public static IReadOnlyList<string> Several(string written, IEnumerable<string> names, int most = 3)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(names);
        string from = written.Length > LongestCompared ? written[..LongestCompared] : written;
        int reach = Math.Max(2, from.Length / 3);
        return
        [
            .. names
                .Distinct(StringComparer.Ordinal)
                .Select(name => (Name: name, Changes: Changes(from, name)))
                .Where(n => n.Changes <= reach)
                .OrderBy(n => n.Changes)
                .ThenBy(n => n.Name, StringComparer.Ordinal)
                .Take(most)
                .Select(n => n.Name),
        ];
    }

    // A name of the trade is short; whatever goes beyond this is not a slip of one.
    private const int LongestCompared = 80;

    // Levenshtein distance, case aside, with one row kept.
    private static int Changes(string from, string to)
    {
        int[] row = [.. Enumerable.Range(0, to.Length + 1)];
        for (int i = 1; i <= from.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
            {
                int same = char.ToUpperInvariant(from[i - 1]) == char.ToUpperInvariant(to[j - 1]) ? 0 : 1;
                (diagonal, row[j]) = (row[j], Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + same));
            }
        }

        return row[to.Length];
    }
}
