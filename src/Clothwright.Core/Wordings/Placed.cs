namespace Clothwright.Core.Wordings;

/// <summary>Cuts a pattern at its places.</summary>
internal static class Placed
{
    /// <summary>The words around the places, one more than there are places, and what stands in the braces.</summary>
    /// <param name="pattern">For example <c>{0} comes out {1} wide</c>.</param>
    public static (List<string> Words, List<string> Places) Cut(string pattern)
    {
        var words = new List<string>();
        var places = new List<string>();
        int from = 0;
        for (int open = pattern.IndexOf('{', 0); open >= 0; open = pattern.IndexOf('{', open + 1))
        {
            // A brace without a number behind it is one that is told: "between { and }".
            if (open + 1 >= pattern.Length || !char.IsAsciiDigit(pattern[open + 1])) continue;
            int close = pattern.IndexOf('}', open);
            words.Add(pattern[from..open]);
            places.Add(pattern[(open + 1)..close]);
            from = close + 1;
        }

        words.Add(pattern[from..]);
        return (words, places);
    }
}
