using System.Text.Json.Nodes;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Cli.Reports;

/// <summary>A draft fitted to a loom, for a program.</summary>
internal static class FitJson
{
    /// <summary>The answer with tie-up, treadling and lift plan.</summary>
    /// <param name="fit">The answer.</param>
    /// <param name="limits">The loom.</param>
    public static JsonObject Of(LoomFitResult fit, LoomLimits limits) => new()
    {
        ["feasible"] = fit.Feasible,
        ["shafts"] = fit.Shafts.Value.Count,
        ["treadles"] = fit.Treadles.Value.Count,
        ["treadlesAtLeast"] = fit.TreadlesAtLeast,
        ["treadlesWithOneFoot"] = fit.DirectTreadles,
        ["tieUp"] = new JsonArray([.. fit.TieUp.Select(t => (JsonNode)t.ToString())]),
        ["treadling"] = Sets(fit.Treadling),
        ["liftPlan"] = Sets(fit.LiftPlan),
        ["optimal"] = fit.Optimal,
        ["provedImpossible"] = FitText.IsImpossible(fit, limits),
        ["reasons"] = new JsonArray([.. fit.Reasons.Select(r => (JsonNode)r)]),
        ["smallestChange"] = ChangeJson.Of(fit.SmallestChange),
        ["draft"] = fit.Draft is { } draft ? DraftNotation.Format(draft) : null,
    };

    private static JsonArray Sets(IEnumerable<ShaftSet> sets) =>
        [.. sets.Select(s => new JsonArray([.. s.Members().Select(m => (JsonNode)m)]))];
}
