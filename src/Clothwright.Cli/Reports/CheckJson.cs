using System.Text.Json.Nodes;
using Clothwright.Cli.Checks;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Cli.Reports;

/// <summary>What a check of a draft found, for a program. Threads are numbered from 1, as for people.</summary>
internal static class CheckJson
{
    /// <summary>The findings.</summary>
    public static JsonObject Of(DraftChecked check)
    {
        ClothAnalysis cloth = check.Cloth;
        return new JsonObject
        {
            ["ends"] = cloth.Ends,
            ["picks"] = cloth.Picks,
            ["shafts"] = cloth.Draft!.Shafts,
            ["treadles"] = cloth.Draft.Treadles,
            ["maxWarpFloat"] = new JsonObject { ["face"] = Longest(check, cloth.Floats.WarpFace), ["back"] = Longest(check, cloth.Floats.WarpBack) },
            ["maxWeftFloat"] = new JsonObject { ["face"] = Longest(check, cloth.Floats.WeftFace), ["back"] = Longest(check, cloth.Floats.WeftBack) },
            ["hangsTogether"] = cloth.Layers.HangsTogether,
            ["layers"] = cloth.Layers.Layers.Length,
            ["layersMeant"] = cloth.LayersMeant,
            ["components"] = new JsonArray([.. cloth.Layers.Components.Select(Component)]),
            ["tabbyAvailable"] = cloth.TabbyAvailable,
            ["looseSelvedgePicks"] = Numbers(cloth.SelvedgeFromLeft.LoosePicks.Select(p => p + 1)),
            ["selvedgeAdvice"] = cloth.SelvedgeAdvice.Text,
            ["needsFloatingSelvedge"] = cloth.SelvedgeAdvice.NeedsFloatingSelvedge,
            ["endsPerShaft"] = Numbers(cloth.EndsPerShaft!.Counts),
            ["heddles"] = cloth.EndsPerShaft.Heddles,
            ["takeUpRatio"] = double.IsFinite(cloth.TakeUp.Ratio) ? cloth.TakeUp.Ratio : null,
            ["needsSecondBeam"] = cloth.TakeUp.NeedsSecondBeam,
            ["warpFaceFraction"] = cloth.WarpFaceFraction,
            ["fewestShafts"] = cloth.FewestShafts,
            ["fewestTreadles"] = cloth.FewestTreadles,
            ["repeatEnds"] = cloth.Repeat.Ends,
            ["repeatPicks"] = cloth.Repeat.Picks,
            ["changesPerEnd"] = Numbers(cloth.Counts.TransitionsPerEnd),
            ["changesPerPick"] = Numbers(cloth.Counts.TransitionsPerPick),
            ["meanEndFloat"] = Finite(cloth.Counts.MeanEndFloat),
            ["meanPickFloat"] = Finite(cloth.Counts.MeanPickFloat),
            ["crossingOverFirmness"] = cloth.Counts.CrossingOverFirmness,
            ["symmetries"] = SymmetryWords.Of(cloth) is { } symmetries ? new JsonArray([.. symmetries.Select(w => (JsonNode)w)]) : null,
            ["endsPerCentimetre"] = check.Ends?.Value.PerCentimetre,
            ["picksPerCentimetre"] = check.Picks?.Value.PerCentimetre,
            ["floatAdvice"] = Advice(check.Floats),
            ["drawdown"] = DraftText.Rows(cloth.Drawdown),
            ["problems"] = new JsonArray([.. check.Problems.Select(p => new JsonObject { ["what"] = p.What, ["where"] = p.Where, ["mend"] = p.Mend })]),
            ["notes"] = new JsonArray([.. cloth.Notes.Select(n => (JsonNode)n)]),
            ["fileWarnings"] = new JsonArray([.. check.FileWarnings.Select(w => (JsonNode)w)]),
        };
    }

    private static JsonObject? Advice(FloatAdvice? advice) => advice is null ? null : new JsonObject
    {
        ["purpose"] = advice.Rule.Purpose.ToString(),
        ["longestMillimetres"] = advice.Rule.Longest.Millimetres,
        ["fine"] = advice.IsFine,
        ["warnings"] = new JsonArray([.. advice.Warnings.Select(w => new JsonObject
        {
            ["kind"] = w.Longest.Kind.ToString(),
            ["millimetres"] = w.Longest.Endless ? null : w.Length.Value.Millimetres,
            ["times"] = w.Times,
            ["text"] = w.Text,
        })]),
        ["caution"] = advice.Caution,
        ["source"] = advice.Rule.Source.Name,
    };

    // An endless float has no length.
    private static JsonObject? Longest(DraftChecked check, FloatTally floats) => floats.Longest is not { } longest ? null : new JsonObject
    {
        ["length"] = longest.Endless ? null : longest.Length,
        ["millimetres"] = longest.Endless ? null : check.LengthOf(longest)?.Millimetres,
        ["endless"] = longest.Endless,
        [longest.IsWarp ? "end" : "pick"] = longest.Line + 1,
        [longest.IsWarp ? "fromPick" : "fromEnd"] = longest.Start + 1,
        ["place"] = FloatPlace.Of(longest, check.Cloth.Ends, check.Cloth.Picks),
    };

    private static JsonNode? Finite(double value) => double.IsFinite(value) ? value : null;

    private static JsonObject Component(ClothLayer layer) => new()
    {
        ["ends"] = Numbers(layer.Ends.Select(e => e + 1)),
        ["picks"] = Numbers(layer.Picks.Select(p => p + 1)),
    };

    private static JsonArray Numbers(IEnumerable<int> numbers) => [.. numbers.Select(n => (JsonNode)n)];
}
