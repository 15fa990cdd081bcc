using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Plans.Briefs;

/// <summary>One piece, or several alike, to be woven on the warp. All sizes are those wanted after washing.</summary>
public sealed record Piece
{
    /// <summary>Name for people, for example <c>first scarf</c>.</summary>
    public required string Name { get; init; }

    /// <summary>What it is to be.</summary>
    public PieceKind Kind { get; init; } = PieceKind.Yardage;

    /// <summary>How it lies on the loom.</summary>
    public PieceMake Make { get; init; } = PieceMake.Flat;

    /// <summary>How many alike; 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Finished width, seams sewn; of a tube, the width lying flat. Above 0.</summary>
    public required Length Width { get; init; }

    /// <summary>Finished length without fringes, hems and seams sewn; of a ring, the way round. Above 0.</summary>
    public required Length Length { get; init; }

    /// <summary>Cloth turned in at each end for a hem.</summary>
    public Length Hem { get; init; }

    /// <summary>Cloth taken into a seam at each end.</summary>
    public Length EndSeam { get; init; }

    /// <summary>Cloth taken into a seam at each side.</summary>
    public Length SideSeam { get; init; }

    /// <summary>What becomes of the warp at the ends.</summary>
    public FringeStyle Fringe { get; init; } = FringeStyle.None;

    /// <summary>Finished length of the fringe at each end.</summary>
    public Length FringeLength { get; init; }

    /// <summary>Whether its ends are joined to each other.</summary>
    public RingJoin Join { get; init; } = RingJoin.None;

    /// <summary>Whom it is for.</summary>
    public Wearer Wearer { get; init; } = Wearer.Adult;

    /// <summary>Whether it has ties or cords.</summary>
    public bool Ties { get; init; }

    /// <summary>Whether it is to be slept in.</summary>
    public bool Nightwear { get; init; }

    /// <summary>Whether it is felted by hand after weaving.</summary>
    public bool Fulled { get; init; }

    /// <summary>Whether its surface is brushed or raised after weaving.</summary>
    public bool Raised { get; init; }

    /// <summary>The order of wefts over the ground picks (all picks but those of pattern), repeated along the piece; at least one run.</summary>
    public required ImmutableArray<WeftRun> Weft { get; init; }

    /// <summary>The order of wefts over the pattern picks of the weave, repeated along the piece; empty when the weave has none.</summary>
    public ImmutableArray<WeftRun> PatternWeft { get; init; } = [];

    /// <summary>Ground picks per length off tension; null to have it worked out for a balanced cloth.</summary>
    public Sett? ChosenPicks { get; init; }

    /// <summary>One repeat of another treadling on the same threading; null for the weave of the warp.</summary>
    public Weave? Weave { get; init; }
}
