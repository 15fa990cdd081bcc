using System.Collections.Immutable;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>How figures came to be, each with its rule, source, spread and inputs.</summary>
/// <param name="Workings">The figures; their inputs follow them as a tree.</param>
public sealed record WorkingsBlock(ImmutableArray<Working> Workings) : HandoutBlock;
