using System.Collections.Immutable;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Publishing;

/// <summary>Figures that belong together.</summary>
/// <param name="Heading">What they are about, for example a piece or a yarn.</param>
/// <param name="Workings">The figures; their inputs hang below them.</param>
public sealed record WorkingsGroup(string Heading, ImmutableArray<Working> Workings);
