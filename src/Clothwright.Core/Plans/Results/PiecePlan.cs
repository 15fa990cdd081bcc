using System.Collections.Immutable;
using Clothwright.Core.Cloths.Stages;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>What one piece asks of the warp and what it will come to. Figures are for one of the pieces alike.</summary>
public sealed record PiecePlan
{
    /// <summary>The decision.</summary>
    public required Piece Piece { get; init; }

    /// <summary>Place among the pieces; 0-based.</summary>
    public required int Index { get; init; }

    /// <summary>Warp taken up by weaving, as a share of the warp's length, off tension.</summary>
    public required Derived<Ratio> WarpTakeUp { get; init; }

    /// <summary>Weft taken up by weaving, as a share of the weft's length.</summary>
    public required Derived<Ratio> WeftTakeUp { get; init; }

    /// <summary>Width lost from the reed to the cloth off tension, as a share of the width in the reed.</summary>
    public required Derived<Ratio> DrawIn { get; init; }

    /// <summary>Length lost in finishing, as a share of the length off the loom.</summary>
    public required Derived<Ratio> ShrinkageInLength { get; init; }

    /// <summary>Width lost in finishing, as a share of the width off the loom.</summary>
    public required Derived<Ratio> ShrinkageInWidth { get; init; }

    /// <summary>Cloth wanted after washing, hems and seams included.</summary>
    public required Derived<Length> ClothLength { get; init; }

    /// <summary>Length off the loom, before washing.</summary>
    public required Derived<Length> OffLoomLength { get; init; }

    /// <summary>Length to weave, measured on the loom under tension.</summary>
    public required Derived<Length> LengthUnderTension { get; init; }

    /// <summary>Warp that the woven part uses.</summary>
    public required Derived<Length> WovenWarp { get; init; }

    /// <summary>Warp that both fringes use, or zero.</summary>
    public required Derived<Length> FringeWarp { get; init; }

    /// <summary>Width in the reed that the wanted width asks for.</summary>
    public required Derived<Length> WantedReedWidth { get; init; }

    /// <summary>Width to expect after washing with the ends wound; of a double-width piece, opened out.</summary>
    public required Derived<Length> FinishedWidth { get; init; }

    /// <summary>Length to expect after washing, hems and seams sewn, without fringes.</summary>
    public required Derived<Length> FinishedLength { get; init; }

    /// <summary>Ends it is woven on, floating selvedges included, all layers.</summary>
    public required Derived<Whole> Ends { get; init; }

    /// <summary>Width of these ends in the reed.</summary>
    public required Derived<Length> ReedWidth { get; init; }

    /// <summary>Ground picks per length off tension, one layer.</summary>
    public required Derived<Sett> GroundPicks { get; init; }

    /// <summary>Ground picks per length to count on the loom, under tension, one layer.</summary>
    public required Derived<Sett> GroundPicksUnderTension { get; init; }

    /// <summary>Pattern picks for each ground pick; 0 without pattern.</summary>
    public required double PatternPicksPerGroundPick { get; init; }

    /// <summary>The cloth on the loom, off it and washed.</summary>
    public required ClothStages Cloth { get; init; }

    /// <summary>All picks of the piece: ground and supplementary, every layer.</summary>
    public required Derived<Whole> Picks { get; init; }

    /// <summary>Mass of the cloth after washing, without fringes.</summary>
    public required Derived<Mass> ClothMass { get; init; }

    /// <summary>Mass per area of one layer of cloth after washing.</summary>
    public required Derived<ArealDensity> MassPerArea { get; init; }

    /// <summary>Weft by yarn.</summary>
    public required ImmutableArray<WeftNeed> Weft { get; init; }
}
