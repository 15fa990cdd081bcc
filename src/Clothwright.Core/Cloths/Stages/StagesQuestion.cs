using Clothwright.Core.Calibration;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Stages;

/// <summary>What has to be known to follow a cloth from the reed to the washed piece.</summary>
public sealed record StagesQuestion
{
    /// <summary>Yarns of the warp.</summary>
    public required ThreadSystem Warp { get; init; }

    /// <summary>Yarns of the weft.</summary>
    public required ThreadSystem Weft { get; init; }

    /// <summary>The weave, in whole repeats; of a cloth in layers that of one layer.</summary>
    public required Drawdown Weave { get; init; }

    /// <summary>Ends per width in the reed, one layer.</summary>
    public required Derived<Sett> EndsInReed { get; init; }

    /// <summary>Picks per length of woven cloth off tension, one layer.</summary>
    public required Derived<Sett> Picks { get; init; }

    /// <summary>Whether it is felted by hand.</summary>
    public bool ToBeFulled { get; init; }

    /// <summary>Warp take-up as her pieces show it.</summary>
    public LearnedValue? LearnedWarpTakeUp { get; init; }

    /// <summary>Draw-in as her pieces show it.</summary>
    public LearnedValue? LearnedDrawIn { get; init; }

    /// <summary>Shrinkage in length as her pieces show it.</summary>
    public LearnedValue? LearnedLengthShrinkage { get; init; }

    /// <summary>Shrinkage in width as her pieces show it.</summary>
    public LearnedValue? LearnedWidthShrinkage { get; init; }
}
