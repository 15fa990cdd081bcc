using System.Text.Json.Nodes;
using Clothwright.Core.Cloths.Puckering;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Reports;

/// <summary>Whether a washed cloth lies flat.</summary>
internal static class PuckeringSeen
{
    /// <summary>One sentence for each direction.</summary>
    public static string Words(ClothPuckering puckering, UnitStyle style) =>
        $"{One(puckering.AcrossTheWidth, "across", style)}; {One(puckering.AlongTheLength, "along", style)}";

    /// <summary>The fields for a program.</summary>
    public static JsonObject Json(ClothPuckering puckering) => new() { ["acrossTheWidth"] = One(puckering.AcrossTheWidth), ["alongTheLength"] = One(puckering.AlongTheLength) };

    private static string One(PuckeringRisk risk, string way, UnitStyle style) => risk.Grade switch
    {
        PuckerGrade.Flat => $"lies flat {way}",
        PuckerGrade.Ripple => $"a slight ripple {way}, {risk.Excess.Value} of the slack zone over",
        PuckerGrade.Puckers => $"puckers {way}, {risk.Excess.Value} of the slack zone over, up to {risk.Lift.Working.Format(style)} high",
        _ => $"stands up in folds {way}, {risk.Excess.Value} of the slack zone over, up to {risk.Lift.Working.Format(style)} high",
    };

    private static JsonObject One(PuckeringRisk risk) => new()
    {
        ["grade"] = risk.Grade.ToString(),
        ["excessFraction"] = risk.Excess.Value.Value,
        ["mostContractionFraction"] = risk.Most.Value.Value,
        ["leastContractionFraction"] = risk.Least.Value.Value,
        ["zoneWidthMillimetres"] = risk.ZoneWidth.Value.Millimetres,
        ["liftMillimetres"] = risk.Lift.Value.Millimetres,
    };
}
