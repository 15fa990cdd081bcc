using System.Collections.Immutable;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>Numbered steps; the numbers run on through the whole handout.</summary>
/// <param name="Steps">The steps in the order of the work.</param>
public sealed record StepsBlock(ImmutableArray<HandoutStep> Steps) : HandoutBlock;
