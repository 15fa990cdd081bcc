namespace Clothwright.Core.Wordings;

/// <summary>A pattern in another language. A place is <c>{0}</c>, or picks words by what stands there in English: <c>{0?1:Faden|*:Fäden}</c>, with <c>@</c> for what stands there itself.</summary>
internal sealed class ToldPattern
{
    private const string Itself = "@";

    private readonly List<string> _words;
    private readonly List<(int Place, (string Said, string Told)[] Choices)> _places;

    public ToldPattern(string told)
    {
        (_words, List<string> places) = Placed.Cut(told);
        _places = [.. places.Select(Read)];
    }

    /// <summary>The sentence.</summary>
    /// <param name="said">What stands in the places, in English.</param>
    /// <param name="told">The same, told.</param>
    public string Fill(IReadOnlyList<string> said, IReadOnlyList<string> told)
    {
        var text = new System.Text.StringBuilder(_words[0]);
        for (int i = 0; i < _places.Count; i++)
        {
            (int place, (string Said, string Told)[] choices) = _places[i];
            string chosen = choices.Length == 0 ? Itself : Chosen(choices, said[place].Trim());
            text.Append(chosen == Itself ? told[place] : chosen).Append(_words[i + 1]);
        }

        return text.ToString();
    }

    private static string Chosen((string Said, string Told)[] choices, string said) =>
        choices.FirstOrDefault(c => c.Said == said || c.Said == "*").Told ?? "";

    private static (int Place, (string Said, string Told)[] Choices) Read(string place)
    {
        string[] parts = place.Split('?', 2);
        return (
            int.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture),
            parts.Length == 1 ? [] : [.. parts[1].Split('|').Select(c => c.Split(':', 2)).Select(c => (c[0], c[1]))]);
    }
}
