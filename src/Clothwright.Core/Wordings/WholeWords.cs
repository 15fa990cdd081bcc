namespace Clothwright.Core.Wordings;

/// <summary>Finds the words in a stretch of text.</summary>
internal static class WholeWords
{
    /// <summary>The runs of letters.</summary>
    /// <param name="text">The stretch.</param>
    /// <param name="openBefore">Whether a place goes before it, so that a first run that touches it may be the end of a longer word.</param>
    /// <param name="openAfter">Whether a place follows.</param>
    public static IEnumerable<string> Of(string text, bool openBefore = false, bool openAfter = false)
    {
        for (int from = 0; from < text.Length; from++)
        {
            if (!char.IsLetter(text[from])) continue;
            int to = from + 1;
            while (to < text.Length && char.IsLetter(text[to])) to++;
            bool cut = (openBefore && from == 0) || (openAfter && to == text.Length);
            if (!cut) yield return text[from..to];
            from = to;
        }
    }
}
