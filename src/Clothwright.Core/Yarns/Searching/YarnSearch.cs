using System.Collections.Immutable;
using Clothwright.Core.Colours;

namespace Clothwright.Core.Yarns;

/// <summary>Finds yarns on the shelf.</summary>
public static class YarnSearch
{
    /// <summary>The yarns that fit: in the order given, or the nearest in colour first.</summary>
    /// <param name="yarns">What is searched.</param>
    /// <param name="query">What is sought.</param>
    public static ImmutableArray<YarnMatch> Find(IReadOnlyList<Yarn> yarns, YarnQuery query)
    {
        ArgumentNullException.ThrowIfNull(yarns);
        ArgumentNullException.ThrowIfNull(query);
        string[] words = query.Words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        IEnumerable<YarnMatch> found = yarns
            .Select((yarn, index) => new YarnMatch(index, yarn, query.Near is { } near ? Difference(near, yarn.Colour) : null))
            .Where(m => words.All(w => Says(m.Yarn, w)))
            .Where(m => query.FibreId is null || m.Yarn.Fibres.Shares.Any(s => s.Fibre.Id == query.FibreId))
            .Where(m => query.Finest is not { } finest || m.Yarn.LinearDensity.Value.Tex >= finest.Tex)
            .Where(m => query.Thickest is not { } thickest || m.Yarn.LinearDensity.Value.Tex <= thickest.Tex)
            .Where(m => query.MostDifferent is not { } most || m.Difference is not { } difference || difference <= most);
        return [.. query.Near is null ? found : found.OrderBy(m => m.Difference)];
    }

    private static double Difference(SrgbColour one, SrgbColour other) => ColourDifference.Ciede2000(CieLab.From(one), CieLab.From(other));

    private static bool Says(Yarn yarn, string word) =>
        Holds(yarn.Name, word)
        || Holds(yarn.Id, word)
        || yarn.Fibres.Shares.Any(s => Holds(s.Fibre.Name, word) || Holds(s.Fibre.Id, word) || s.Fibre.Synonyms.Any(n => Holds(n, word)))
        || Holds(ConstructionNotes.Of(yarn.Construction).Name, word)
        || yarn.Packages.Any(p => p.Lot is { } lot && Holds(lot, word));

    private static bool Holds(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
}
