namespace Clothwright.Core.Publishing.Blocks;

/// <summary>Running text.</summary>
/// <param name="Text">The sentences; plain text without any markup.</param>
public sealed record ParagraphBlock(string Text) : HandoutBlock
{
    /// <summary>Whether these are the maker's own words, which stay as they were given.</summary>
    public bool IsGiven { get; init; }
}
