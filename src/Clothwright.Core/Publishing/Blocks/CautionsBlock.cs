using System.Collections.Immutable;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>What can hurt a person or spoil the work.</summary>
/// <param name="Cautions">One sentence or two each; never empty.</param>
public sealed record CautionsBlock(ImmutableArray<string> Cautions) : HandoutBlock;
