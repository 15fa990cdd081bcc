namespace Clothwright.Core.Quantities;

/// <summary>Finds the names nearest to a mistyped one.</summary>
internal static class NearNames
{
    /// <summary>Names that differ from the text by few letters, nearest first.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="names">All names.</param>
    /// <param name="most">How many to give at most.</param>
    public static IReadOnlyList<string> To(string text, IEnumerable<string> names, int most = 3)
    {
        if (text.Length > 60) return [];
        string wanted = text.ToLowerInvariant();
        int reach = Math.Max(2, wanted.Length / 3);
        return
        [
            .. names
                .Distinct(StringComparer.Ordinal)
                .Select(name => (Name: name, Distance: Distance(wanted, name.ToLowerInvariant())))
                .Where(n => n.Distance <= reach)
                .OrderBy(n => n.Distance)
                .ThenBy(n => n.Name, StringComparer.Ordinal)
                .Take(most)
                .Select(n => n.Name),
        ];
    }

    // Levenshtein, Soviet Physics Doklady 10 (1966): fewest letters put in, taken out or changed (from memory).
    private static int Distance(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int above = row[j];
                row[j] = Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[b.Length];
    }
}
