namespace Clothwright.Core.Wordings;

/// <summary>Cuts a text, or a pattern of one, into its sentences.</summary>
internal static class Sentences
{
    /// <summary>The sentences in order, each with its stop and without the blank behind it.</summary>
    /// <param name="text">The text; in a pattern, a place before a capital is taken to hold whole sentences.</param>
    public static List<string> Of(string text)
    {
        var sentences = new List<string>();
        int from = 0;
        for (int at = 1; at < text.Length - 1; at++)
        {
            if (text[at] != ' ' || !IsStopped(text, at - 1) || !Begins(text, at + 1)) continue;
            sentences.Add(text[from..at]);
            from = at + 1;
        }

        sentences.Add(text[from..]);
        return sentences;
    }

    // A stop, perhaps in brackets or quotation marks, or the end of a place.
    private static bool IsStopped(string text, int at) => text[at] switch
    {
        '.' or '!' or '?' => true,
        ')' or '"' => at > 0 && text[at - 1] is '.' or '!' or '?',
        _ => false,
    };

    private static bool Begins(string text, int at) => char.IsUpper(text[at]) || text[at] is '{' or '"' || char.IsDigit(text[at]);
}
