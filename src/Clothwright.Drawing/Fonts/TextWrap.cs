using System.Collections.Frozen;

namespace Clothwright.Drawing.Fonts;

/// <summary>Breaks text into lines that fit a width.</summary>
internal static partial class TextWrap
{
    private static readonly FrozenSet<string> Units = FrozenSet.ToFrozenSet(
        ["mm", "cm", "m", "in", "yd", "g", "kg", "oz", "lb", "h", "%", "tex", "g/m²", "oz/yd²", "yd/lb"], StringComparer.Ordinal);

    private const float KernedBlank = 0.02f;

    /// <summary>Breaks at blanks; a word wider than the line is broken inside.</summary>
    /// <param name="text">The text; cleaned here.</param>
    /// <param name="face">Face.</param>
    /// <param name="size">Size in points.</param>
    /// <param name="width">Width of a line in points, above 0.</param>
    /// <returns>The lines, each no wider than <paramref name="width"/>, save one that holds a single sign wider than that.</returns>
    public static List<TextRun> Lines(string text, FontFace face, float size, float width)
    {
        var lines = new List<TextRun>();
        var line = new List<string>();
        float used = 0;
        float blank = Blank(face, size);
        foreach (string word in Words(PrintableText.Clean(text)).SelectMany(w => Parts(w, face, size, width)))
        {
            float wide = new TextRun(word, face, size).Width;
            if (line.Count > 0 && used + blank + wide > width) Close(goesOn: true);
            used += (line.Count > 0 ? blank : 0) + wide;
            line.Add(word);
        }

        if (line.Count > 0) Close(goesOn: false);
        return lines;

        void Close(bool goesOn)
        {
            lines.Add(new TextRun(string.Join(' ', line), face, size) { GoesOn = goesOn });
            line.Clear();
            used = 0;
        }
    }

    /// <summary>A text on one line: all of it if it fits, else its beginning with three dots.</summary>
    /// <param name="text">The text; cleaned here.</param>
    /// <param name="style">How it is set.</param>
    /// <param name="width">Width of the line in points.</param>
    public static TextRun Fitted(string text, TextStyle style, float width)
    {
        var whole = new TextRun(text.Length > MostInLine ? text[..MostInLine] : text, style.Face, style.Size);
        if (whole.Width <= width && text.Length <= MostInLine) return whole;
        var dots = new TextRun("…", style.Face, style.Size);
        List<TextRun> lines = Lines(text, style.Face, style.Size, Math.Max(1, width - dots.Width));
        return lines.Count switch
        {
            0 => new TextRun("", style.Face, style.Size),
            1 => lines[0],
            _ => new TextRun(lines[0].Text + "…", style.Face, style.Size),
        };
    }

    // Words between blanks; a number keeps its unit beside it.
    private static IEnumerable<string> Words(string text)
    {
        string? number = null;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            bool isUnit = number is not null && Units.Contains(word.TrimEnd('.', ',', ';', ':', ')'));
            if (number is not null && !isUnit) yield return number;
            if (isUnit)
            {
                yield return $"{number} {word}";
                number = null;
                continue;
            }

            number = char.IsAsciiDigit(word[^1]) ? word : null;
            if (number is null) yield return word;
        }

        if (number is not null) yield return number;
    }

    // A word, cut into parts that fit where it is too long.
    private static IEnumerable<string> Parts(string word, FontFace face, float size, float width)
    {
        while (word.Length > 1 && new TextRun(word.Length > MostInLine ? word[..MostInLine] : word, face, size).Width > width)
        {
            int fitting = Fitting(word, face, size, width);
            if (fitting >= word.Length) break;
            yield return word[..fitting];
            word = word[fitting..];
        }

        yield return word;
    }

    // No line of a page holds more signs than this.
    private const int MostInLine = 1024;

    // How many signs of a word fit; at least one, never half a surrogate pair. Found by halving.
    private static int Fitting(string word, FontFace face, float size, float width)
    {
        int fits = 1;
        int tooMany = Math.Min(word.Length, MostInLine);
        while (tooMany - fits > 1)
        {
            int middle = (fits + tooMany) / 2;
            if (new TextRun(word[..middle], face, size).Width <= width) fits = middle;
            else tooMany = middle;
        }

        return char.IsHighSurrogate(word[fits - 1]) ? Math.Min(word.Length, fits + 1) : fits;
    }
}
