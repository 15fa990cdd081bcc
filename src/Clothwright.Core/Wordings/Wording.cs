using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Clothwright.Core.Wordings;

/// <summary>A language in which what the program says can be told: warnings, problems, steps, names of rules, weaves and fibres.</summary>
/// <remarks>
/// The program says everything in English, by sentences of fixed patterns with places for numbers and names. A table for each
/// other language holds the patterns with their translation; a sentence is known again by its pattern, its places are told in
/// turn, and what no table knows (a yarn's name, what a person typed) stays as it is. A sentence is worked out once and kept.
/// </remarks>
public sealed class Wording
{
    // More than the sentences of many worksheets; beyond it they are worked out each time.
    private const int MostKept = 20_000;

    private static readonly ConcurrentDictionary<string, Lazy<Wording>> Read = new(StringComparer.Ordinal);

    private readonly SentenceReader? _reader;
    private readonly ConcurrentDictionary<string, string> _told = new(StringComparer.Ordinal);

    private Wording(string language, SentenceReader? reader)
    {
        Language = language;
        _reader = reader;
    }

    /// <summary>The languages by their two-letter codes (ISO 639-1); English, in which everything is said first, stands in front.</summary>
    public static ImmutableArray<string> Languages { get; } = ["en", "de"];

    /// <summary>The program's own words.</summary>
    public static Wording English { get; } = new("en", null);

    /// <summary>The language by its two-letter code, for example <c>de</c>.</summary>
    public string Language { get; }

    /// <summary>The wording of a language; its tables are read when it is first asked for.</summary>
    /// <param name="language">The two-letter code, one of <see cref="Languages"/>.</param>
    /// <exception cref="ArgumentException">There are no tables of this language.</exception>
    public static Wording Of(string language)
    {
        if (language == English.Language) return English;
        if (!Languages.Contains(language)) throw new ArgumentException($"There are no tables of \"{language}\".", nameof(language));
        return Read.GetOrAdd(language, code => new Lazy<Wording>(() => From(code, WordingTables.Of(code)))).Value;
    }

    /// <summary>What the program said, in this language.</summary>
    /// <param name="said">A sentence, several sentences or a name, as the program says it in English.</param>
    /// <returns>The same in this language; what the tables do not know stays as it is.</returns>
    public string Tell(string said)
    {
        ArgumentNullException.ThrowIfNull(said);
        if (_reader is null || said.Length == 0) return said;
        if (_reader.TellQuantity(said) is { } quantity) return quantity;
        if (_told.TryGetValue(said, out string? told)) return told;
        told = _reader.Tell(said).Text;
        if (_told.Count < MostKept) _told.TryAdd(said, told);
        return told;
    }

    /// <summary>What the program said, in this language if the tables know all of it: a half of a book's title helps nobody.</summary>
    /// <param name="said">The words as the program says them in English.</param>
    public string TellWhole(string said)
    {
        ArgumentNullException.ThrowIfNull(said);
        return Unknown(said) == 0 ? Tell(said) : said;
    }

    /// <summary>A wording from a table of its own.</summary>
    internal static Wording From(string language, IEnumerable<(string Said, string Told)> table) => new(language, new SentenceReader(table));

    /// <summary>How many letters of a sentence no table knows.</summary>
    internal int Unknown(string said) => _reader?.Tell(said).Unknown ?? 0;
}
