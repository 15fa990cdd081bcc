using System.Collections.Immutable;
using System.Text.Json;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Fields;

namespace Clothwright.Interchange.WorksheetJson.Sections;

/// <summary>The section <c>warp</c>: the order of yarns and what is woven besides the pieces.</summary>
internal static class WarpJson
{
    private const int MostThreads = 20_000;

    public static string[] Fields { get; } =
    [
        "order", "repeat", "fit", "selvedgeEnds", "floatingSelvedges",
        .. JsonSection.LengthFields("sample"), .. JsonSection.LengthFields("header"), .. JsonSection.LengthFields("gap"),
    ];

    public static string[] RunFields { get; } = ["yarn", "ends"];

    public static WarpOrder ReadOrder(JsonSection warp)
    {
        ImmutableArray<ThreadRun> runs = [.. warp.Sections("order", RunFields).Select(run => new ThreadRun(run.Text("yarn", "tide-blue"), run.Whole("ends", 1, MostThreads, 1)))];
        return runs.IsEmpty
            ? throw warp.Missing("order", "\"order\": [ { \"yarn\": \"tide-blue\" } ]")
            : new WarpOrder(runs) { Repeats = warp.Flag("repeat", true) };
    }

    public static Worksheet ReadRest(JsonSection warp, Worksheet worksheet) => worksheet with
    {
        EndsFit = warp.Word<EndsFit>("fit", JsonWords.EndsFits, worksheet.EndsFit),
        SelvedgeEnds = warp.Whole("selvedgeEnds", 0, 100, worksheet.SelvedgeEnds),
        FloatingSelvedges = warp.Flag("floatingSelvedges", worksheet.FloatingSelvedges),
        Sample = warp.OptionalLength("sample") ?? worksheet.Sample,
        Header = warp.OptionalLength("header") ?? worksheet.Header,
        Gap = warp.OptionalLength("gap") ?? worksheet.Gap,
    };

    public static void Write(Utf8JsonWriter writer, Worksheet worksheet)
    {
        writer.WriteStartObject("warp");
        writer.WriteStartArray("order");
        foreach (ThreadRun run in worksheet.Warp.Runs)
        {
            writer.WriteStartObject();
            writer.WriteString("yarn", run.YarnId);
            writer.WriteNumber("ends", run.Threads);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        if (!worksheet.Warp.Repeats) writer.WriteBoolean("repeat", false);
        writer.WriteString("fit", JsonWords.EndsFits.Of(worksheet.EndsFit));
        writer.WriteNumber("selvedgeEnds", worksheet.SelvedgeEnds);
        writer.WriteBoolean("floatingSelvedges", worksheet.FloatingSelvedges);
        writer.Length("sample", worksheet.Sample);
        writer.Length("header", worksheet.Header);
        writer.Length("gap", worksheet.Gap);
        writer.WriteEndObject();
    }
}
