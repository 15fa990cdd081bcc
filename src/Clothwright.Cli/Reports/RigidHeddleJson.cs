using System.Text.Json.Nodes;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.RigidHeddles;

namespace Clothwright.Cli.Reports;

/// <summary>A draft laid out for rigid heddles, for a program. Ends and picks are counted from 1.</summary>
internal static class RigidHeddleJson
{
    /// <summary>The plan, and the table where the heddle is known.</summary>
    public static JsonObject Of(RigidHeddlePlan plan, RigidHeddleTable? table, RigidHeddle? heddle, Sett? sett) => new()
    {
        ["feasible"] = plan.CanBeWoven,
        ["heddles"] = plan.Heddles,
        ["groups"] = new JsonArray([.. plan.Groups.Select(g => (JsonNode)g)]),
        ["sticks"] = new JsonArray([.. plan.Sticks.Select(s => new JsonObject { ["number"] = s.Number, ["ends"] = new JsonArray([.. s.Ends.Select(e => (JsonNode)(e + 1))]) })]),
        ["picks"] = new JsonArray([.. plan.Picks.Select(Pick)]),
        ["cannot"] = plan.Cannot is { } cannot ? new JsonObject { ["what"] = cannot.What, ["mend"] = cannot.Mend } : null,
        ["smallestChange"] = ChangeJson.Of(plan.SmallestChange),
        ["heddle"] = heddle?.Name,
        ["endsPerCentimetre"] = sett?.PerCentimetre,
        ["greatestShiftMillimetres"] = table?.GreatestShift.Millimetres,
        ["holes"] = table is null ? null : new JsonArray([.. table.Holes.Select(end => new JsonArray([.. end.Select(h => (JsonNode)h.ToString())]))]),
    };

    private static JsonObject Pick(RigidHeddlePick pick) => new()
    {
        ["positions"] = pick.Shed is { } shed ? new JsonArray([.. shed.Positions.Select(p => (JsonNode)p.ToString().ToLowerInvariant())]) : null,
        ["stick"] = pick.Stick == 0 ? null : pick.Stick,
        ["reason"] = pick.Reason.Length == 0 ? null : pick.Reason,
    };
}
