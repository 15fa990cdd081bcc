using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Cautions;

/// <summary>Cautions for children and babies.</summary>
internal static class WearerCautions
{
    private static readonly Source Cords = Source.Published("CPSC on 16 CFR 1120 (drawstrings); EN 14682:2014");

    private static readonly Source Scarves = Source.Published("EN 14682:2014, scope: scarves are left out, so no standard catches this");

    private static readonly Source Sleep = Source.Published("American Academy of Pediatrics, 2022, as summarised");

    private static readonly Source Threads = Source.Published("Barton, Sloan and Nichter, Pediatrics 82(6):925, 1988");

    private static readonly Source Nightwear = Source.Published("CPSC on 16 CFR 1615 and 1616");

    private static readonly Source Certificate = Source.FromMemoryOf("Consumer Product Safety Improvement Act (United States)");

    public static IEnumerable<Caution> Of(PiecePlan plan)
    {
        Piece piece = plan.Piece;
        if (piece.Wearer is not (Wearer.Child or Wearer.Baby)) yield break;
        if (piece.Kind is PieceKind.Scarf or PieceKind.Shawl or PieceKind.Cowl || piece.Fringe != FringeStyle.None)
        {
            yield return new Caution("child-neck", "A scarf, a shawl or a long fringe can strangle or entangle a young child. Make it short, without fringe, or closed with a fastening that gives way; local codes come first.", Scarves);
        }

        if (piece.Ties)
        {
            yield return new Caution("child-cords", "No ties or cords at neck or hood of a child's garment: forbidden in the United States for sizes 2T to 12 and in the European Union up to 7 years; at waist and hem at most 3 in (7.5 cm) outside the channel, without toggles or knots, for sizes 2T to 16. Look up your local code.", Cords);
        }

        if (piece.Nightwear)
        {
            yield return new Caution("child-nightwear", "Children's nightwear of sizes 0 to 14 must pass 16 CFR 1615 or 1616 in the United States, unless it fits tightly or is an infant garment (9 months or less; one piece up to 64.8 cm, each of two up to 40 cm long). Look up your local code.", Nightwear);
        }

        if (piece.Wearer == Wearer.Baby)
        {
            if (piece.Kind is PieceKind.Blanket or PieceKind.Throw or PieceKind.Shawl)
            {
                yield return new Caution("baby-sleep", "No blanket, loose or weighted, where a baby under one year sleeps. Use it only where a grown person watches.", Sleep);
            }

            yield return new Caution("baby-threads", "Floats, loose ends and open weave can wind round a baby's fingers and toes. Keep the side towards the skin free of them: choose a firm weave with short floats, and darn in every end.", Threads);
        }

        yield return new Caution("child-certificate", "Products for children up to 12 years carry duties of certificate and tracking label in the United States; look up what your own country asks before selling.", Certificate);
    }
}
