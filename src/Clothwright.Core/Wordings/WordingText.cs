using Clothwright.Core.Quantities;

namespace Clothwright.Core.Wordings;

/// <summary>Reads which language is wanted.</summary>
public static class WordingText
{
    /// <summary>Reads a two-letter code, for example <c>de</c>.</summary>
    /// <param name="text">The code; case does not matter.</param>
    /// <param name="where">Field path for a problem.</param>
    public static Parsed<Wording> Parse(string text, string where = "language")
    {
        ArgumentNullException.ThrowIfNull(text);
        string? code = Wording.Languages.FirstOrDefault(l => string.Equals(l, text.Trim(), StringComparison.OrdinalIgnoreCase));
        return code is not null
            ? Wording.Of(code)
            : new InputProblem($"\"{text}\" is not a language that is spoken here.", where, $"Use one of {string.Join(", ", Wording.Languages)}.") { Text = text, Position = 0 };
    }
}
