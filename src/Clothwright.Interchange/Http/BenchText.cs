using System.Collections.Immutable;
using System.Text.Json;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.WorksheetJson.Fields;
using Clothwright.Interchange.WorksheetJson.Sections;

namespace Clothwright.Interchange.Http;

/// <summary>The bench as JSON: looms, reeds and heddles written as on a worksheet, warping tools beside them.</summary>
public static class BenchText
{
    private static readonly WordList<WarpingToolKind> Kinds = new(
        ("board", WarpingToolKind.Board), ("mill", WarpingToolKind.Mill), ("pegs", WarpingToolKind.Pegs), ("sectionalBeam", WarpingToolKind.SectionalBeam));

    private static readonly string[] ToolFields = ["id", "name", "kind", "longestWarpMetres", "turnCentimetres", "sectionCentimetres"];

    /// <summary>Reads a bench.</summary>
    /// <param name="utf8">The text.</param>
    /// <returns>The bench, or the first problem: two looms or tools of one id are refused too.</returns>
    public static Parsed<BenchDocument> Read(ReadOnlyMemory<byte> utf8) => RecordText.Read(utf8, root =>
    {
        var bench = new JsonSection(root, "", [.. BenchJson.Fields, "warpingTools"]);
        var document = new BenchDocument
        {
            Looms = BenchJson.ReadLooms(bench),
            Reeds = BenchJson.ReadReeds(bench),
            Heddles = BenchJson.ReadHeddles(bench),
            WarpingTools = [.. bench.Sections("warpingTools", ToolFields).Select(ReadTool)],
        };
        RefuseTwins("looms", document.Looms.Select(l => l.Id));
        RefuseTwins("warpingTools", document.WarpingTools.Select(t => t.Id));
        return document;
    });

    /// <summary>Writes a bench.</summary>
    /// <param name="bench">The bench.</param>
    public static byte[] Write(BenchDocument bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return ShelfText.Written(writer =>
        {
            writer.WriteStartObject();
            BenchJson.WriteLists(writer, bench.Looms, bench.Reeds, bench.Heddles);
            writer.WriteStartArray("warpingTools");
            foreach (WarpingTool tool in bench.WarpingTools) Write(writer, tool);
            writer.WriteEndArray();
            writer.WriteEndObject();
        });
    }

    private static WarpingTool ReadTool(JsonSection tool) => new()
    {
        Id = tool.Text("id", "board"),
        Name = tool.OptionalText("name") ?? tool.Text("id", "board"),
        Kind = tool.Word("kind", Kinds),
        LongestWarpMetres = tool.OptionalNumber("longestWarpMetres", 0, 1000, above: true),
        TurnCentimetres = tool.OptionalNumber("turnCentimetres", 0, 2000, above: true),
        SectionCentimetres = tool.OptionalNumber("sectionCentimetres", 0, 100, above: true),
    };

    private static void Write(Utf8JsonWriter writer, WarpingTool tool)
    {
        writer.WriteStartObject();
        writer.WriteString("id", tool.Id);
        writer.WriteString("name", tool.Name);
        writer.WriteString("kind", Kinds.Of(tool.Kind));
        if (tool.LongestWarpMetres is { } longest) writer.Number("longestWarpMetres", longest);
        if (tool.TurnCentimetres is { } turn) writer.Number("turnCentimetres", turn);
        if (tool.SectionCentimetres is { } section) writer.Number("sectionCentimetres", section);
        writer.WriteEndObject();
    }

    private static void RefuseTwins(string list, IEnumerable<string> ids)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach ((int index, string id) in ids.Index())
        {
            if (seen.Add(id)) continue;
            throw new InputProblemException(new InputProblem($"\"{id}\" stands twice.", $"{list}[{index}].id", "Give each its own id, for example table-8 and table-16."));
        }
    }
}
