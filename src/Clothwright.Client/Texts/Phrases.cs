using System.Collections.Frozen;
using System.Text.Json;

namespace Clothwright.Client.Texts;

/// <summary>Every text of the page in one language, by key. A text may hold places in braces: <c>{width}</c>.</summary>
public sealed class Phrases
{
    private readonly FrozenDictionary<string, string> _texts;

    private Phrases(string language, FrozenDictionary<string, string> texts)
    {
        Language = language;
        _texts = texts;
    }

    /// <summary>English.</summary>
    public static Phrases English { get; } = Read("en");

    /// <summary>The language by its two-letter code, for example <c>en</c>.</summary>
    public string Language { get; }

    /// <summary>The text under a key.</summary>
    /// <param name="key">The key, for example <c>brief.heading</c>.</param>
    /// <exception cref="KeyNotFoundException">There is no such text.</exception>
    public string this[string key] => _texts.TryGetValue(key, out string? text) ? text : throw new KeyNotFoundException($"There is no text \"{key}\" in {Language}.");

    /// <summary>The text under a key with its places filled.</summary>
    /// <param name="key">The key.</param>
    /// <param name="fills">What stands in each place, by its name.</param>
    public string With(string key, params ReadOnlySpan<(string Place, string Fill)> fills)
    {
        string text = this[key];
        foreach ((string place, string fill) in fills) text = text.Replace($"{{{place}}}", fill, StringComparison.Ordinal);
        return text;
    }

    /// <summary>The word for a member of an enumeration, under <c>Type.Member</c>.</summary>
    /// <param name="value">The member.</param>
    public string Word<T>(T value)
        where T : struct, Enum => this[$"{typeof(T).Name}.{value}"];

    /// <summary>Reads the texts of a language built into the page.</summary>
    /// <param name="language">Its two-letter code.</param>
    /// <exception cref="ArgumentException">The page has no texts in this language.</exception>
    public static Phrases Read(string language)
    {
        using Stream stream = typeof(Phrases).Assembly.GetManifestResourceStream($"{language}.texts.json")
            ?? throw new ArgumentException($"The page has no texts in \"{language}\".", nameof(language));
        using JsonDocument document = JsonDocument.Parse(stream);
        return new Phrases(language, document.RootElement.EnumerateObject().ToFrozenDictionary(p => p.Name, p => p.Value.GetString()!, StringComparer.Ordinal));
    }
}
