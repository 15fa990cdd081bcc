using System.Text.Json.Nodes;
using Clothwright.Cli.Cloths;
using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Hand;
using Clothwright.Core.Colours;

namespace Clothwright.Cli.Reports;

/// <summary>A foreseen cloth for a program: SI numbers with the unit in each name.</summary>
internal static class ClothJson
{
    /// <summary>The first cloth's fields on top; with more than one, each in <c>pieces</c>.</summary>
    public static JsonObject Of(IReadOnlyList<ForeseenCloth> cloths)
    {
        JsonObject json = One(cloths[0]);
        json["pieces"] = new JsonArray([.. cloths.Select(One)]);
        return json;
    }

    private static JsonObject One(ForeseenCloth foreseen)
    {
        ClothGeometry cloth = foreseen.Geometry;
        ClothHand hand = cloth.Hand;
        FusedColours fused = cloth.FusedColours();
        return new JsonObject
        {
            ["name"] = foreseen.Name,
            ["endsPerCentimetre"] = cloth.Question.Ends.Value.PerCentimetre,
            ["picksPerCentimetre"] = cloth.Question.Picks.Value.PerCentimetre,
            ["warpCrimpFraction"] = cloth.WarpCrimp.Value.Value,
            ["weftCrimpFraction"] = cloth.WeftCrimp.Value.Value,
            ["warpTakeUpFraction"] = cloth.WarpTakeUp.Value.Value,
            ["weftTakeUpFraction"] = cloth.WeftTakeUp.Value.Value,
            ["gramsPerSquareMetre"] = foreseen.Mass.Value.GramsPerSquareMetre,
            ["gramsPerSquareMetreUpper95"] = foreseen.Mass.Upper95.GramsPerSquareMetre,
            ["thicknessMillimetres"] = cloth.Thickness.Value.Millimetres,
            ["coverFraction"] = cloth.Cover.Value.Value,
            ["warpCover"] = cloth.WarpCover.Value.Value,
            ["weftCover"] = cloth.WeftCover.Value.Value,
            ["tightness"] = cloth.Tightness.Value.Value,
            ["jammed"] = cloth.IsJammed,
            ["warpDiameterMillimetres"] = cloth.WarpDiameter.Value.Millimetres,
            ["weftDiameterMillimetres"] = cloth.WeftDiameter.Value.Millimetres,
            ["crossingsOverPerCrossing"] = cloth.CrossingOverFirmness,
            ["hand"] = hand.Words,
            ["handReasons"] = new JsonArray([.. hand.Reasons.Select(r => (JsonNode)r)]),
            ["bendingLengthCentimetresAtLeast"] = hand.BendingLength?.Value.Centimetres,
            ["faceColour"] = fused.Face.Colour.ToSrgb().ToString(),
            ["backColour"] = fused.Back.Colour.ToSrgb().ToString(),
            ["faceWarpFraction"] = fused.Face.Shares.Warp,
            ["backWarpFraction"] = fused.Back.Shares.Warp,
            ["faceColourWords"] = ColourWords.Of(fused.Face.Colour),
            ["backColourWords"] = ColourWords.Of(fused.Back.Colour),
            ["pattern"] = PatternSeen.Json(cloth),
            ["puckering"] = foreseen.Puckering is { } puckering ? PuckeringSeen.Json(puckering) : null,
            ["notes"] = new JsonArray([.. foreseen.Notes.Select(n => (JsonNode)n)]),
        };
    }
}
