namespace Clothwright.Core.Publishing.Blocks;

/// <summary>A bar of known length, to see with a rule whether a page came out at true size.</summary>
/// <param name="Text">What to do with it.</param>
public sealed record MeasureBarBlock(string Text) : HandoutBlock;
