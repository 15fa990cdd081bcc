using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Worksheets;

/// <summary>A loom as it stands on the worksheet.</summary>
public sealed partial record LoomEntry
{
    /// <summary>Short name, unique on the bench.</summary>
    public required string Id { get; init; }

    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Rigid heddle, table or floor.</summary>
    public required LoomKind Kind { get; init; }

    /// <summary>Greatest width in the reed.</summary>
    public required Length WeavingWidth { get; init; }

    /// <summary>Shafts of a shaft loom; 0 for a rigid heddle loom.</summary>
    public int Shafts { get; init; }

    /// <summary>Treadles; 0 for levers and rigid heddles.</summary>
    public int Treadles { get; init; }

    /// <summary>How the shed opens.</summary>
    public ShedAction Shed { get; init; } = ShedAction.Levers;

    /// <summary>Rigid heddles it carries at once; 0 for a shaft loom.</summary>
    public int RigidHeddles { get; init; }

    /// <summary>Warp beams, 1 or 2.</summary>
    public int WarpBeams { get; init; } = 1;

    /// <summary>Heddles on each shaft; 0 if not counted.</summary>
    public int HeddlesPerShaft { get; init; }

    /// <summary>Warp that cannot be woven, as measured; null: what is customary for the kind.</summary>
    public Length? Waste { get; init; }
}
