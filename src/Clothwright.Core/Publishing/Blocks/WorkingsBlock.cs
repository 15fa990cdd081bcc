using System.Collections.Immutable;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>How figures came to be, each with its rule, source, spread and inputs.</summary>
/// <param name="Groups">The figures by what they are about; what went into them hangs below each as a tree.</param>
public sealed record WorkingsBlock(ImmutableArray<WorkingsGroup> Groups) : HandoutBlock
{
    /// <summary>Every figure in reading order.</summary>
    public IEnumerable<Working> Workings => Groups.SelectMany(g => g.Workings);
}
