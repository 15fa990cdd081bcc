using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Cautions;

/// <summary>Cautions where a cloth to be worn may burn too fast.</summary>
internal static class FlammabilityCautions
{
    // Below this cover light falls through everywhere: a sheer cloth.
    private const double SheerCover = 0.5;

    private static readonly Source Recalls = Source.Published("United States Consumer Product Safety Commission, recall notices 1995, 1996 and 2014");

    private static readonly HashSet<string> RecalledFibres = new(StringComparer.Ordinal) { "silk-reeled", "silk-spun", "viscose", "bamboo-viscose", "modal" };

    public static IEnumerable<Caution> Of(PiecePlan piece, IReadOnlyList<Yarn> yarns)
    {
        if (!IsWorn(piece.Piece)) yield break;
        ArealDensity mass = piece.MassPerArea.Value;
        bool raised = piece.Piece.Raised || yarns.Any(y => y.Construction == YarnConstruction.Chenille);
        if (FlammabilityRule.Of(yarns, piece.Piece.Raised, mass) == FlammabilityFinding.ToBeTested)
        {
            yield return raised
                ? new Caution("flammable-raised", "A raised, brushed or pile surface can flash over. In the United States no mass exempts it from testing under 16 CFR 1610 unless every fibre is acrylic, modacrylic, nylon, olefin, polyester or wool; have it tested before selling, and look up your local code.", FlammabilityRule.Source)
                : new Caution("flammable-light", $"This cloth is light ({mass}, below {FlammabilityRule.ExemptMass.GramsPerSquareMetre:0.00} g/m²) and not wholly of exempt fibres; it may burn too fast. In the United States it has to be tested under 16 CFR 1610 before it is sold as clothing; look up your local code.", FlammabilityRule.Source);
        }

        if (yarns.Any(y => y.Fibres.Shares.Any(s => s.Fibre.Id == "metallised-film")))
        {
            yield return new Caution("flammable-metallic", "Metallic or film thread undoes the exemption of wool, nylon and polyester cloth: the exemption needs every fibre to be on the list, and nylon scarves with metallic thread have failed. Have it tested before selling; local codes come first.", FlammabilityRule.Source);
        }

        if (piece.Cloth.Washed.Cover.Value.Value < SheerCover && yarns.Any(y => y.Fibres.Shares.Any(s => RecalledFibres.Contains(s.Fibre.Id))))
        {
            yield return new Caution("flammable-sheer", "Sheer scarves of rayon, silk and modal have been recalled for burning too fast. Keep it away from flames, and have it tested before selling; local codes come first.", Recalls);
        }
    }

    private static bool IsWorn(Piece piece) =>
        piece.Wearer != Wearer.Household && piece.Kind is (PieceKind.Scarf or PieceKind.Shawl or PieceKind.Cowl or PieceKind.GarmentPanel or PieceKind.Yardage);
}
