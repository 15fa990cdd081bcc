using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Worksheets;

namespace Clothwright.Interchange.Http;

/// <summary>The bench: looms, reeds, rigid heddles and warping tools owned.</summary>
public sealed record BenchDocument
{
    /// <summary>A bench with nothing on it.</summary>
    public static BenchDocument Empty { get; } = new();

    /// <summary>Looms, in the order in which they are listed.</summary>
    public ImmutableArray<LoomEntry> Looms { get; init; } = [];

    /// <summary>Reeds.</summary>
    public ImmutableArray<Reed> Reeds { get; init; } = [];

    /// <summary>Rigid heddles.</summary>
    public ImmutableArray<RigidHeddle> Heddles { get; init; } = [];

    /// <summary>Warping tools.</summary>
    public ImmutableArray<WarpingTool> WarpingTools { get; init; } = [];
}
