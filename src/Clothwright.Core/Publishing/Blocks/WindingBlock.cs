using System.Collections.Immutable;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>The colour order of the warp as it is wound, from end 1.</summary>
/// <param name="Turns">The groups in winding order.</param>
public sealed record WindingBlock(ImmutableArray<WindingTurn> Turns) : HandoutBlock;
