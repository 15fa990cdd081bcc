using System.Collections.Immutable;
using Clothwright.Core.Looms;

namespace Clothwright.Core.Plans.Briefs;

/// <summary>The looms, reeds and rigid heddles at hand.</summary>
/// <param name="Looms">The looms; at least one.</param>
/// <param name="Reeds">Reeds for shaft looms.</param>
/// <param name="Heddles">Rigid heddles.</param>
public sealed record Bench(ImmutableArray<Loom> Looms, ImmutableArray<Reed> Reeds, ImmutableArray<RigidHeddle> Heddles);
