using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Cloths.Puckering;
using Clothwright.Core.Plans.Results;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns of zones of a weave that draw in unlike each other, so that the cloth does not lie flat.</summary>
internal static class PuckeringWarnings
{
    /// <summary>The warnings: of the ends once for the warp, of the picks piece by piece.</summary>
    /// <param name="pieces">The pieces.</param>
    public static IEnumerable<PlanWarning> Of(ImmutableArray<PiecePlan> pieces)
    {
        for (int i = 0; i < pieces.Length; i++)
        {
            var puckering = ClothPuckering.Of(pieces[i].Cloth);
            if (Warning(puckering.AcrossTheWidth, $"pieces[{i}].weave", pieces[i].Piece.Name, "ends", "Wind the tightest ends longer: give them a second beam, or hang the slack zone on weights of its own.") is { } across) yield return across;
            if (Warning(puckering.AlongTheLength, $"pieces[{i}].weave", pieces[i].Piece.Name, "picks", "Beat the slack zone closer, or make the zones narrower.") is { } along) yield return along;
        }
    }

    private static PlanWarning? Warning(PuckeringRisk risk, string where, string piece, string threads, string mend)
    {
        if (risk.Grade < PuckerGrade.Puckers) return null;
        string lift = (risk.Lift.Value.Millimetres).ToString("0.#", CultureInfo.InvariantCulture);
        string shape = risk.Grade == PuckerGrade.Folds ? "stands up in folds" : "puckers";
        return new PlanWarning(
            "puckering",
            where,
            $"{piece}: some {threads} draw in {risk.Most.Value}, others only {risk.Least.Value}: washed, the slack zone has {risk.Excess.Value} of its length over and {shape}, up to about {lift} mm.",
            $"If that is not wanted: {mend} Prove it on a sample.");
    }
}
