using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Stages;

/// <summary>A cloth followed from the reed to the washed piece; every fraction is of the earlier length.</summary>
public sealed partial record ClothStages
{
    /// <summary>The question.</summary>
    public required StagesQuestion Question { get; init; }

    /// <summary>The cloth on the loom, the warp stretched.</summary>
    public required ClothGeometry OnLoom { get; init; }

    /// <summary>The cloth cut off and at rest, not washed.</summary>
    public required ClothGeometry OffLoom { get; init; }

    /// <summary>The washed cloth.</summary>
    public required ClothGeometry Washed { get; init; }

    /// <summary>Warp that goes into the bends of woven cloth off tension, as a share of the warp.</summary>
    public required Derived<Ratio> WarpTakeUp { get; init; }

    /// <summary>How much narrower the cloth is off the loom than in the reed, as a share of the width in the reed.</summary>
    public required Derived<Ratio> DrawIn { get; init; }

    /// <summary>Weft in the bends of woven cloth, as a share of the weft.</summary>
    public required Derived<Ratio> WeftTakeUp { get; init; }

    /// <summary>Shrinkage in length in the first washing, as a share of the length off the loom.</summary>
    public required Derived<Ratio> LengthShrinkage { get; init; }

    /// <summary>Shrinkage in width in the first washing, as a share of the width off the loom.</summary>
    public required Derived<Ratio> WidthShrinkage { get; init; }

    /// <summary>Mass per area off the loom: the yarn that was woven, take-up and all.</summary>
    public required Derived<ArealDensity> OffLoomMass { get; init; }

    /// <summary>Mass per area of the washed cloth: what was woven, on the area that is left.</summary>
    public required Derived<ArealDensity> WashedMass { get; init; }
}
