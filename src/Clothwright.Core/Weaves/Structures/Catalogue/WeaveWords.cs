using System.Collections.Immutable;
using System.Text;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Reads a weave and its choices from words such as <c>8-end satin step 3</c>.</summary>
/// <remarks>
/// The longest name whose words occur in order wins; what is left must be choices of that weave: figures with a slash,
/// a number with a dash and its unit (<c>8-end</c>, <c>4-shaft</c>), a parameter's name and its value, <c>name=value</c>,
/// or a word to choose, also with its parameter's name after a dash (<c>weft-faced</c>).
/// </remarks>
internal static class WeaveWords
{
    private const int LongestText = 200;

    private static readonly ImmutableHashSet<string> Fillers = ["a", "the", "of", "on", "in", "with", "and", "weave"];

    private readonly record struct Word(string Text, int Position);

    public static WeaveChoices Read(string text, ImmutableArray<WeaveEntry> entries, out WeaveEntry entry)
    {
        if (text.Length > LongestText)
        {
            throw new InputProblemException(new InputProblem(
                $"The name of a weave has {text.Length} characters.", "weave", $"Keep to {LongestText}, for example \"2/2 twill\"."));
        }

        List<Word> words = Split(text);
        if (words.Count == 0) throw new InputProblemException(new InputProblem("No weave is named.", "weave", "Name one, for example \"2/2 twill\" or \"overshot\"."));
        var candidates = entries
            .SelectMany(e => e.OtherNames.Prepend(e.Name).Select(n => (Entry: e, Name: n, Left: Without(words, Split(n)))))
            .Where(c => c.Left is not null)
            .OrderByDescending(c => words.Count - c.Left!.Count)
            .ToList();
        if (candidates.Count == 0) throw new InputProblemException(Unknown(text, entries));
        InputProblemException? first = null;
        foreach ((WeaveEntry candidate, string name, List<Word>? left) in candidates)
        {
            var choices = new WeaveChoices(candidate);
            if (candidate.ImpliedBy?.Invoke(name) is { } implied) choices.Set(implied.Parameter, implied.Value);
            try
            {
                ReadChoices(text, left!, candidate, choices);
                entry = candidate;
                return choices;
            }
            catch (InputProblemException problem)
            {
                first ??= problem;
            }
        }

        throw first!;
    }

    private static void ReadChoices(string text, List<Word> words, WeaveEntry entry, WeaveChoices choices)
    {
        for (int i = 0; i < words.Count; i++)
        {
            string word = words[i].Text;
            int sign = word.IndexOf('=', StringComparison.Ordinal);
            if (sign > 0 && Named(entry, word[..sign]) is { } assigned)
            {
                choices.Set(assigned.Name, Values(entry, assigned, words, ref i, word[(sign + 1)..]));
            }
            else if (Named(entry, word) is { } named && i + 1 < words.Count)
            {
                i++;
                choices.Set(named.Name, Values(entry, named, words, ref i, words[i].Text));
            }
            else if (word.Contains('/', StringComparison.Ordinal) && Named(entry, "base") is not null)
            {
                choices.Set("base", word);
            }
            else if (CountedUnit(entry, words, ref i) is { } counted)
            {
                choices.Set(counted.Name, counted.Value);
            }
            else if (ChoiceIn(entry, words, i) is { } chosen)
            {
                choices.Set(chosen.Name, chosen.Value);
                i += chosen.Words - 1;
            }
            else if (entry.Parameters.FirstOrDefault(p => p.Kind == WeaveParameterKind.Words) is { } anything)
            {
                choices.Set(anything.Name, Values(entry, anything, words, ref i, word));
            }
            else if (!Fillers.Contains(word))
            {
                throw new InputProblemException(new InputProblem(
                    $"\"{word}\" means nothing for {entry.Name}.", "weave", Advice(entry))
                { Text = text, Position = words[i].Position });
            }
        }
    }

    // As many words as belong to the value.
    private static string Values(WeaveEntry entry, WeaveParameter parameter, List<Word> words, ref int i, string first)
    {
        var value = new StringBuilder(first);
        while (i + 1 < words.Count && GoesOn(entry, parameter, value.ToString(), words[i + 1].Text)) value.Append(' ').Append(words[++i].Text);
        return value.ToString();
    }

    private static bool GoesOn(WeaveEntry entry, WeaveParameter parameter, string value, string next) => parameter.Kind switch
    {
        WeaveParameterKind.Numbers => next.All(char.IsAsciiDigit),
        WeaveParameterKind.Choice => parameter.Choices.Any(c => c.StartsWith($"{value} {next}", StringComparison.OrdinalIgnoreCase)),
        WeaveParameterKind.Blocks => (char.IsAsciiLetter(next[0]) || next == "-") && IsFree(entry, next),
        WeaveParameterKind.Order => char.IsAsciiLetter(next[^1]) && next[..^1].All(char.IsAsciiLetterOrDigit) && IsFree(entry, next),
        WeaveParameterKind.Cloth => !value.All(c => c is '0' or '1' or '/') && Named(entry, next) is null && !next.Contains('=', StringComparison.Ordinal),
        WeaveParameterKind.Words => Named(entry, next) is null && !next.Contains('=', StringComparison.Ordinal),
        _ => false,
    };

