using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Fringe, seams and washing.</summary>
internal static class FinishingSteps
{
    /// <summary>The steps in the order of the work.</summary>
    public static IEnumerable<HandoutStep> Of(PlanResult plan)
    {
        yield return new HandoutStep("Mend", "Look both faces over against the light. Darn in tails and needle-weave floats that should not be there before the cloth is wet.");
        foreach (PiecePlan piece in plan.Pieces.Where(p => p.Piece.Fringe is FringeStyle.Twisted or FringeStyle.Knotted).DistinctBy(p => (p.Piece.Fringe, p.Piece.FringeLength)))
        {
            yield return Fringe(piece.Piece);
        }

        if (plan.Pieces.Any(p => p.Piece.Hem > Length.Zero)) yield return new HandoutStep("Hem", "Turn the hems in twice and sew them by hand with the weft yarn, or sew them after the first washing if the hem picks are of another yarn.");
        yield return Wash(plan);
        foreach (PiecePlan piece in plan.Pieces.Where(p => p.Piece.Join != RingJoin.None)) yield return Join(piece.Piece);
        if (plan.Pieces.Any(p => p.Piece.Kind == PieceKind.GarmentPanel || p.Piece.SideSeam > Length.Zero))
        {
            yield return new HandoutStep("Sew", "Cut and sew only after washing. Secure every cut edge first with two rows of stitching.");
        }
    }

    private static HandoutStep Fringe(Piece piece) => piece.Fringe == FringeStyle.Twisted
        ? new HandoutStep("Twist the fringe", $"Take two groups of ends, twist both the way the yarn is twisted until they kink, lay them together, let them twist back on each other and knot them at {Words.Both(piece.FringeLength)}. Give every pair the same number of turns.")
        : new HandoutStep("Knot the fringe", $"Tie groups of ends in overhand knots close to the cloth and trim the fringe to {Words.Both(piece.FringeLength)} after washing.");

    private static HandoutStep Wash(PlanResult plan) => new(
        "Wash",
        "Wash the cloth as it will be washed in use, in lukewarm water with a mild soap; stop when it has the hand you want. Rinse in water as warm, press out in a towel, pull square, dry flat, and press on the wrong side while still a little damp.")
    {
        Details =
        [
            .. plan.Pieces.Select(p => $"{Words.Sentence(p.Piece.Name)}: expect to lose {About(p.ShrinkageInLength.Value)} in length and {About(p.ShrinkageInWidth.Value)} in width.").Distinct(StringComparer.Ordinal),
        ],
    };

    private static string About(Ratio share) => share.Percent < 1
        ? "less than 1 %"
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"about {share.Percent:0} %");

    private static HandoutStep Join(Piece piece) => piece.Join == RingJoin.HalfTwist
        ? new HandoutStep($"Join: {piece.Name}", "Turn one end over by half a turn, then sew the ends together: the ring shows both faces.")
        : new HandoutStep($"Join: {piece.Name}", "Sew the ends together, face to face, into a plain ring.");
}
