using System.Collections.Immutable;
using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Puckering;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Cli.Cloths;

/// <summary>A cloth as it can be foreseen, washed and at rest.</summary>
/// <param name="Name">What it is, for a person.</param>
/// <param name="Geometry">How its threads lie.</param>
/// <param name="Mass">Mass per area.</param>
/// <param name="Look">How it is pictured.</param>
internal sealed record ForeseenCloth(string Name, ClothGeometry Geometry, Derived<ArealDensity> Mass, LookDescription Look)
{
    /// <summary>What the reader should know of how the answer was found.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Whether it lies flat; null where it is not known how it was woven and washed.</summary>
    public ClothPuckering? Puckering { get; init; }

    /// <summary>The figures that can be explained, by name as in the JSON without its unit.</summary>
    public IEnumerable<(string Name, Working Working)> Figures =>
    [
        ("ends", Geometry.Question.Ends.Working),
        ("picks", Geometry.Question.Picks.Working),
        ("mass", Mass.Working),
        ("thickness", Geometry.Thickness.Working),
        ("cover", Geometry.Cover.Working),
        ("warpCover", Geometry.WarpCover.Working),
        ("weftCover", Geometry.WeftCover.Working),
        ("tightness", Geometry.Tightness.Working),
        ("warpCrimp", Geometry.WarpCrimp.Working),
        ("weftCrimp", Geometry.WeftCrimp.Working),
        ("warpTakeUp", Geometry.WarpTakeUp.Working),
        ("weftTakeUp", Geometry.WeftTakeUp.Working),
        ("warpDiameter", Geometry.WarpDiameter.Working),
        ("weftDiameter", Geometry.WeftDiameter.Working),
    ];
}
