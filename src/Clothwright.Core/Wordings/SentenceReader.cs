using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Clothwright.Core.Wordings;

/// <summary>Knows sentences again by their patterns, and tells them by a table.</summary>
internal sealed class SentenceReader
{
    // A sentence in a place of a sentence in a place: what is said goes no deeper.
    private const int Deepest = 6;

    // So many parts of a sentence are tried together as one; a longer list is told thing by thing.
    private const int MostTogether = 10;
    private const int LongList = 14;

    // A pattern of a word or two ("{0} of {1}") is looked for in short phrases only, and each pattern in so many ways.
    private const int FewLetters = 4;
    private const int ShortPhrase = 80;
    private const int MostReadings = 12;

    private const string Quantity = "{0} ";

    private readonly FrozenDictionary<string, string> _names;
    private readonly FrozenDictionary<string, SentencePattern[]> _patterns;
    private readonly SentenceCuts _cuts;

    // What follows a number, from "{0} per cm": quantities change with each stroke, so they are told without a search.
    private readonly FrozenDictionary<string, string> _units;

    /// <param name="table">Patterns in English and as told; one without places is a name.</param>
    public SentenceReader(IEnumerable<(string Said, string Told)> table)
    {
        ILookup<bool, (string Said, string Told)> all = table.DistinctBy(e => e.Said).ToLookup(e => Placed.Cut(e.Said).Places.Count > 0);
        _names = all[false].ToFrozenDictionary(e => e.Said, e => e.Told, StringComparer.Ordinal);
        _patterns = all[true]
            .Select(e => new SentencePattern(e.Said, e.Told))
            .Where(p => p.Anchor is not null)
            .GroupBy(p => p.Anchor!, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
        _units = all[true]
            .Where(e => e.Said.StartsWith(Quantity, StringComparison.Ordinal) && e.Told.StartsWith(Quantity, StringComparison.Ordinal))
            .Where(e => Placed.Cut(e.Said).Places.Count == 1)
            .ToFrozenDictionary(e => e.Said[Quantity.Length..], e => e.Told[Quantity.Length..], StringComparer.Ordinal);
        _cuts = new SentenceCuts(_names.GetValueOrDefault("and", "and"), _names.GetValueOrDefault("or", "or"));
    }

    /// <summary>A number with its unit, told; null for anything else.</summary>
    /// <param name="text">For example <c>8.0 per cm</c>.</param>
    public string? TellQuantity(string text)
    {
        if (text.Length == 0 || !char.IsAsciiDigit(text[0])) return null;
        int blank = text.IndexOf(' ', StringComparison.Ordinal);
        for (int at = 0; at < (blank < 0 ? text.Length : blank); at++)
        {
            if (!char.IsAsciiDigit(text[at]) && text[at] != '.') return null;
        }

        if (blank < 0) return text;
        return _units.TryGetValue(text[(blank + 1)..], out string? unit) ? string.Concat(text.AsSpan(0, blank + 1), unit) : null;
    }

    /// <summary>The best way to tell a text.</summary>
    public Telling Tell(string text) => Tell(text, 0, new Dictionary<string, Telling>(StringComparer.Ordinal));

    private Telling Tell(string text, int depth, Dictionary<string, Telling> known)
    {
        if (known.TryGetValue(text, out Telling told)) return told;
        List<string> sentences = Sentences.Of(text);
        if (sentences.Count == 1)
        {
            told = Trimmed(text, depth, known);
        }
        else
        {
            Telling[] each = [.. sentences.Select(s => Tell(s, depth, known))];
            told = new Telling(string.Join(" ", each.Select(t => t.Text)), each.Sum(t => t.Unknown), each.Sum(t => t.Parts));
        }

        // What was given up for depth may yet be told from nearer the top.
        if (told.Unknown == 0 || depth < Deepest - 2) known[text] = told;
        return told;
    }

    private Telling Trimmed(string text, int depth, Dictionary<string, Telling> known)
    {
        string bare = text.Trim();
        Telling best = Bare(bare, depth, known);
        if (bare.Length == text.Length) return best;
        int from = text.IndexOf(bare, StringComparison.Ordinal);
        return best with { Text = text[..from] + best.Text + text[(from + bare.Length)..] };
    }

    private Telling Bare(string text, int depth, Dictionary<string, Telling> known)
    {
        bool quoted = text.Length > 1 && text[0] == '"' && text[^1] == '"' && text.AsSpan(1, text.Length - 2).IndexOf('"') < 0;
        if (quoted || !text.Any(char.IsLetter)) return new Telling(text, 0, 0);
        Telling best = Whole(text, depth, known);
        if ((best.Unknown == 0 && best.Parts < 3) || depth > Deepest) return best;
        Telling parted = Parted(text, depth, known);
        if (parted.Beats(best)) best = parted;
        if (best.Unknown == 0 || text[^1] != '.') return best;
        Telling unstopped = Bare(text[..^1], depth, known);
        return unstopped.Beats(best) ? unstopped with { Text = unstopped.Text + "." } : best;
    }

    // As one name or one sentence of a pattern.
    private Telling Whole(string text, int depth, Dictionary<string, Telling> known)
    {
        if (Named(text) is { } name) return new Telling(name, 0, 1);
        var best = new Telling(text, text.Count(char.IsLetter), 1);
        if (depth > Deepest) return best;
        best = Patterned(text, depth, known, best);
        if (best.Unknown > 0 && char.IsUpper(text[0]) && text.Length > 1 && char.IsLower(text[1]))
        {
            Telling small = Patterned(char.ToLowerInvariant(text[0]) + text[1..], depth, known, best);
            if (small.Beats(best)) best = small with { Text = Capital(small.Text) };
        }

        if (best.Unknown > 0 && Counted(text) is > 0 and var after)
        {
            Telling rest = Tell(text[after..], depth + 1, known);
            var counted = new Telling(text[..after] + rest.Text, rest.Unknown, rest.Parts);
            if (counted.Beats(best)) best = counted;
        }

        return best;
    }

    private string? Named(string text)
    {
        if (_names.TryGetValue(text, out string? name)) return name;
        return char.IsUpper(text[0]) && _names.TryGetValue(char.ToLowerInvariant(text[0]) + text[1..], out name) ? Capital(name) : null;
    }

    private Telling Patterned(string text, int depth, Dictionary<string, Telling> known, Telling best)
    {
        foreach (SentencePattern pattern in Candidates(text))
        {
            foreach (ImmutableArray<string> places in pattern.Readings(text).Take(MostReadings))
            {
                Telling told = Filled(pattern, places, depth, known);
                if (told.Beats(best)) best = told;
                if (best.Unknown == 0) return best;
            }
        }

        return best;
    }

    private IEnumerable<SentencePattern> Candidates(string text) => WholeWords.Of(text)
        .Distinct(StringComparer.Ordinal)
        .SelectMany(w => _patterns.GetValueOrDefault(w, []))
        .Where(p => p.Letters >= FewLetters || text.Length <= ShortPhrase)
        .OrderByDescending(p => p.Letters);

    private Telling Filled(SentencePattern pattern, ImmutableArray<string> places, int depth, Dictionary<string, Telling> known)
    {
        var told = new string[places.Length];
        int unknown = 0;
        int parts = 1;
        for (int i = 0; i < places.Length; i++)
        {
            Telling place = pattern.IsQuoted(i) ? new Telling(places[i], 0, 0) : Tell(places[i], depth + 1, known);
            told[i] = place.Text;
            unknown += place.Unknown;

            // A list in a place is likelier a list of such sentences: "linen, silk and 2/2 twill".
            parts += place.Parts > 1 ? place.Parts + 1 : place.Parts;
        }

        return new Telling(pattern.Tell(places, told), unknown, parts);
    }

    // As several names or phrases with commas, brackets or an "and" between them.
    private Telling Parted(string text, int depth, Dictionary<string, Telling> known)
    {
        SentenceCut[] cuts = _cuts.Of(text);
        var none = new Telling(text, int.MaxValue, 0);
        if (cuts.Length < 2) return none;
        int together = cuts.Length > LongList ? 1 : MostTogether;
        var best = new Telling?[cuts.Length + 1];
        best[0] = new Telling(text[..cuts[0].Start], 0, 0);
        for (int to = 1; to <= cuts.Length; to++)
        {
            for (int from = Math.Max(0, to - together); from < to; from++)
            {
                if (to - from == cuts.Length || best[from] is not { } before) continue;
                Telling part = Part(text[cuts[from].Start..cuts[to - 1].End], to - from, depth, known);
                var joined = new Telling(before.Text + part.Text + cuts[to - 1].Joint, before.Unknown + part.Unknown, before.Parts + part.Parts);
                if (best[to] is not { } other || joined.Beats(other)) best[to] = joined;
            }
        }

        return best[^1] ?? none;
    }

    private Telling Part(string text, int cuts, int depth, Dictionary<string, Telling> known)
    {
        if (!text.Any(char.IsLetter)) return new Telling(text, 0, 0);
        return cuts == 1 ? Tell(text, depth + 1, known) : Whole(text, depth + 1, known);
    }

    // Where the thing begins in "24 ends" or "30 % silk"; 0 if no number goes before it.
    private static int Counted(string text)
    {
        int at = 0;
        while (at < text.Length && (char.IsDigit(text[at]) || text[at] is '.' or '/' or '-' or '×')) at++;
        if (at == 0 || at == text.Length || text[at] != ' ') return 0;
        return string.CompareOrdinal(text, at, " % ", 0, 3) == 0 ? at + 3 : at + 1;
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
