namespace Clothwright.Drawing.Fonts;

/// <summary>Breaks text into lines that fit a width.</summary>
internal static class TextWrap
{
    /// <summary>Breaks at blanks; a word wider than the line is broken inside.</summary>
    /// <param name="text">The text; cleaned here.</param>
    /// <param name="face">Face.</param>
    /// <param name="size">Size in points.</param>
    /// <param name="width">Width of a line in points, above 0.</param>
    /// <returns>The lines, each no wider than <paramref name="width"/>, save one that holds a single sign wider than that.</returns>
    public static List<TextRun> Lines(string text, FontFace face, float size, float width)
    {
        var lines = new List<TextRun>();
        string line = "";
        foreach (string word in PrintableText.Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (new TextRun(longer, face, size).Width <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0) lines.Add(new TextRun(line, face, size));
            line = word;
            while (new TextRun(line, face, size).Width > width)
            {
                int fitting = Fitting(line, face, size, width);
                if (fitting >= line.Length) break;
                lines.Add(new TextRun(line[..fitting], face, size));
                line = line[fitting..];
            }
        }

        if (line.Length > 0) lines.Add(new TextRun(line, face, size));
        return lines;
    }

    // How many signs of a word fit; at least one, never half a surrogate pair. Found by halving, for words may be very long.
    private static int Fitting(string word, FontFace face, float size, float width)
    {
        int fits = 1;
        int tooMany = Math.Min(word.Length, 4096);
        while (tooMany - fits > 1)
        {
            int middle = (fits + tooMany) / 2;
            if (new TextRun(word[..middle], face, size).Width <= width) fits = middle;
            else tooMany = middle;
        }

        return char.IsHighSurrogate(word[fits - 1]) ? Math.Min(word.Length, fits + 1) : fits;
    }
}
