using System.Text.Json.Nodes;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;

namespace Clothwright.Cli.Reports;

/// <summary>What may have gone wrong, for a program.</summary>
internal static class FaultJson
{
    /// <summary>All readings, likeliest first.</summary>
    public static JsonObject Of(FaultReport report) => new()
    {
        ["nothingWrong"] = report.NothingWrong,
        ["proved"] = report.Proved,
        ["draftsTried"] = report.Steps,
        ["readings"] = new JsonArray([.. report.Readings.Select(r => new JsonObject
        {
            ["slips"] = new JsonArray([.. r.Steps.Select(Step)]),
            ["crossingsLeft"] = r.Left,
            ["draft"] = DraftNotation.Format(r.Made),
        })]),
    };

    private static JsonObject Step(FaultStep step) => new()
    {
        ["kind"] = step.Slip.Kind.ToString(),
        ["what"] = step.What,
        ["mend"] = step.Mend.Words,
        ["picksToUnweave"] = step.Mend.PicksToUnweave,
        ["endsToMove"] = step.Mend.EndsToMove,
    };
}
