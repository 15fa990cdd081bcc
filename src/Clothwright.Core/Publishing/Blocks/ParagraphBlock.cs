namespace Clothwright.Core.Publishing.Blocks;

/// <summary>Running text.</summary>
/// <param name="Text">The sentences; plain text without any markup.</param>
public sealed record ParagraphBlock(string Text) : HandoutBlock;
