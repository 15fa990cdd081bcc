using System.Collections.Immutable;

namespace Clothwright.Core.Publishing;

/// <summary>One headed part of a handout.</summary>
/// <param name="Heading">The heading.</param>
/// <param name="Blocks">What stands under it, in reading order.</param>
public sealed record HandoutSection(string Heading, ImmutableArray<HandoutBlock> Blocks)
{
    /// <summary>Whether the section begins on a page of its own.</summary>
    public bool StartsPage { get; init; }
}
