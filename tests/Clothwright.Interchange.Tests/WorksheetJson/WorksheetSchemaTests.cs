using System.Text.Json;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Interchange.WorksheetJson.Sections;
using Clothwright.TestKit;

namespace Clothwright.Interchange.Tests.WorksheetJson;

public class WorksheetSchemaTests
{
    private static readonly JsonElement Schema = JsonDocument.Parse(File.ReadAllText(Repository.PathOf("docs", "reference", "worksheet.schema.json"))).RootElement;

    public static TheoryData<string> Samples =>
        [.. Directory.GetFiles(Repository.PathOf("samples"), "*.json").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_sample_satisfies_the_schema(string file)
    {
        using JsonDocument sample = JsonDocument.Parse(File.ReadAllBytes(Repository.PathOf("samples", file)));
        Assert.Empty(SchemaCheck.Faults(Schema, sample.RootElement));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void What_the_writer_writes_satisfies_the_schema(string file)
    {
        byte[] written = WorksheetWriter.Write(WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", file))).Value);
        using JsonDocument document = JsonDocument.Parse(written);
        Assert.Empty(SchemaCheck.Faults(Schema, document.RootElement));
    }

    [Fact]
    public void The_schema_names_the_fields_that_the_reader_takes()
    {
        JsonElement root = Schema.GetProperty("properties");
        JsonElement bench = root.GetProperty("bench").GetProperty("properties");
        JsonElement yarn = ItemsOf(root.GetProperty("shelf"));
        JsonElement piece = ItemsOf(root.GetProperty("pieces"));
        Same(WorksheetReader.Fields, root);
        Same(BenchJson.Fields, bench);
        Same(BenchJson.LoomFields, ItemsOf(bench.GetProperty("looms")));
        Same(BenchJson.ReedFields, ItemsOf(bench.GetProperty("reeds")));
        Same(BenchJson.HeddleFields, ItemsOf(bench.GetProperty("heddles")));
        Same(ShelfJson.Fields, yarn);
        Same(ShelfJson.FibreFields, ItemsOf(yarn.GetProperty("fibres")));
        Same(ShelfJson.PackageFields, ItemsOf(yarn.GetProperty("packages")));
        Same(ShelfJson.OfferFields, yarn.GetProperty("offer").GetProperty("properties"));
        Same(WeaveJson.Fields, root.GetProperty("weave").GetProperty("anyOf")[1].GetProperty("properties"));
        Same(WarpJson.Fields, root.GetProperty("warp").GetProperty("properties"));
        Same(WarpJson.RunFields, ItemsOf(root.GetProperty("warp").GetProperty("properties").GetProperty("order")));
        Same(PieceJson.Fields, piece);
        Same(PieceJson.FringeFields, piece.GetProperty("fringe").GetProperty("properties"));
        Same(PieceJson.WeftFields, ItemsOf(piece.GetProperty("weft")));
        Same(AllowancesJson.Fields, root.GetProperty("allowances").GetProperty("properties"));
        Same(RatesJson.Fields, root.GetProperty("rates").GetProperty("properties"));
    }

    [Fact]
    public void The_schema_names_the_words_that_the_reader_takes()
    {
        JsonElement root = Schema.GetProperty("properties");
        JsonElement loom = ItemsOf(root.GetProperty("bench").GetProperty("properties").GetProperty("looms"));
        JsonElement yarn = ItemsOf(root.GetProperty("shelf"));
        JsonElement piece = ItemsOf(root.GetProperty("pieces"));
        SameWords(JsonWords.Units.All, root.GetProperty("units"));
        SameWords(JsonWords.Purposes.All, root.GetProperty("purpose"));
        SameWords(JsonWords.LoomKinds.All, loom.GetProperty("kind"));
        SameWords(JsonWords.Sheds.All, loom.GetProperty("shed"));
        SameWords(JsonWords.Constructions.All, yarn.GetProperty("construction"));
        SameWords(JsonWords.PackageForms.All, yarn.GetProperty("offer").GetProperty("properties").GetProperty("form"));
        SameWords(JsonWords.EndsFits.All, root.GetProperty("warp").GetProperty("properties").GetProperty("fit"));
        SameWords(JsonWords.PieceKinds.All, piece.GetProperty("kind"));
        SameWords(JsonWords.Makes.All, piece.GetProperty("make"));
        SameWords(JsonWords.Joins.All, piece.GetProperty("join"));
        SameWords(JsonWords.Wearers.All, piece.GetProperty("wearer"));
        SameWords(JsonWords.Fringes.All, piece.GetProperty("fringe").GetProperty("properties").GetProperty("style"));
    }

    [Fact]
    public void The_check_finds_a_broken_worksheet()
    {
        using JsonDocument broken = JsonDocument.Parse("""{ "clothwright": 2, "titel": "x", "shelf": [] }""");
        string[] faults = [.. SchemaCheck.Faults(Schema, broken.RootElement)];
        Assert.Contains("$.clothwright is not 1", faults);
        Assert.Contains("$ has titel too many", faults);
        Assert.Contains("$.shelf is too short", faults);
        Assert.Contains("$ lacks title", faults);
    }

    private static JsonElement ItemsOf(JsonElement list) => list.GetProperty("items").GetProperty("properties");

    private static void Same(IEnumerable<string> fields, JsonElement properties) =>
        Assert.Equal(fields.Order(StringComparer.Ordinal), properties.EnumerateObject().Select(p => p.Name).Order(StringComparer.Ordinal));

    private static void SameWords(IEnumerable<string> words, JsonElement property) =>
        Assert.Equal(words.Order(StringComparer.Ordinal), property.GetProperty("enum").EnumerateArray().Select(e => e.GetString()!).Order(StringComparer.Ordinal));
}
