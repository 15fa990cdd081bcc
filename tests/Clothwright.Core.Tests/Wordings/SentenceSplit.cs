using System.Globalization;
using System.Text.RegularExpressions;
using Clothwright.Core.Wordings;

namespace Clothwright.Core.Tests.Wordings;

/// <summary>Cuts a pattern into its sentences, as translators find them in the tables.</summary>
internal static partial class SentenceSplit
{
    // A stop that is taken out again.
    private const string Parting = "\u0001.";

    /// <summary>The sentences, each trimmed, its places numbered from 0.</summary>
    /// <param name="pattern">The pattern.</param>
    public static IEnumerable<string> Of(string pattern) => Sentences.Of(PlaceBetween().Replace(Neighbours().Replace(pattern, "{0}"), $"{{0}}{Parting} "))
        .Select(s => PlaceBehind().Replace(PlaceBefore().Replace(s, ""), "").Trim())
        .Select(s => s.Replace(Parting, "", StringComparison.Ordinal))
        .Select(Numbered)
        .Where(s => s.Length > 0);

    private static string Numbered(string sentence)
    {
        int place = 0;
        return Place().Replace(sentence, _ => string.Create(CultureInfo.InvariantCulture, $"{{{place++}}}"));
    }

    // Two places side by side are one for whoever reads.
    [GeneratedRegex(@"(\{\d+\}){2,}")]
    private static partial Regex Neighbours();

    // Behind a colon, before a capital: whole sentences stand in such a place ("If that is not wanted: {0} Prove it on a sample.").
    [GeneratedRegex(@"(?<=: )\{\d+\} (?=[A-Z])")]
    private static partial Regex PlaceBetween();

    // A whole sentence that may stand before or behind.
    [GeneratedRegex(@"^\{\d+\} (?=[A-Z])")]
    private static partial Regex PlaceBefore();

    [GeneratedRegex(@"(?<=[.!?]) ?\{\d+\}$")]
    private static partial Regex PlaceBehind();

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Place();
}
