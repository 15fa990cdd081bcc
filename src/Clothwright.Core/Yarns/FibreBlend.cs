using System.Collections.Immutable;

namespace Clothwright.Core.Yarns;

/// <summary>What a yarn is made of, by mass. The shares sum to 1.</summary>
/// <param name="Shares">The fibres, largest share first.</param>
public sealed record FibreBlend(ImmutableArray<FibreShare> Shares);
