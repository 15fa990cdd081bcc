namespace Clothwright.Core.Weaves.Structures;

/// <summary>Finds names that look like what was written.</summary>
internal static class NearNames
{
    /// <summary>The three names nearest by letters, nearest first.</summary>
    public static IReadOnlyList<string> To(string written, IEnumerable<string> names) =>
        [.. names.Select(n => (Name: n, Distance: Distance(written, n))).OrderBy(n => n.Distance).ThenBy(n => n.Name, StringComparer.Ordinal).Take(3).Select(n => n.Name)];

    /// <summary>Letters to change, add or take away to turn one text into the other (Levenshtein).</summary>
    public static int Distance(string a, string b)
    {
        int[] above = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 0; i < a.Length; i++)
        {
            var row = new int[b.Length + 1];
            row[0] = i + 1;
            for (int j = 0; j < b.Length; j++)
            {
                row[j + 1] = Math.Min(Math.Min(row[j], above[j + 1]) + 1, above[j] + (a[i] == b[j] ? 0 : 1));
            }

            above = row;
        }

        return above[b.Length];
    }
}
