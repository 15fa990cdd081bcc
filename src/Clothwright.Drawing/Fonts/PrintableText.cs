using System.Globalization;
using System.Text;

namespace Clothwright.Drawing.Fonts;

/// <summary>Makes text that came from outside safe to draw: what cannot be seen is left out, and nothing can turn the line around.</summary>
internal static class PrintableText
{
    /// <summary>The sign that stands for one that no bundled font holds.</summary>
    public const int StandIn = 0xFFFD;

    /// <summary>
    /// The text on one line: line ends, tabs and other controls become blanks, neighbouring blanks one; direction marks, joiners
    /// and other invisible format signs go, and so do halves of surrogate pairs.
    /// </summary>
    /// <param name="text">Any text.</param>
    public static string Clean(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var kept = new StringBuilder(text.Length);
        bool blank = false;
        foreach (Rune rune in text.EnumerateRunes())
        {
            UnicodeCategory category = Rune.GetUnicodeCategory(rune);
            if (category is UnicodeCategory.Format) continue;
            if (category is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator || rune.Value == ' ')
            {
                blank = kept.Length > 0;
                continue;
            }

            if (blank) kept.Append(' ');
            blank = false;
            kept.Append(rune.ToString());
        }

        return kept.ToString();
    }
}
