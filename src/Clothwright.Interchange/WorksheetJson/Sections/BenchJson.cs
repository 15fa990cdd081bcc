using System.Collections.Immutable;
using System.Text.Json;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Fields;

namespace Clothwright.Interchange.WorksheetJson.Sections;

/// <summary>The section <c>bench</c>: looms, reeds and rigid heddles.</summary>
internal static class BenchJson
{
    public static string[] Fields { get; } = ["looms", "reeds", "heddles"];

    public static string[] LoomFields { get; } =
    [
        "id", "name", "kind", .. JsonSection.LengthFields("weavingWidth"), "shafts", "treadles", "shed",
        "rigidHeddles", "warpBeams", "heddlesPerShaft", .. JsonSection.LengthFields("waste"),
    ];

    public static string[] ReedFields { get; } = ["name", .. JsonSection.ThreadFields("dents")];

    public static string[] HeddleFields { get; } = ["name", .. JsonSection.ThreadFields("ends"), "count"];

    public static ImmutableArray<LoomEntry> ReadLooms(JsonSection bench) => [.. bench.Sections("looms", LoomFields).Select(ReadLoom)];

    public static ImmutableArray<Reed> ReadReeds(JsonSection bench) => [.. bench.Sections("reeds", ReedFields).Select(reed => new Reed(
        reed.Text("name", "10-dent"),
        reed.OptionalThreads("dents") ?? throw reed.Missing("dents", "\"dentsPerInch\": 10, or \"dentsPerCentimetre\": 4")))];

    public static ImmutableArray<RigidHeddle> ReadHeddles(JsonSection bench) => [.. bench.Sections("heddles", HeddleFields).Select(heddle => new RigidHeddle(
        heddle.Text("name", "7.5-dent"),
        heddle.OptionalThreads("ends") ?? throw heddle.Missing("ends", "\"endsPerInch\": 7.5, or \"endsPerCentimetre\": 3"),
        heddle.Whole("count", 1, 20, 1)))];

    public static void Write(Utf8JsonWriter writer, Worksheet worksheet)
    {
        writer.WriteStartObject("bench");
        writer.WriteStartArray("looms");
        foreach (LoomEntry loom in worksheet.Looms) Write(writer, loom);
        writer.WriteEndArray();
        if (!worksheet.Reeds.IsEmpty)
        {
            writer.WriteStartArray("reeds");
            foreach (Reed reed in worksheet.Reeds) Write(writer, reed.Name, "dents", reed.Dents, 1);
            writer.WriteEndArray();
        }

        if (!worksheet.Heddles.IsEmpty)
        {
            writer.WriteStartArray("heddles");
            foreach (RigidHeddle heddle in worksheet.Heddles) Write(writer, heddle.Name, "ends", heddle.Spaces, heddle.Count);
            writer.WriteEndArray();
        }

        writer.WriteEndObject();
    }

    private static LoomEntry ReadLoom(JsonSection loom)
    {
        LoomKind kind = loom.Word("kind", JsonWords.LoomKinds);
        bool rigid = kind == LoomKind.RigidHeddle;
        int heddles = rigid ? loom.Whole("rigidHeddles", 1, LoomChecks.MostRigidHeddles, 1) : loom.Whole("rigidHeddles", 0, 0, 0);
        return new LoomEntry
        {
            Id = loom.Text("id", "table-8"),
            Name = loom.OptionalText("name") ?? loom.Text("id", "table-8"),
            Kind = kind,
            WeavingWidth = loom.Length("weavingWidth", 70),
            Shafts = rigid ? loom.Whole("shafts", heddles + 1, heddles + 1, heddles + 1) : loom.Whole("shafts", 2, LoomChecks.MostShafts),
            Treadles = kind == LoomKind.Floor ? loom.Whole("treadles", 0, LoomChecks.MostShafts) : loom.Whole("treadles", 0, 0, 0),
            Shed = loom.Word<ShedAction>("shed", JsonWords.Sheds, kind == LoomKind.Floor ? ShedAction.Rising : ShedAction.Levers),
            RigidHeddles = heddles,
            WarpBeams = loom.Whole("warpBeams", 1, 2, 1),
            HeddlesPerShaft = loom.Whole("heddlesPerShaft", 0, 5000, 0),
            Waste = loom.OptionalLength("waste"),
        };
    }

    private static void Write(Utf8JsonWriter writer, LoomEntry loom)
    {
        writer.WriteStartObject();
        writer.WriteString("id", loom.Id);
        writer.WriteString("name", loom.Name);
        writer.WriteString("kind", JsonWords.LoomKinds.Of(loom.Kind));
        writer.Length("weavingWidth", loom.WeavingWidth);
        if (loom.Kind == LoomKind.RigidHeddle)
        {
            writer.WriteNumber("rigidHeddles", loom.RigidHeddles);
        }
        else
        {
            writer.WriteNumber("shafts", loom.Shafts);
            if (loom.Kind == LoomKind.Floor) writer.WriteNumber("treadles", loom.Treadles);
            writer.WriteString("shed", JsonWords.Sheds.Of(loom.Shed));
        }

        if (loom.WarpBeams != 1) writer.WriteNumber("warpBeams", loom.WarpBeams);
        if (loom.HeddlesPerShaft != 0) writer.WriteNumber("heddlesPerShaft", loom.HeddlesPerShaft);
        if (loom.Waste is { } waste) writer.Length("waste", waste);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, string name, string threads, Sett sett, int count)
    {
        writer.WriteStartObject();
        writer.WriteString("name", name);
        writer.Threads(threads, sett);
        if (count != 1) writer.WriteNumber("count", count);
        writer.WriteEndObject();
    }
}
