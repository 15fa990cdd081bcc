using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Drafting;

/// <summary>Everything that the picture of a draft depends on; compared by reference, so that nothing is handed over twice.</summary>
internal sealed record ShownDraft(
    Draft Draft, Drawdown Cloth, int Ends, int Picks, DraftView View, ImmutableArray<ThreadRun> Warp, Piece Piece, ImmutableArray<YarnEntry> Shelf, bool PatternPicks)
{
    /// <summary>Whether the threads have the colours that they have in another picture.</summary>
    public bool HasColoursOf(ShownDraft other) =>
        Ends == other.Ends && Picks == other.Picks && Warp == other.Warp && ReferenceEquals(Piece, other.Piece) && Shelf == other.Shelf && !PatternPicks && !other.PatternPicks;

    /// <inheritdoc />
    public bool Equals(ShownDraft? other) => other is not null
        && ReferenceEquals(Draft, other.Draft)
        && ReferenceEquals(Cloth, other.Cloth)
        && Ends == other.Ends
        && Picks == other.Picks
        && View == other.View
        && Warp == other.Warp
        && ReferenceEquals(Piece, other.Piece)
        && Shelf == other.Shelf;

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Ends, Picks, View);
}
