using System.Text.Json.Nodes;
using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;

namespace Clothwright.Cli.Reports;

/// <summary>Whether the pattern of a cloth is seen, by whom, and whether it shimmers.</summary>
internal static class PatternSeen
{
    private static readonly (ColourVision Kind, string Eyes)[] Visions =
        [(ColourVision.Protan, "without long-wave cones"), (ColourVision.Deutan, "without middle-wave cones"), (ColourVision.Tritan, "without short-wave cones")];

    /// <summary>One line for a person.</summary>
    public static string Words(ClothGeometry cloth, bool front)
    {
        PatternLegibility usual = PatternLegibility.Of(cloth, front, PatternLegibility.ArmsLength);
        string lost = string.Join(" or ", Visions.Where(v => usual.Grade > LegibilityGrade.Lost && PatternLegibility.Of(cloth, front, PatternLegibility.ArmsLength, v.Kind).Grade == LegibilityGrade.Lost).Select(v => v.Eyes));
        string some = lost.Length == 0 ? "" : $" It is lost to eyes {lost}.";
        double shimmer = ClothShimmer.Of(cloth).Value.Value;
        string moves = shimmer >= 2 ? $" The colour moves by {shimmer:0.#} (CIEDE2000) as the light turns." : "";
        return $"{usual.Words.TrimEnd('.')}, at {PatternLegibility.ArmsLength.Centimetres:0} cm.{some}{moves}";
    }

    /// <summary>The fields for a program.</summary>
    public static JsonObject Json(ClothGeometry cloth)
    {
        PatternLegibility face = PatternLegibility.Of(cloth, front: true, PatternLegibility.ArmsLength);
        PatternLegibility back = PatternLegibility.Of(cloth, front: false, PatternLegibility.ArmsLength);
        var json = new JsonObject
        {
            ["distanceMetres"] = PatternLegibility.ArmsLength.Metres,
            ["figureWidthMillimetres"] = face.FigureWidth.Value.Millimetres,
            ["faceNoticedDifferences"] = face.NoticedDifferences.Value.Value,
            ["backNoticedDifferences"] = back.NoticedDifferences.Value.Value,
            ["lightnessDifference"] = face.LightnessDifference,
            ["faceWords"] = face.Words,
            ["backWords"] = back.Words,
            ["shimmerDeltaE2000"] = ClothShimmer.Of(cloth).Value.Value,
        };
        foreach ((ColourVision kind, _) in Visions) json[$"faceNoticedDifferences{kind}"] = PatternLegibility.Of(cloth, front: true, PatternLegibility.ArmsLength, kind).NoticedDifferences.Value.Value;
        return json;
    }
}
