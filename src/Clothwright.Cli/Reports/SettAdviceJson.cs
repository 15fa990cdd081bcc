using System.Text.Json.Nodes;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Interchange.Http;

namespace Clothwright.Cli.Reports;

/// <summary>Advice on a sett as JSON.</summary>
internal static class SettAdviceJson
{
    /// <summary>The advice, as data.</summary>
    /// <param name="advice">The advice.</param>
    public static JsonObject Of(SettAdvice advice) => new()
    {
        ["diameterMillimetres"] = advice.WarpDiameter.Value.Millimetres,
        ["wrapsPerInch"] = advice.WarpTouching.Value.PerInch,
        ["wrapsPerInchByHand"] = advice.WarpWrapsByHand.Value.PerInch,
        ["maximumEndsPerCentimetre"] = advice.MaximumEnds.Value.PerCentimetre,
        ["recommendedEndsPerCentimetre"] = advice.Ends.Value.PerCentimetre,
        ["recommendedEndsPerInch"] = advice.Ends.Value.PerInch,
        ["recommendedPicksPerCentimetre"] = advice.Picks.Value.PerCentimetre,
        ["range"] = new JsonObject
        {
            ["lowEndsPerCentimetre"] = advice.EndsRange.Low.PerCentimetre,
            ["highEndsPerCentimetre"] = advice.EndsRange.High.PerCentimetre,
            ["lowEndsPerInch"] = advice.EndsRange.Low.PerInch,
            ["highEndsPerInch"] = advice.EndsRange.High.PerInch,
        },
        ["methods"] = new JsonArray([.. advice.Limits.Select(l => new JsonObject
        {
            ["name"] = l.Method,
            ["endsPerCentimetre"] = l.Ends.Value.PerCentimetre,
            ["picksPerCentimetre"] = l.Picks.Value.PerCentimetre,
            ["source"] = l.Ends.Working.Rule.Source.Name,
            ["note"] = l.Note,
        })]),
        ["reeds"] = new JsonArray([.. advice.Reeds.Select(r => new JsonObject
        {
            ["name"] = r.Name,
            ["dentsPerInch"] = r.Dents.PerInch,
            ["heddles"] = r.Heddles,
            ["sley"] = new JsonArray([.. r.Sley.EndsPerDent.Select(e => (JsonNode)e)]),
            ["endsPerInch"] = r.Sett.PerInch,
            ["errorPercent"] = r.Error.Percent,
            ["warnings"] = new JsonArray([.. r.Warnings.Select(w => (JsonNode)w)]),
        })]),
        ["notes"] = new JsonArray([.. advice.Notes.Select(n => (JsonNode)n)]),
        ["working"] = WorkingReport.Of(advice.Ends.Working),
    };
}
