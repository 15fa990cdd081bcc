using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Http;

/// <summary>What may be an id: it stands in addresses and in names of files.</summary>
public static class RecordId
{
    /// <summary>The longest id, in characters.</summary>
    public const int Longest = 80;

    /// <summary>Reads an id: letters and digits of any script, and <c>-</c>, <c>_</c>, <c>.</c> between them.</summary>
    /// <param name="text">The text as given.</param>
    /// <param name="where">Place to name in a problem.</param>
    /// <returns>The id as given, or the problem.</returns>
    public static Parsed<string> Parse(string text, string where = "id")
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length is > 0 and <= Longest && text.All(IsFit) && char.IsLetterOrDigit(text[0]) && char.IsLetterOrDigit(text[^1])) return text;
        string shown = text.Length <= 40 ? text : text[..40] + " …";
        return new InputProblem(
            $"\"{shown}\" cannot be an id.",
            where,
            $"Use at most {Longest} letters and digits, with - or _ between them, for example tide-blue.");
    }

    private static bool IsFit(char letter) => char.IsLetterOrDigit(letter) || letter is '-' or '_' or '.';
}
