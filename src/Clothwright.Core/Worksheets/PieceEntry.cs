using Clothwright.Core.Plans.Briefs;

namespace Clothwright.Core.Worksheets;

/// <summary>A piece as it stands on the worksheet.</summary>
/// <param name="Piece">Its decisions; the weave in it is left empty.</param>
public sealed record PieceEntry(Piece Piece)
{
    /// <summary>A weave of its own on the threading of the warp; null for the weave of the warp.</summary>
    public WeaveDecision? Weave { get; init; }
}