    private static bool IsFree(WeaveEntry entry, string word) =>
        Named(entry, word) is null && ChoiceIn(entry, [new Word(word, 0)], 0) is null && !word.Contains('=', StringComparison.Ordinal);

    // 8-end, 8 end, 4-shaft, 4 shafts.
    private static (string Name, string Value)? CountedUnit(WeaveEntry entry, List<Word> words, ref int i)
    {
        string word = words[i].Text;
        int digits = word.TakeWhile(char.IsAsciiDigit).Count();
        if (digits == 0) return null;
        string unit = word[digits..].TrimStart('-');
        bool takesNext = unit.Length == 0 && i + 1 < words.Count;
        if (takesNext) unit = words[i + 1].Text;
        WeaveParameter? parameter = unit.Length == 0 ? null : entry.Parameters.FirstOrDefault(p =>
            p.Kind == WeaveParameterKind.Number && (p.Name == unit || p.Name == unit + "s"));
        if (parameter is null) return null;
        if (takesNext) i++;
        return (parameter.Name, word[..digits]);
    }

    // A choice by itself, of one word or more, or with its parameter's name after a dash (weft-faced).
    private static (string Name, string Value, int Words)? ChoiceIn(WeaveEntry entry, List<Word> words, int from)
    {
        foreach (WeaveParameter parameter in entry.Parameters)
        {
            foreach (string choice in parameter.Choices)
            {
                string lower = choice.ToLowerInvariant();
                string[] parts = lower.Split(' ');
                string word = words[from].Text;
                if (word == $"{lower}-{parameter.Name}" || word == $"{lower}-{parameter.Name}d") return (parameter.Name, choice, 1);
                if (words.Skip(from).Take(parts.Length).Select(w => w.Text).SequenceEqual(parts)) return (parameter.Name, choice, parts.Length);
            }
        }

        return null;
    }

    private static WeaveParameter? Named(WeaveEntry entry, string word) => entry.Parameters.FirstOrDefault(p => p.Name == word);

    private static List<Word>? Without(List<Word> words, List<Word> name)
    {
        var rest = new List<Word>();
        int next = 0;
        foreach (Word word in words)
        {
            if (next < name.Count && name[next].Text == word.Text) next++;
            else rest.Add(word);
        }

        return next == name.Count ? rest : null;
    }

    private static List<Word> Split(string text)
    {
        var words = new List<Word>();
        int start = -1;
        for (int i = 0; i <= text.Length; i++)
        {
            bool isGap = i == text.Length || char.IsWhiteSpace(text[i]) || text[i] is ',' or ';' or '(' or ')';
            if (!isGap && start < 0) start = i;
            if (!isGap || start < 0) continue;
            words.Add(new Word(text[start..i].ToLowerInvariant().Replace("’", "", StringComparison.Ordinal).Replace("'", "", StringComparison.Ordinal), start));
            start = -1;
        }

        return words;
    }

    private static InputProblem Unknown(string text, ImmutableArray<WeaveEntry> entries)
    {
        string letters = string.Join(' ', Split(text).Select(w => w.Text).Where(w => !char.IsAsciiDigit(w[0])));
        IReadOnlyList<string> near = [.. NearestName.Several(letters, entries.SelectMany(e => e.OtherNames.Prepend(e.Name))).Select(name => WithFigures(text, name, entries))];
        string mend = near.Count switch
        {
            0 => "Name one by its trade name, for example \"2/2 twill\" or \"overshot\".",
            1 => $"Did you mean {near[0]}?",
            _ => $"Did you mean {string.Join(", ", near.Take(near.Count - 1))} or {near[^1]}?",
        };
        return new InputProblem($"\"{text}\" is not a weave known here.", "weave", mend) { Text = text, Position = 0 };
    }

    // The name meant, with the figures that were written before it where the weave takes them: "2/2 twil" is "2/2 twill".
    private static string WithFigures(string text, string name, ImmutableArray<WeaveEntry> entries)
    {
        string figures = string.Join(' ', Split(text).Select(w => w.Text).TakeWhile(w => char.IsAsciiDigit(w[0])));
        if (figures.Length == 0) return name;
        string whole = $"{figures} {name}";
        try
        {
            Read(whole, entries, out _);
            return whole;
        }
        catch (InputProblemException)
        {
            return name;
        }
    }

    private static string Advice(WeaveEntry entry) => entry.Parameters.IsEmpty
        ? "Leave it out."
        : $"Leave it out, or choose {string.Join(", ", entry.Parameters.Select(p => p.Default.Length > 0 ? $"{p.Name} (now {p.Default})" : p.Name))}.";
}
