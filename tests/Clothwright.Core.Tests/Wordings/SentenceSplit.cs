using System.Globalization;
using System.Text.RegularExpressions;

namespace Clothwright.Core.Tests.Wordings;

/// <summary>Cuts a pattern into its sentences, as translators find them in the tables.</summary>
internal static partial class SentenceSplit
{
    /// <summary>The sentences, each trimmed, its places numbered from 0.</summary>
    /// <param name="pattern">The pattern.</param>
    public static IEnumerable<string> Of(string pattern) => SentenceEnd().Split(Neighbours().Replace(pattern, "{0}"))
        .Select(s => PlaceBehind().Replace(PlaceBefore().Replace(s, ""), "").Trim())
        .Select(Numbered)
        .Where(s => s.Length > 0);

    private static string Numbered(string sentence)
    {
        int place = 0;
        return Place().Replace(sentence, _ => string.Create(CultureInfo.InvariantCulture, $"{{{place++}}}"));
    }

    [GeneratedRegex(@"(?<=[a-z)\]""}][.!?]) (?=[A-Z{])")]
    private static partial Regex SentenceEnd();

    // Two places side by side are one for whoever reads.
    [GeneratedRegex(@"(\{\d+\}){2,}")]
    private static partial Regex Neighbours();

    // A whole sentence that may stand before or behind.
    [GeneratedRegex(@"^\{\d+\} (?=[A-Z])")]
    private static partial Regex PlaceBefore();

    [GeneratedRegex(@"(?<=[.!?]) ?\{\d+\}$")]
    private static partial Regex PlaceBehind();

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Place();
}
