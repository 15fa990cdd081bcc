using System.Text;

namespace Clothwright.Drawing.Fonts;

/// <summary>Signs of formulas that no bundled font holds, written with signs that they hold.</summary>
internal static class SpelledSigns
{
    private const char FirstSubscript = '\u2080';
    private const char LastSubscript = '\u2089';

    /// <summary>The text with such signs spelled.</summary>
    /// <param name="text">The text.</param>
    public static string In(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange('\0', '\u1fff')) return text;
        var spelled = new StringBuilder(text.Length + 4);
        foreach (char c in text)
        {
            _ = c switch
            {
                >= FirstSubscript and <= LastSubscript => spelled.Append((char)('0' + (c - FirstSubscript))),
                '\u207b' => spelled.Append('\u02c9'), // raised minus: the raised stroke of the phonetic signs
                '\u221b' => spelled.Append("³√"),
                '\u2153' => spelled.Append("1/3"),
                '\u2154' => spelled.Append("2/3"),
                '\u2308' or '\u230a' => spelled.Append('['),
                '\u2309' or '\u230b' => spelled.Append(']'),
                '\u22c5' or '\u2219' => spelled.Append('·'),
                '\u2009' or '\u202f' or '\u2002' or '\u2003' => spelled.Append('\u00a0'),
                _ => spelled.Append(c),
            };
        }

        return spelled.ToString();
    }
}
