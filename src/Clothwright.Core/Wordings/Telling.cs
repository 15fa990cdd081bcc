namespace Clothwright.Core.Wordings;

/// <summary>One way to tell a sentence.</summary>
/// <param name="Text">The sentence as told.</param>
/// <param name="Unknown">Letters that no table knows.</param>
/// <param name="Parts">Patterns and names it was put together from.</param>
internal readonly record struct Telling(string Text, int Unknown, int Parts)
{
    /// <summary>Whether this way is the better one: less is unknown, else it is put together from fewer parts.</summary>
    public bool Beats(Telling other) => Unknown != other.Unknown ? Unknown < other.Unknown : Parts < other.Parts;
}
