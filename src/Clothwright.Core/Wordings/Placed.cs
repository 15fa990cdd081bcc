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
        while (pattern.IndexOf('{', from) is >= 0 and var open && pattern.IndexOf('}', open) is >= 0 and var close)
        {
            words.Add(pattern[from..open]);
            places.Add(pattern[(open + 1)..close]);
            from = close + 1;
        }

        words.Add(pattern[from..]);
        return (words, places);
    }
}
