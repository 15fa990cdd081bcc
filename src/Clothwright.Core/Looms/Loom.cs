using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Looms;

/// <summary>A loom on the bench, as far as it limits what can be woven.</summary>
/// <param name="Id">Short name for files, for example <c>table-8</c>.</param>
/// <param name="Name">Name for people.</param>
/// <param name="Kind">Rigid heddle, table or floor.</param>
/// <param name="WeavingWidth">Greatest width in the reed.</param>
/// <param name="Shafts">Shafts; for a rigid heddle loom the heddles it takes plus one.</param>
/// <param name="Treadles">Treadles; 0 for levers and rigid heddles.</param>
/// <param name="Shed">How the shed opens.</param>
/// <param name="Waste">Warp that cannot be woven, in front and behind together.</param>
public sealed record Loom(
    string Id,
    string Name,
    LoomKind Kind,
    Length WeavingWidth,
    int Shafts,
    int Treadles,
    ShedAction Shed,
    Derived<Length> Waste)
{
    /// <summary>Rigid heddles it can carry at once; 0 for shaft looms.</summary>
    public int RigidHeddles { get; init; }

    /// <summary>Warp beams, 1 or 2.</summary>
    public int WarpBeams { get; init; } = 1;

    /// <summary>Heddles on each shaft; 0 if not counted.</summary>
    public int HeddlesPerShaft { get; init; }
}
