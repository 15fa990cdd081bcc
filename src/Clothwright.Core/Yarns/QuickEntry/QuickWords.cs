using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>The words that free words are searched for, longest first.</summary>
internal static class QuickWords
{
    private static readonly ImmutableArray<(string Kind, string Means, string Word)> Table =
    [
        .. EmbeddedTable.Rows("quick-words.table.txt").SelectMany(row => row["words"].Split(',', StringSplitOptions.TrimEntries).Select(word => (row["kind"], row["means"], word))),
    ];

    public static ImmutableArray<(string Word, Fibre Means)> Fibres { get; } = Longest(
        FibreCatalogue.All
            .SelectMany(f => f.Synonyms.Append(f.Id).Append(f.Id.Replace('-', ' ')).Append(f.Name.ToLowerInvariant()).Select(word => (word, f)))
            .Concat(Of("fibre").Select(w => (w.Word, FibreCatalogue.Get(w.Means)))));

    public static ImmutableArray<(string Word, YarnConstruction Means)> Constructions { get; } = Longest(Of("construction").Select(w => (w.Word, Enum.Parse<YarnConstruction>(w.Means))));

    public static ImmutableArray<(string Word, PackageForm Means)> Forms { get; } = Longest(Of("form").Select(w => (w.Word, Enum.Parse<PackageForm>(w.Means))));

    public static ImmutableArray<(string Word, SrgbColour Means)> Colours { get; } = Longest(Of("colour").Select(w => (w.Word, SrgbColour.Parse(w.Means).Value)));

    /// <summary>Where a word stands by itself; -1 if nowhere.</summary>
    public static int IndexIn(string text, string word)
    {
        for (int at = 0; (at = text.IndexOf(word, at, StringComparison.OrdinalIgnoreCase)) >= 0; at++)
        {
            bool begins = at == 0 || !char.IsLetter(text[at - 1]);
            int end = at + word.Length;
            if (begins && (end == text.Length || !char.IsLetter(text[end]))) return at;
        }

        return -1;
    }

    /// <summary>The first of some words that stands in a text, taken out of it.</summary>
    public static QuickFound<T>? Take<T>(QuickText text, ImmutableArray<(string Word, T Means)> words)
    {
        foreach ((string word, T means) in words)
        {
            int at = IndexIn(text.Left, word);
            if (at >= 0) return new QuickFound<T>(means, text.Take(at, word.Length));
        }

        return null;
    }

    private static IEnumerable<(string Means, string Word)> Of(string kind) => Table.Where(r => r.Kind == kind).Select(r => (r.Means, r.Word));

    private static ImmutableArray<(string Word, T Means)> Longest<T>(IEnumerable<(string Word, T Means)> words) =>
        [.. words.DistinctBy(w => w.Word, StringComparer.Ordinal).OrderByDescending(w => w.Word.Length).ThenBy(w => w.Word, StringComparer.Ordinal)];
}
