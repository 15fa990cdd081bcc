using System.Collections.Immutable;

namespace Clothwright.Core.Wordings;

/// <summary>A pattern of sentences in English, words with places <c>{0}</c>, <c>{1}</c> … between them, and how it is told.</summary>
internal sealed class SentencePattern
{
    private readonly ImmutableArray<string> _words;
    private readonly ToldPattern _told;

    public SentencePattern(string said, string told)
    {
        _words = [.. Placed.Cut(said).Words];
        _told = new ToldPattern(told);
        Letters = _words.Sum(w => w.Count(char.IsLetter));
    }

    /// <summary>How many letters the pattern itself has: the more, the surer it is the right one.</summary>
    public int Letters { get; }

    /// <summary>The whole word of the pattern by which it is looked up: its longest; null if it has none.</summary>
    public string? Anchor => _words
        .SelectMany((w, i) => WholeWords.Of(w, i > 0, i < _words.Length - 1))
        .OrderByDescending(w => w.Length)
        .FirstOrDefault();

    /// <summary>Every way in which a sentence can be one of this pattern, as what stands in the places.</summary>
    /// <param name="text">The sentence.</param>
    public IEnumerable<ImmutableArray<string>> Readings(string text)
    {
        if (!text.StartsWith(_words[0], StringComparison.Ordinal)) return [];
        return From(text, 1, _words[0].Length, []);
    }

    /// <summary>Whether what stands in a place is what a person typed, and told as it is: a place between quotation marks.</summary>
    /// <param name="place">The place; 0-based.</param>
    public bool IsQuoted(int place) => _words[place].EndsWith('"') && _words[place + 1].StartsWith('"');

    /// <summary>The sentence in the other language.</summary>
    /// <param name="places">What stands in the places, in English.</param>
    /// <param name="told">The same, told.</param>
    public string Tell(ImmutableArray<string> places, string[] told) => _told.Fill(places, told);

    private IEnumerable<ImmutableArray<string>> From(string text, int next, int at, ImmutableArray<string> places)
    {
        string words = _words[next];
        if (next == _words.Length - 1)
        {
            int end = text.Length - words.Length;
            if (end >= at && text.EndsWith(words, StringComparison.Ordinal)) yield return places.Add(text[at..end]);
            yield break;
        }

        for (int found = text.IndexOf(words, at, StringComparison.Ordinal); found >= 0; found = text.IndexOf(words, found + 1, StringComparison.Ordinal))
        {
            foreach (ImmutableArray<string> reading in From(text, next + 1, found + words.Length, places.Add(text[at..found]))) yield return reading;
        }
    }
}
