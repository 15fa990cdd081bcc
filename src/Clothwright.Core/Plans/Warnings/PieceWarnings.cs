using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns of pieces whose ends are forgotten and of cloth that cannot be beaten as planned.</summary>
internal static class PieceWarnings
{
    public static IEnumerable<PlanWarning> Of(ImmutableArray<PiecePlan> pieces)
    {
        foreach (PiecePlan plan in pieces)
        {
            Piece piece = plan.Piece;
            string where = $"pieces[{plan.Index}]";
            if (piece.Join != RingJoin.None && piece.EndSeam == Length.Zero)
            {
                yield return new PlanWarning("no-seam", $"{where}.endSeam", $"{piece.Name} is joined in a ring and no cloth is allowed for the seam.", "Add an end seam, for example 1.5 cm, unless the ends are grafted.");
            }
            else if (IsOpen(piece))
            {
                yield return new PlanWarning("raw-ends", $"{where}.hem", $"{piece.Name} has neither fringe, hem nor seam, and its cut ends will ravel.", "Add a hem, a fringe or an end seam.");
            }

            if (plan.Cloth.OffLoom.IsJammed || plan.Cloth.OffLoom.Tightness.Value.Value >= 1)
            {
                yield return new PlanWarning(
                    "picks-too-close", $"{where}.picks", $"{piece.Name} cannot be beaten to {plan.GroundPicks.Value}: ends and picks lie closer than these yarns can.", "Plan fewer picks or set the warp more open.");
            }
        }
    }

    private static bool IsOpen(Piece piece) =>
        piece.Fringe == FringeStyle.None
        && piece.Hem == Length.Zero
        && piece.EndSeam == Length.Zero
        && piece.Join == RingJoin.None
        && piece.Kind is not (PieceKind.Yardage or PieceKind.Sample);
}
