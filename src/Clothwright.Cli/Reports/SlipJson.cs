using System.Text.Json.Nodes;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;

namespace Clothwright.Cli.Reports;

/// <summary>What slips will look like, for a program. Ends and picks are counted from 1.</summary>
internal static class SlipJson
{
    /// <summary>Each slip with its effect; the drawdown with all of them.</summary>
    public static JsonObject Of(IReadOnlyList<(Draft Before, Slip Slip, SlipEffect Effect)> steps) => new()
    {
        ["slips"] = new JsonArray([.. steps.Select(s => Step(s.Before, s.Slip, s.Effect))]),
        ["drawdown"] = DraftText.Rows(steps[^1].Effect.Cloth),
    };

    private static JsonObject Step(Draft before, Slip slip, SlipEffect effect) => new()
    {
        ["kind"] = slip.Kind.ToString(),
        ["what"] = slip.Describe(before),
        ["looks"] = effect.Looks,
        ["mend"] = slip.Mend(before, before.Picks).Words,
        ["changedCrossings"] = new JsonArray([.. effect.Changed.Select(c => new JsonObject { ["pick"] = c.Pick + 1, ["end"] = c.End + 1 })]),
        ["longestFloatsBefore"] = Floats(effect.Before),
        ["longestFloatsAfter"] = Floats(effect.After),
    };

    private static JsonObject Floats(LongestFloats floats) => new()
    {
        ["warpFace"] = floats.WarpFace,
        ["warpBack"] = floats.WarpBack,
        ["weftFace"] = floats.WeftFace,
        ["weftBack"] = floats.WeftBack,
    };
}
