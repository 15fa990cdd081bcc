using System.Text.Json.Nodes;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Http;

/// <summary>A warp plan for a program: SI numbers with the unit in each name.</summary>
public static class PlanReport
{
    /// <summary>The whole plan; the workings of all figures come with it when asked for.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="currency">Currency of its costs, three letters of ISO 4217.</param>
    /// <param name="withWorkings">Whether every figure's working is written too.</param>
    public static JsonObject Of(PlanResult plan, string currency, bool withWorkings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var json = new JsonObject
        {
            ["title"] = plan.Request.Title,
            ["loom"] = plan.Loom.Name,
            ["weave"] = plan.LoomDraft.Name,
            ["ends"] = plan.Ends.Total.Value.Count,
            ["repeatEnds"] = plan.Ends.RepeatEnds,
            ["floatingSelvedges"] = plan.Ends.FloatingSelvedges,
            ["endsPerCentimetre"] = plan.Sett.Value.PerCentimetre,
            ["reed"] = plan.Reed?.Name,
            ["sley"] = plan.Reed is { } reed ? new JsonArray([.. reed.Sley.EndsPerDent.Select(e => (JsonNode)e)]) : null,
            ["reedWidthCentimetres"] = plan.ReedWidth.Value.Centimetres,
            ["warpLengthMetres"] = plan.WarpLength.Value.Metres,
            ["warpLengthMetresUpper95"] = plan.WarpLength.Upper95.Metres,
            ["warpTakeUpFraction"] = plan.WarpTakeUp.Value.Value,
            ["weftTakeUpFraction"] = plan.WeftTakeUp.Value.Value,
            ["picks"] = plan.Picks.Value.Count,
            ["sections"] = new JsonArray([.. plan.Sections.Select(Section)]),
            ["yarns"] = new JsonArray([.. plan.Yarns.Select(Yarn)]),
            ["pieces"] = new JsonArray([.. plan.Pieces.Select(Piece)]),
            ["gramsPerSquareMetre"] = plan.MassPerArea.Value.GramsPerSquareMetre,
            ["hours"] = plan.Work.Total.Value.Hours,
            ["cost"] = plan.Cost?.Value.Amount,
            ["currency"] = currency,
            ["warnings"] = new JsonArray([.. plan.Warnings.Select(w => new JsonObject { ["id"] = w.Id, ["where"] = w.Where, ["text"] = w.Text, ["advice"] = w.Advice })]),
            ["cautions"] = new JsonArray([.. plan.Cautions.Select(c => new JsonObject { ["id"] = c.Id, ["text"] = c.Text, ["source"] = c.Source.Name })]),
        };
        if (withWorkings)
        {
            var workings = new WorkingReport();
            json["figures"] = new JsonObject(plan.Figures.All.Select(f => KeyValuePair.Create<string, JsonNode?>(f.Name, workings.Place(f.Value.Working))));
            json["workings"] = workings.List;
        }

        return json;
    }

    private static JsonObject Section(WarpSection section) => new()
    {
        ["kind"] = section.Kind.ToString(),
        ["label"] = section.Label,
        ["warpMetres"] = section.Warp.Value.Metres,
        ["piece"] = section.PieceIndex,
    };

    private static JsonObject Yarn(YarnNeed need) => new()
    {
        ["id"] = need.Yarn.Id,
        ["name"] = need.Yarn.Name,
        ["ends"] = need.Ends.Value.Count,
        ["warpMetres"] = need.Warp.Value.Metres,
        ["weftMetres"] = need.Weft.Value.Metres,
        ["metres"] = need.Total.Value.Metres,
        ["grams"] = need.Mass.Value.Grams,
        ["gramsUpper95"] = need.Mass.Upper95.Grams,
        ["packages"] = need.Packages.Packages,
        ["packagesToOpen"] = need.Packages.FromShelf.Length,
        ["packagesToBuy"] = need.Packages.NewPackages.Value.Count,
        ["cost"] = need.Cost?.Value.Amount,
        ["purchase"] = need.Packages.Cost?.Value.Amount,
    };

    private static JsonObject Piece(PiecePlan piece) => new()
    {
        ["name"] = piece.Piece.Name,
        ["count"] = piece.Piece.Count,
        ["finishedWidthCentimetres"] = piece.FinishedWidth.Value.Centimetres,
        ["finishedLengthCentimetres"] = piece.FinishedLength.Value.Centimetres,
        ["lengthUnderTensionCentimetres"] = piece.LengthUnderTension.Value.Centimetres,
        ["offLoomLengthCentimetres"] = piece.OffLoomLength.Value.Centimetres,
        ["picksPerCentimetre"] = piece.GroundPicks.Value.PerCentimetre,
        ["picksPerCentimetreUnderTension"] = piece.GroundPicksUnderTension.Value.PerCentimetre,
        ["picks"] = piece.Picks.Value.Count,
        ["warpTakeUpFraction"] = piece.WarpTakeUp.Value.Value,
        ["weftTakeUpFraction"] = piece.WeftTakeUp.Value.Value,
        ["drawInFraction"] = piece.DrawIn.Value.Value,
        ["lengthShrinkageFraction"] = piece.ShrinkageInLength.Value.Value,
        ["widthShrinkageFraction"] = piece.ShrinkageInWidth.Value.Value,
        ["grams"] = piece.ClothMass.Value.Grams,
        ["gramsPerSquareMetre"] = piece.MassPerArea.Value.GramsPerSquareMetre,
    };
}
