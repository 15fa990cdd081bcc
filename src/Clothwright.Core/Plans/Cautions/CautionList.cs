using System.Collections.Immutable;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Cautions;

/// <summary>Collects every caution that a plan calls for.</summary>
internal static class CautionList
{
    /// <summary>The cautions, piece by piece, then those for the weaver herself.</summary>
    public static ImmutableArray<Caution> Of(PlanRequest request, ImmutableArray<PiecePlan> pieces, ImmutableArray<YarnNeed> yarns, WorkEstimate work)
    {
        var all = ImmutableArray.CreateBuilder<Caution>();
        foreach (PiecePlan piece in pieces)
        {
            Yarn[] used = YarnsOf(request, piece);
            all.AddRange(WearerCautions.Of(piece).Select(c => c with { PieceIndex = piece.Index }));
            all.AddRange(FlammabilityCautions.Of(piece, used).Select(c => c with { PieceIndex = piece.Index }));
        }

        all.AddRange(WorkCautions.Of(pieces, yarns, work));
        return [.. all.GroupBy(c => (c.Id, c.Text)).Select(Joined)];
    }

    // One caution for several pieces is said once; it then concerns the whole work.
    private static Caution Joined(IGrouping<(string Id, string Text), Caution> same) =>
        same.Count() == 1 ? same.First() : same.First() with { PieceIndex = null };

    private static Yarn[] YarnsOf(PlanRequest request, PiecePlan piece)
    {
        var ids = new HashSet<string>(request.Warp.Runs.Select(r => r.YarnId), StringComparer.Ordinal);
        foreach (WeftNeed weft in piece.Weft) ids.Add(weft.YarnId);
        return [.. request.Shelf.Where(y => ids.Contains(y.Id))];
    }
}
