using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.Briefs;

/// <summary>How fast the weaver works. Null: the customary rate is used.</summary>
public sealed record WorkRates
{
    /// <summary>The customary rates throughout.</summary>
    public static WorkRates Customary { get; } = new();

    /// <summary>Warp wound in an hour.</summary>
    public Length? WarpWoundPerHour { get; init; }

    /// <summary>Ends threaded in an hour.</summary>
    public double? EndsThreadedPerHour { get; init; }

    /// <summary>Ends sleyed in an hour.</summary>
    public double? EndsSleyedPerHour { get; init; }

    /// <summary>Picks woven in a minute.</summary>
    public double? PicksPerMinute { get; init; }
}
