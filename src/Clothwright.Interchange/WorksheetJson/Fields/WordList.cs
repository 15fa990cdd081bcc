using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.WorksheetJson.Fields;

/// <summary>The words by which a choice is written in a worksheet file.</summary>
/// <typeparam name="T">The choice.</typeparam>
internal sealed class WordList<T>
    where T : struct, Enum
{
    private readonly (string Word, T Value)[] _words;

    /// <summary>The words in the order in which they are offered.</summary>
    /// <param name="words">Each word with what it means.</param>
    public WordList(params (string Word, T Value)[] words) => _words = words;

    /// <summary>Every word.</summary>
    public IReadOnlyList<string> All => [.. _words.Select(w => w.Word)];

    /// <summary>What a word means; null if it is not known. Case does not matter.</summary>
    public T? Find(string word)
    {
        foreach ((string known, T value) in _words)
        {
            if (string.Equals(known, word.Trim(), StringComparison.OrdinalIgnoreCase)) return value;
        }

        return null;
    }

    /// <summary>The word for a choice.</summary>
    public string Of(T value) => _words.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word;

    /// <summary>The word most like what was written; null if none is.</summary>
    public string? Nearest(string written) => NearestName.Of(written, All);
}
