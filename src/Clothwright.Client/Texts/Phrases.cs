using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using Clothwright.Core.Quantities;
using Clothwright.Core.Wordings;
using Clothwright.Core.Workings;

namespace Clothwright.Client.Texts;

/// <summary>Every text of the page in one language, by key. A text may hold places in braces: <c>{width}</c>.</summary>
public sealed class Phrases
{
    private readonly FrozenDictionary<string, string> _texts;
    private readonly Wording _wording;

    private Phrases(string language, FrozenDictionary<string, string> texts)
    {
        Language = language;
        _texts = texts;
        _wording = Wording.Of(language);
    }

    /// <summary>The languages that the page speaks, by their two-letter codes; the first is used where none is wanted.</summary>
    public static ImmutableArray<string> Languages { get; } = ["en", "de"];

    /// <summary>The language by its two-letter code, for example <c>en</c>.</summary>
    public string Language { get; }

    /// <summary>The text under a key.</summary>
    /// <param name="key">The key, for example <c>brief.heading</c>.</param>
    /// <exception cref="KeyNotFoundException">There is no such text.</exception>
    public string this[string key] => _texts.TryGetValue(key, out string? text) ? text : throw new KeyNotFoundException($"There is no text \"{key}\" in {Language}.");

    /// <summary>The text under a key, or another where there is none: for what the Core may know before the page does.</summary>
    /// <param name="key">The key.</param>
    /// <param name="other">What is said instead.</param>
    public string Or(string key, string other) => _texts.GetValueOrDefault(key, other);

    /// <summary>Whether there is a text under a key.</summary>
    /// <param name="key">The key.</param>
    public bool Has(string key) => _texts.ContainsKey(key);

    /// <summary>The text under a key with its places filled.</summary>
    /// <param name="key">The key.</param>
    /// <param name="fills">What stands in each place, by its name.</param>
    public string With(string key, params ReadOnlySpan<(string Place, string Fill)> fills)
    {
        string text = this[key];
        foreach ((string place, string fill) in fills) text = text.Replace($"{{{place}}}", fill, StringComparison.Ordinal);
        return text;
    }

    /// <summary>A number with what it counts: <c>1 end</c>, <c>4 ends</c>.</summary>
    /// <param name="what">What is counted, for example <c>ends</c>.</param>
    /// <param name="count">How many.</param>
    public string Counted(string what, int count) => count == 1 ? this[$"count.of.{what}.one"] : With($"count.of.{what}", ("count", count.ToString(CultureInfo.InvariantCulture)));

    /// <summary>What the Core said, in this language: a sentence, a name, a quantity with its unit.</summary>
    /// <param name="said">The words as the Core says them.</param>
    public string Told(string said) => _wording.Tell(said);

    /// <summary>A source, in this language; titles of books stay as they are.</summary>
    /// <param name="source">The source.</param>
    public string Told(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.In(_wording);
    }

    /// <summary>What is wrong and how to mend it, in this language.</summary>
    /// <param name="problem">The problem.</param>
    public string Told(InputProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return $"{_wording.Tell(problem.What)} {_wording.Tell(problem.Mend)}";
    }

    /// <summary>The word for a member of an enumeration, under <c>Type.Member</c>.</summary>
    /// <param name="value">The member.</param>
    public string Word<T>(T value)
        where T : struct, Enum => this[$"{typeof(T).Name}.{value}"];

    /// <summary>Reads the texts of a language built into the page: every file <c>subject.language.texts.json</c>.</summary>
    /// <param name="language">Its two-letter code.</param>
    /// <exception cref="ArgumentException">The page has no texts in this language.</exception>
    public static Phrases Read(string language)
    {
        Assembly page = typeof(Phrases).Assembly;
        string ending = $".{language}.texts.json";
        Dictionary<string, string> texts = new(StringComparer.Ordinal);
        foreach (string name in page.GetManifestResourceNames().Where(n => n.EndsWith(ending, StringComparison.Ordinal)))
        {
            using Stream stream = page.GetManifestResourceStream(name)!;
            using JsonDocument document = JsonDocument.Parse(stream);
            foreach (JsonProperty text in document.RootElement.EnumerateObject()) texts.Add(text.Name, text.Value.GetString()!);
        }

        return texts.Count > 0
            ? new Phrases(language, texts.ToFrozenDictionary(StringComparer.Ordinal))
            : throw new ArgumentException($"The page has no texts in \"{language}\".", nameof(language));
    }

    /// <summary>The texts in the language she chose, else in the first of her browser's languages that the page speaks, else in English.</summary>
    /// <param name="wanted">Language codes, the most wanted first.</param>
    public static Phrases For(IEnumerable<string> wanted) =>
        Read(wanted.Select(w => w.Split('-')[0].ToLowerInvariant()).FirstOrDefault(Languages.Contains) ?? Languages[0]);
}
