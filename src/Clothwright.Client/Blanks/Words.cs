using Clothwright.Client.Texts;

namespace Clothwright.Client.Blanks;

/// <summary>The members of an enumeration as choices.</summary>
internal static class Words
{
    /// <summary>Every member with its word, in the order of the enumeration.</summary>
    public static IReadOnlyList<(T Value, string Word)> All<T>(Phrases phrases)
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(v => (v, phrases.Word(v)))];
}
