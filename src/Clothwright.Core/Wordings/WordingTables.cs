using System.Text;

namespace Clothwright.Core.Wordings;

/// <summary>Reads the tables of a language, <c>subject.language.po</c>, that are part of this assembly.</summary>
/// <remarks>They are written in the open format of GNU gettext, so that any editor of translations opens them; only <c>msgid</c> and <c>msgstr</c> are read.</remarks>
internal static class WordingTables
{
    /// <summary>Every pattern with its translation.</summary>
    /// <param name="language">The two-letter code.</param>
    public static IEnumerable<(string Said, string Told)> Of(string language)
    {
        string ending = $".{language}.po";
        foreach (string name in typeof(WordingTables).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(ending, StringComparison.Ordinal)))
        {
            using Stream stream = typeof(WordingTables).Assembly.GetManifestResourceStream(name)!;
            using var reader = new StreamReader(stream);
            foreach ((string said, string told) in Entries(reader.ReadToEnd())) yield return (said, told);
        }
    }

    /// <summary>The entries of one table; the head, whose pattern is empty, and patterns without a translation are left out.</summary>
    /// <param name="table">The text of the table.</param>
    /// <exception cref="InvalidOperationException">A line is none that such a table has.</exception>
    public static IEnumerable<(string Said, string Told)> Entries(string table)
    {
        var said = new StringBuilder();
        var told = new StringBuilder();
        StringBuilder? open = null;
        foreach (string line in table.Split('\n', StringSplitOptions.TrimEntries).Where(l => l.Length > 0 && l[0] != '#'))
        {
            if (line.StartsWith("msgid ", StringComparison.Ordinal))
            {
                if (said.Length > 0 && told.Length > 0) yield return (said.ToString(), told.ToString());
                said.Clear();
                told.Clear();
                open = said;
            }
            else if (line.StartsWith("msgstr ", StringComparison.Ordinal))
            {
                open = told;
            }

            if (open is null) throw new InvalidOperationException($"\"{line}\" stands before the first pattern.");
            Unquote(line, open);
        }

        if (said.Length > 0 && told.Length > 0) yield return (said.ToString(), told.ToString());
    }

    private static void Unquote(string line, StringBuilder to)
    {
        int from = line.IndexOf('"', StringComparison.Ordinal);
        if (from < 0 || line.Length < from + 2 || line[^1] != '"') throw new InvalidOperationException($"\"{line}\" holds no text between quotation marks.");
        for (int i = from + 1; i < line.Length - 1; i++)
        {
            if (line[i] == '\\') i++;
            to.Append(line[i]);
        }
    }
}
