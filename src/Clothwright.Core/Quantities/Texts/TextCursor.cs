using System.Globalization;

namespace Clothwright.Core.Quantities;

/// <summary>Walks through a piece of typed text from left to right and words the problems it meets.</summary>
internal sealed class TextCursor
{
    // Nothing a person types for one measure or count is longer; longer text is refused before it is walked.
    private const int LongestText = 200;
    private const int LongestQuote = 40;

    public TextCursor(string text, string where)
    {
        ArgumentNullException.ThrowIfNull(text);
        Whole = text;
        Where = where;
        Text = text.Length > LongestText ? text[..LongestText] : text;
        IsTooLong = text.Length > LongestText;
    }

    /// <summary>The text that is walked through.</summary>
    public string Text { get; }

    /// <summary>Field path for problems.</summary>
    public string Where { get; }

    /// <summary>Index of the next character.</summary>
    public int Position { get; set; }

    /// <summary>Whether the text is longer than anything a person would type here.</summary>
    public bool IsTooLong { get; }

    /// <summary>Whether nothing but blanks is left.</summary>
    public bool AtEnd
    {
        get
        {
            SkipBlanks();
            return Position >= Text.Length;
        }
    }

    /// <summary>The next character after blanks, or the null character at the end.</summary>
    public char Next => AtEnd ? '\0' : Text[Position];

    private string Whole { get; }

    /// <summary>A text in quotation marks, shortened if it is long, with control characters blanked.</summary>
    public static string Quote(string text)
    {
        string shown = text.Length > LongestQuote ? text[..LongestQuote] + "…" : text;
        return $"\"{string.Concat(shown.Select(c => char.IsControl(c) ? ' ' : c))}\"";
    }

    /// <summary>The whole text in quotation marks.</summary>
    public string Quoted() => Quote(Whole);

    /// <summary>A problem at a place of the text.</summary>
    public InputProblem Problem(string what, string mend, int? at = null) =>
        new(what, Where, mend) { Text = Text, Position = Math.Min(at ?? Position, Text.Length) };

    /// <summary>Takes one of the characters, after blanks.</summary>
    public bool TryTake(params ReadOnlySpan<char> any)
    {
        if (AtEnd || !any.Contains(Text[Position])) return false;
        Position++;
        return true;
    }

    /// <summary>Takes a word if it comes next, whatever its case, and no letter follows it.</summary>
    public bool TryTakeWord(string word)
    {
        SkipBlanks();
        int end = Position + word.Length;
        if (end > Text.Length || string.Compare(Text, Position, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) != 0) return false;
        if (end < Text.Length && char.IsLetter(word[^1]) && char.IsLetter(Text[end])) return false;
        Position = end;
        return true;
    }

    /// <summary>Takes letters, and points between letters; empty if none comes next.</summary>
    public string TakeWord()
    {
        SkipBlanks();
        int start = Position;
        while (Position < Text.Length && (char.IsLetter(Text[Position]) || (Text[Position] == '.' && Position > start)
            || Text[Position] is '"' or '″' or '\'' or '′'))
        {
            Position++;
        }

        return Text[start..Position];
    }

    /// <summary>Takes digits with at most one decimal point.</summary>
    /// <param name="number">The number; finite, 0 or more.</param>
    public bool TryTakeNumber(out double number)
    {
        SkipBlanks();
        int start = Position;
        bool point = false;
        while (Position < Text.Length && (char.IsAsciiDigit(Text[Position]) || (Text[Position] == '.' && !point && FollowedByDigit())))
        {
            point |= Text[Position] == '.';
            Position++;
        }

        bool read = double.TryParse(Text.AsSpan(start, Position - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number)
            && double.IsFinite(number);
        if (!read) Position = start;
        return read;
    }

    /// <summary>The commonest slip with numbers: a comma, which some read as a point and some as a mark of thousands.</summary>
    public InputProblem? CommaProblem()
    {
        int comma = Text.IndexOf(',', StringComparison.Ordinal);
        while (comma >= 0)
        {
            if (comma > 0 && comma + 1 < Text.Length && char.IsAsciiDigit(Text[comma - 1]) && char.IsAsciiDigit(Text[comma + 1]))
            {
                return Problem(
                    $"The comma in {Quoted()} can mean a decimal point or thousands.",
                    "Write the number without a comma: 1.5 with a point, or 1500 without any mark.",
                    comma);
            }

            comma = Text.IndexOf(',', comma + 1);
        }

        return null;
    }

    private bool FollowedByDigit() => Position + 1 < Text.Length && char.IsAsciiDigit(Text[Position + 1]);

    private void SkipBlanks()
    {
        while (Position < Text.Length && char.IsWhiteSpace(Text[Position])) Position++;
    }
}
