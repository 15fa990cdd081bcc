using System.Text.RegularExpressions;
using Clothwright.Core.Colours;

namespace Clothwright.Core.Yarns;

/// <summary>The colour in free words: what is left when everything else was understood.</summary>
internal static class QuickColour
{
    /// <summary>The words that were nothing else, the longest stretch of them; null if none are left.</summary>
    public static QuickFound<string>? Name(QuickText text)
    {
        string name = text.Rest().Select(Core).Where(r => r.Any(char.IsLetter)).OrderByDescending(r => r.Length).FirstOrDefault() ?? "";
        return name.Length == 0 ? null : new QuickFound<string>(name, name);
    }

    /// <summary>A middling colour by the last colour word in a name; null if it has none.</summary>
    public static QuickFound<SrgbColour>? Of(QuickFound<string>? name)
    {
        if (name is null) return null;
        return QuickWords.Colours
            .Select(c => (At: QuickWords.IndexIn(name.Value, c.Word), c.Word, c.Means))
            .Where(c => c.At >= 0)
            .OrderByDescending(c => c.At)
            .Select(c => new QuickFound<SrgbColour>(c.Means, name.Value.Substring(c.At, c.Word.Length)))
            .FirstOrDefault();
    }

    private static string Core(string stretch)
    {
        string words = QuickPatterns.Filler().Replace(stretch, " ");
        string core = QuickPatterns.Trimmed().Match(words).Groups["core"].Value;
        return string.Join(' ', core.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
