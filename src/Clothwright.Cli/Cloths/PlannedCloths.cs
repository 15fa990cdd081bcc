using System.Collections.Immutable;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Puckering;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Composing;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Cloths;

/// <summary>The cloths of a worksheet, one for each piece.</summary>
internal static class PlannedCloths
{
    /// <summary>The washed cloths.</summary>
    /// <param name="path">The worksheet file.</param>
    /// <param name="units">The units the worksheet asks for.</param>
    /// <exception cref="InputProblemException">The file holds no worksheet that can be planned.</exception>
    public static ImmutableArray<ForeseenCloth> Of(string path, out UnitStyle units)
    {
        (Core.Worksheets.Worksheet worksheet, PlanResult plan) = WorksheetFile.Plan(path);
        units = worksheet.Units;
        return [.. plan.Pieces.Select(p => Cloth(plan, p))];
    }

    private static ForeseenCloth Cloth(PlanResult plan, PiecePlan piece) =>
        new($"{piece.Piece.Name}, {(piece.Piece.Weave ?? plan.Request.Weave).Name}, washed", piece.Cloth.Washed, piece.MassPerArea, ClothLooks.Of(plan, piece))
        {
            Puckering = ClothPuckering.Of(piece.Cloth),
            Notes = piece.PatternPicksPerGroundPick > 0
                ? ["Mass and picture are those of the whole cloth; the other figures are those of the ground, on which the pattern weft lies."]
                : [],
        };
}
