using System.Text.Json;
using System.Text.Json.Nodes;
using Clothwright.TestKit;

namespace Clothwright.Cli.Tests;

public class PlanCommandTests
{
    private static readonly string Scarves = Repository.PathOf("samples", "reedbed-scarves.json");

    public static TheoryData<string> Samples => [.. Directory.GetFiles(Repository.PathOf("samples"), "*.json").Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_sample_is_planned_with_all_the_promised_fields(string name)
    {
        CommandLine run = CommandLine.Run("plan", Repository.PathOf("samples", name), "--json");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        foreach (string field in (string[])["ends", "endsPerCentimetre", "reedWidthCentimetres", "warpLengthMetres", "warpTakeUpFraction", "weftTakeUpFraction", "picks", "gramsPerSquareMetre", "hours"])
        {
            Assert.True(run.Json.GetProperty(field).GetDouble() > 0, field);
        }

        foreach (JsonElement yarn in run.Json.GetProperty("yarns").EnumerateArray())
        {
            double metres = yarn.GetProperty("metres").GetDouble();
            Assert.Equal(metres, yarn.GetProperty("warpMetres").GetDouble() + yarn.GetProperty("weftMetres").GetDouble(), 0.001);
            Assert.True(yarn.GetProperty("gramsUpper95").GetDouble() >= yarn.GetProperty("grams").GetDouble());
            Assert.True(yarn.TryGetProperty("packages", out _) && yarn.TryGetProperty("cost", out _));
        }

        Assert.NotEqual(0, run.Json.GetProperty("pieces").GetArrayLength());
        Assert.Equal(JsonValueKind.Array, run.Json.GetProperty("warnings").ValueKind);
        Assert.Equal(JsonValueKind.Array, run.Json.GetProperty("cautions").ValueKind);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_sections_of_the_warp_add_up_to_its_length(string name)
    {
        JsonElement plan = CommandLine.Run("plan", Repository.PathOf("samples", name), "--json").Json;

        double sum = plan.GetProperty("sections").EnumerateArray().Sum(s => s.GetProperty("warpMetres").GetDouble());
        Assert.Equal(plan.GetProperty("warpLengthMetres").GetDouble(), sum, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Picks_counted_under_tension_fill_the_length_measured_under_tension(string name)
    {
        JsonElement plan = CommandLine.Run("plan", Repository.PathOf("samples", name), "--json").Json;
        foreach (JsonElement piece in plan.GetProperty("pieces").EnumerateArray())
        {
            double under = piece.GetProperty("picksPerCentimetreUnderTension").GetDouble() * piece.GetProperty("lengthUnderTensionCentimetres").GetDouble();
            double off = piece.GetProperty("picksPerCentimetre").GetDouble() * piece.GetProperty("offLoomLengthCentimetres").GetDouble();

            // The same picks lie in the cloth on the loom and off it.
            Assert.Equal(off, under, 1e-6);
        }
    }

    [Fact]
    public void The_tally_gives_the_picks_to_count_on_the_loom()
    {
        // By hand: 1,526 picks in 205.6 cm under tension are 7.42 to the centimetre; off the loom they lie in 193.7 cm, 7.87 to the centimetre.
        string text = CommandLine.Run("plan", Scarves).Output;
        Assert.Contains("weave 205.6 cm under tension, 1526 picks at 7.42 per cm", text, StringComparison.Ordinal);
    }

    [Fact]
    public void All_files_are_written_in_the_form_their_names_promise()
    {
        using var folder = new PassingFolder();
        CommandLine run = CommandLine.Run("plan", Scarves, "--out", folder.Path);

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(folder.File("handout.pdf"))[..4]);
        Assert.Equal("PNG"u8.ToArray(), File.ReadAllBytes(folder.File("face.png"))[1..4]);
        Assert.Equal("PNG"u8.ToArray(), File.ReadAllBytes(folder.File("back.png"))[1..4]);
        Assert.Contains("<svg", File.ReadAllText(folder.File("draft.svg")), StringComparison.Ordinal);
        Assert.StartsWith("[WIF]", File.ReadAllText(folder.File("draft.wif")), StringComparison.Ordinal);
        JsonNode plan = JsonNode.Parse(File.ReadAllText(folder.File("plan.json")))!;
        // Every figure points at its working, and the working holds the value.
        int place = (int)plan["figures"]!["ends"]!;
        Assert.Equal((double)plan["ends"]!, (double)plan["workings"]![place]!["value"]!);
    }

    [Fact]
    public void The_working_of_the_warp_length_names_its_parts_and_their_sources()
    {
        CommandLine run = CommandLine.Run("plan", Scarves, "--explain", "warpLength");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.StartsWith("warp length = ", run.Output, StringComparison.Ordinal);
        Assert.Contains("loom waste", run.Output, StringComparison.Ordinal);
        Assert.Contains("washing shrinkage", run.Output, StringComparison.Ordinal);
        Assert.Contains("common practice, no source", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_figure_that_is_not_there_is_answered_with_the_nearest()
    {
        CommandLine run = CommandLine.Run("plan", Scarves, "--explain", "warplenght");

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains("warpLength", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Customary_units_reach_every_figure_of_the_tally()
    {
        CommandLine run = CommandLine.Run("plan", Scarves, "--units", "customary");

        Assert.Contains(" yd", run.Output, StringComparison.Ordinal);
        Assert.Contains("per inch", run.Output, StringComparison.Ordinal);
        Assert.Contains(" oz", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(" per cm", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unknown yarn", "pieces[0].weft[0].yarn", "\"saltmarch\"")]
    [InlineData("zero sett", "sett", "0")]
    [InlineData("negative length", "pieces[0].lengthCentimetres", "-180")]
    [InlineData("wider than the loom", "loom", "60")]
    [InlineData("more shafts than the loom has", "weave", "shafts")]
    [InlineData("unknown field", "pieces[0]", "widthCentimetres")]
    public void A_slip_on_the_worksheet_is_named_with_its_place_and_mend(string slip, string place, string said)
    {
        using var folder = new PassingFolder();
        File.WriteAllText(folder.File("slip.json"), Spoiled(slip).ToJsonString());
        CommandLine run = CommandLine.Run("plan", folder.File("slip.json"), "--out", folder.File("out"));

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.False(Directory.Exists(folder.File("out")));
        Assert.Contains(place, run.Error, StringComparison.Ordinal);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.InRange(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length, 2, 4);
    }

    [Theory]
    [InlineData("{ \"clothwright\": 1, ")]
    [InlineData("not a worksheet")]
    [InlineData("[]")]
    [InlineData("")]
    public void A_file_that_is_no_worksheet_gets_one_clear_message(string contents)
    {
        using var folder = new PassingFolder();
        File.WriteAllText(folder.File("broken.json"), contents);
        CommandLine run = CommandLine.Run("plan", folder.File("broken.json"), "--out", folder.File("out"));

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains("broken.json", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.File("out")));
    }

    [Fact]
    public void Ten_megabytes_of_garbage_are_refused_at_once()
    {
        using var folder = new PassingFolder();
        var garbage = new byte[10 * 1024 * 1024];
        new Random(20261125).NextBytes(garbage);
        File.WriteAllBytes(folder.File("garbage.json"), garbage);
        CommandLine run = CommandLine.Run("plan", folder.File("garbage.json"));

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.True(run.Error.Length < 1000, run.Error);
    }

    [Fact]
    public void A_file_that_is_not_there_is_said_so() =>
        Assert.Contains("There is no file", CommandLine.Run("plan", "nowhere.json").Error, StringComparison.Ordinal);

    private static JsonNode Spoiled(string slip)
    {
        JsonNode sheet = JsonNode.Parse(File.ReadAllText(Scarves))!;
        JsonNode piece = sheet["pieces"]![0]!;
        switch (slip)
        {
            case "unknown yarn": piece["weft"]![0]!["yarn"] = "saltmarch"; break;
            case "zero sett": sheet["sett"] = new JsonObject { ["endsPerCentimetre"] = 0 }; break;
            case "negative length": piece["lengthCentimetres"] = -180; break;
            case "wider than the loom": piece["widthCentimetres"] = 90; break;
            case "more shafts than the loom has": sheet["weave"] = "12-end satin"; break;
            case "unknown field": piece["widthCentimeters"] = 21; break;
            default: throw new ArgumentOutOfRangeException(nameof(slip), slip, "No such slip.");
        }

        return sheet;
    }
}
