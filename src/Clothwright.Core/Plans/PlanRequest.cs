using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans;

/// <summary>Every decision a warp plan follows from.</summary>
public sealed record PlanRequest
{
    /// <summary>Name of the work.</summary>
    public required string Title { get; init; }

    /// <summary>Units in which warnings are worded.</summary>
    public UnitStyle Units { get; init; } = UnitStyle.Metric;

    /// <summary>Looms, reeds and heddles at hand.</summary>
    public required Bench Bench { get; init; }

    /// <summary>The loom chosen, by its id on the bench.</summary>
    public required string LoomId { get; init; }

    /// <summary>Yarns on the shelf.</summary>
    public required ImmutableArray<Yarn> Shelf { get; init; }

    /// <summary>Pieces in the order in which they are woven; at least one.</summary>
    public required ImmutableArray<Piece> Pieces { get; init; }

    /// <summary>The weave of a single layer of cloth, one repeat.</summary>
    public required Weave Weave { get; init; }

    /// <summary>Order of yarns across the warp.</summary>
    public required WarpOrder Warp { get; init; }

    /// <summary>What the cloth is for.</summary>
    public ClothPurpose Purpose { get; init; } = ClothPurpose.Everyday;

    /// <summary>Ends per width in the reed, one layer, as decided; null to follow the advice.</summary>
    public Sett? ChosenSett { get; init; }

    /// <summary>The reed or rigid heddle decided on, by its name on the bench; null for the one that fits best.</summary>
    public string? ChosenReed { get; init; }

    /// <summary>How ends are fitted to the repeat.</summary>
    public EndsFit EndsFit { get; init; } = EndsFit.WholeRepeats;

    /// <summary>Extra ends at each side that weave as the edge does.</summary>
    public int SelvedgeEnds { get; init; }

    /// <summary>Whether one end at each side hangs free of the shafts.</summary>
    public bool FloatingSelvedges { get; init; }

    /// <summary>Length woven on the loom in front of the first piece, for a sample.</summary>
    public Length Sample { get; init; }

    /// <summary>Length woven with waste weft to spread the warp.</summary>
    public Length Header { get; init; } = Length.FromCentimetres(5);

    /// <summary>Warp left between one piece and the next, beyond their fringes.</summary>
    public Length Gap { get; init; } = Length.FromCentimetres(3);

    /// <summary>What the weaver knows better than the rules.</summary>
    public Allowances Allowances { get; init; } = Allowances.None;

    /// <summary>How fast she works.</summary>
    public WorkRates Rates { get; init; } = WorkRates.Customary;
}
