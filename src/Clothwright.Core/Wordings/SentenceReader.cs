using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Clothwright.Core.Wordings;

/// <summary>Knows sentences again by their patterns, and tells them by a table.</summary>
internal sealed class SentenceReader
{
    // A sentence in a place of a sentence in a place: what is said goes no deeper.
    private const int Deepest = 7;

    private readonly FrozenDictionary<string, string> _names;
    private readonly FrozenDictionary<string, SentencePattern[]> _patterns;
    private readonly SentenceCuts _cuts;

    /// <param name="table">Patterns in English and as told; one without places is a name.</param>
    public SentenceReader(IEnumerable<(string Said, string Told)> table)
    {
        (string Said, string Told)[] all = [.. table.DistinctBy(e => e.Said)];
        _names = all.Where(e => !e.Said.Contains('{', StringComparison.Ordinal)).ToFrozenDictionary(e => e.Said, e => e.Told, StringComparer.Ordinal);
        _patterns = all
            .Where(e => e.Said.Contains('{', StringComparison.Ordinal))
            .Select(e => new SentencePattern(e.Said, e.Told))
            .Where(p => p.Anchor is not null)
            .GroupBy(p => p.Anchor!, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.Ordinal);
        _cuts = new SentenceCuts(_names.GetValueOrDefault("and", "and"), _names.GetValueOrDefault("or", "or"));
    }

    /// <summary>The best way to tell a text.</summary>
    public Telling Tell(string text) => Tell(text, 0, new Dictionary<string, Telling>(StringComparer.Ordinal));

    private Telling Tell(string text, int depth, Dictionary<string, Telling> known)
    {
        if (known.TryGetValue(text, out Telling told)) return told;
        string bare = text.Trim();
        Telling best = Bare(bare, depth, known);
        if (bare.Length < text.Length)
        {
            int from = text.IndexOf(bare, StringComparison.Ordinal);
            best = best with { Text = text[..from] + best.Text + text[(from + bare.Length)..] };
        }

        known[text] = best;
        return best;
    }

    private Telling Bare(string text, int depth, Dictionary<string, Telling> known)
    {
        if (!text.Any(char.IsLetter)) return new Telling(text, 0, 0);
        Telling best = Whole(text, depth, known);
        if ((best.Unknown == 0 && best.Parts < 3) || depth > Deepest) return best;
        Telling parted = Parted(text, depth, known);
        return parted.Beats(best) ? parted : best;
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
        if (char.IsUpper(text[0]) && _names.TryGetValue(char.ToLowerInvariant(text[0]) + text[1..], out name)) return Capital(name);
        return text[^1] == '.' && text.Length > 1 && Named(text[..^1]) is { } stopped ? stopped + "." : null;
    }

    private Telling Patterned(string text, int depth, Dictionary<string, Telling> known, Telling best)
    {
        foreach (SentencePattern pattern in Candidates(text))
        {
            foreach (ImmutableArray<string> places in pattern.Readings(text))
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

    // As several names or sentences with stops, commas, brackets or an "and" between them.
    private Telling Parted(string text, int depth, Dictionary<string, Telling> known)
    {
        SentenceCut[] cuts = _cuts.Of(text);
        if (cuts.Length < 2) return new Telling(text, int.MaxValue, 0);
        var best = new Telling?[cuts.Length + 1];
        best[0] = new Telling("", 0, 0);
        for (int to = 1; to <= cuts.Length; to++)
        {
            for (int from = Math.Max(0, to - SentenceCuts.MostTogether); from < to; from++)
            {
                if (to - from == cuts.Length || best[from] is not { } before) continue;
                Telling part = Whole(text[cuts[from].Start..cuts[to - 1].End], depth + 1, known);
                var joined = new Telling(before.Text + part.Text + cuts[to - 1].Joint, before.Unknown + part.Unknown, before.Parts + part.Parts);
                if (best[to] is not { } other || joined.Beats(other)) best[to] = joined;
            }
        }

        return best[^1] ?? new Telling(text, int.MaxValue, 0);
    }

    // Where the thing begins in "24 ends"; 0 if no number goes before it.
    private static int Counted(string text)
    {
        int at = 0;
        while (at < text.Length && (char.IsDigit(text[at]) || text[at] is '.' or '/' or '-' or '×')) at++;
        return at > 0 && at < text.Length && text[at] == ' ' ? at + 1 : 0;
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
