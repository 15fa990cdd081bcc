using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;

namespace Clothwright.Core.Worksheets;

/// <summary>The document: every decision of one work, as the weaver made it. What follows from it is worked out, never kept.</summary>
public sealed partial record Worksheet
{
    /// <summary>Version of the written form that this program writes and reads.</summary>
    public const int CurrentVersion = 1;

    /// <summary>Name of the work.</summary>
    public required string Title { get; init; }

    /// <summary>What the maker wants to remember; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>Units in which she reads.</summary>
    public UnitStyle Units { get; init; } = UnitStyle.Metric;

    /// <summary>Currency of all prices: three letters of ISO 4217.</summary>
    public string Currency { get; init; } = "EUR";

    /// <summary>Looms at hand; at least one.</summary>
    public required ImmutableArray<LoomEntry> Looms { get; init; }

    /// <summary>Reeds at hand.</summary>
    public ImmutableArray<Reed> Reeds { get; init; } = [];

    /// <summary>Rigid heddles at hand.</summary>
    public ImmutableArray<RigidHeddle> Heddles { get; init; } = [];

    /// <summary>Yarns at hand; at least one.</summary>
    public required ImmutableArray<YarnEntry> Shelf { get; init; }

    /// <summary>The loom chosen, by its id.</summary>
    public required string LoomId { get; init; }

    /// <summary>The weave.</summary>
    public required WeaveDecision Weave { get; init; }

    /// <summary>How close the cloth is to be.</summary>
    public ClothPurpose Purpose { get; init; } = ClothPurpose.Everyday;

    /// <summary>Ends per width of one layer, as decided; null: follow the advice.</summary>
    public Sett? Sett { get; init; }

    /// <summary>The reed or rigid heddle, by name; null: the one that fits best.</summary>
    public string? Reed { get; init; }

    /// <summary>Order of yarns across the warp.</summary>
    public required WarpOrder Warp { get; init; }

    /// <summary>Pieces, in the order of weaving; at least one.</summary>
    public required ImmutableArray<PieceEntry> Pieces { get; init; }

    /// <summary>How ends are fitted to the repeat.</summary>
    public EndsFit EndsFit { get; init; } = EndsFit.WholeRepeats;

    /// <summary>Extra ends at each side that weave as the edge does.</summary>
    public int SelvedgeEnds { get; init; }

    /// <summary>Whether one end at each side hangs free of the shafts.</summary>
    public bool FloatingSelvedges { get; init; }

    /// <summary>Length woven in front for a sample.</summary>
    public Length Sample { get; init; }

    /// <summary>Length woven with waste weft to spread the warp.</summary>
    public Length Header { get; init; } = Length.FromCentimetres(5);

    /// <summary>Warp left between pieces, beyond their fringes.</summary>
    public Length Gap { get; init; } = Length.FromCentimetres(3);

    /// <summary>What the weaver knows better than the rules.</summary>
    public Allowances Allowances { get; init; } = Allowances.None;

    /// <summary>How fast she works.</summary>
    public WorkRates Rates { get; init; } = WorkRates.Customary;
}
