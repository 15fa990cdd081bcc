using System.Text.Json;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Interchange.WorksheetJson.Fields;

namespace Clothwright.Interchange.WorksheetJson.Sections;

/// <summary>The section <c>allowances</c>: what the weaver knows better than the rules.</summary>
internal static class AllowancesJson
{
    // Beyond these a sample was misread; shrinkage below 0 is growth, which hair and superwash do.
    private const double MostPercent = 60;
    private const double MostGrowthPercent = -20;

    public static string[] Fields { get; } =
    [
        "warpTakeUpPercent", "drawInPercent", "shrinkageInLengthPercent", "shrinkageInWidthPercent", "weftWastePercent",
        .. JsonSection.LengthFields("loomWaste"),
    ];

    public static Allowances Read(JsonSection allowances) => new()
    {
        WarpTakeUp = allowances.OptionalPercent("warpTakeUpPercent", 0, MostPercent),
        DrawIn = allowances.OptionalPercent("drawInPercent", 0, MostPercent),
        ShrinkageInLength = allowances.OptionalPercent("shrinkageInLengthPercent", MostGrowthPercent, MostPercent),
        ShrinkageInWidth = allowances.OptionalPercent("shrinkageInWidthPercent", MostGrowthPercent, MostPercent),
        WeftWaste = allowances.OptionalPercent("weftWastePercent", 0, MostPercent),
        LoomWaste = allowances.OptionalLength("loomWaste"),
    };

    public static void Write(Utf8JsonWriter writer, Allowances allowances)
    {
        if (allowances == Allowances.None) return;
        writer.WriteStartObject("allowances");
        writer.Percent("warpTakeUp", allowances.WarpTakeUp);
        writer.Percent("drawIn", allowances.DrawIn);
        writer.Percent("shrinkageInLength", allowances.ShrinkageInLength);
        writer.Percent("shrinkageInWidth", allowances.ShrinkageInWidth);
        writer.Percent("weftWaste", allowances.WeftWaste);
        if (allowances.LoomWaste is { } waste) writer.Length("loomWaste", waste);
        writer.WriteEndObject();
    }
}
