using System.Collections.Immutable;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>The warp from front to back and what each part of it becomes.</summary>
/// <param name="Parts">The parts in the order in which they are woven.</param>
public sealed record WarpStripBlock(ImmutableArray<WarpPart> Parts) : HandoutBlock;
