using System.Text.Json;
using Clothwright.TestKit;
using SkiaSharp;

namespace Clothwright.Cli.Tests;

public class ClothCommandTests
{
    private static readonly string[] Twill = ["cloth", "2/2 twill", "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--ends", "20/in", "--picks", "18/in"];

    [Fact]
    public void The_mass_of_a_twill_is_that_of_its_threads_with_their_crimp()
    {
        JsonElement cloth = CommandLine.Run([.. Twill, "--json"]).Json;

        // GATE Textile 2009 Q37: g/m² = (n1 t1 (1 + c1) + n2 t2 (1 + c2)) / 10, n per cm; 8/2 cotton is 590.5412 / 4 tex (ASTM D2260-03).
        double tex = 590.5412 / 4;
        double mass = (20 / 2.54 * tex * (1 + Number(cloth, "warpCrimpFraction")) + 18 / 2.54 * tex * (1 + Number(cloth, "weftCrimpFraction"))) / 10;
        // Rounding of the printed factor: 1e-7 of it.
        Assert.Equal(mass, Number(cloth, "gramsPerSquareMetre"), 1e-3);
    }

    [Fact]
    public void Cover_of_the_cloth_follows_from_the_covers_of_warp_and_weft()
    {
        JsonElement cloth = CommandLine.Run([.. Twill, "--json"]).Json;

        (double warp, double weft) = (Number(cloth, "warpCover"), Number(cloth, "weftCover"));
        // GATE Textile 2007: C1 + C2 − C1 C2.
        Assert.Equal(warp + weft - warp * weft, Number(cloth, "coverFraction"), 1e-9);
        Assert.Equal(Number(cloth, "warpDiameterMillimetres") / 25.4 * 20, warp, 1e-9);
        Assert.InRange(Number(cloth, "tightness"), 0.3, 0.7);
        Assert.InRange(Number(cloth, "thicknessMillimetres"), Number(cloth, "warpDiameterMillimetres"), 3 * Number(cloth, "warpDiameterMillimetres"));
    }

    [Fact]
    public void A_satin_shows_its_warp_on_one_side_and_its_weft_on_the_other()
    {
        JsonElement cloth = CommandLine.Run(
            "cloth", "8-end satin", "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--ends", "30/in", "--picks", "30/in",
            "--colour", "#3b7a78", "--weft-colour", "#e86a17", "--json").Json;

        // Where warp and weft cross, the upper one shows: 7 of 8 crossings on one side, 1 of 8 on the other. Beside the weft the warp shows anyway.
        (double warp, double weft) = (Number(cloth, "warpCover"), Number(cloth, "weftCover"));
        Assert.Equal(warp * (1 - weft) + warp * weft * 7 / 8, Number(cloth, "faceWarpFraction"), 1e-9);
        Assert.Equal(warp * (1 - weft) + warp * weft / 8, Number(cloth, "backWarpFraction"), 1e-9);
        Assert.NotEqual(cloth.GetProperty("faceColour").GetString(), cloth.GetProperty("backColour").GetString());
    }

    [Fact]
    public void Left_out_setts_are_the_advised_ones_and_said()
    {
        CommandLine advised = CommandLine.Run("sett", "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--weave", "2/2 twill", "--purpose", "drape", "--json");
        CommandLine cloth = CommandLine.Run("cloth", "2/2 twill", "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--purpose", "drape", "--json");

        Assert.Equal(Number(advised.Json, "recommendedEndsPerCentimetre"), Number(cloth.Json, "endsPerCentimetre"), 1e-9);
        Assert.Contains("No --ends given", cloth.Json.GetProperty("notes")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Counted_on_the_loom_the_washed_cloth_is_closer_and_heavier()
    {
        JsonElement atRest = CommandLine.Run([.. Twill, "--json"]).Json;
        JsonElement washed = CommandLine.Run([.. Twill, "--at", "loom", "--json"]).Json;

        Assert.True(Number(washed, "endsPerCentimetre") > Number(atRest, "endsPerCentimetre"));
        Assert.True(Number(washed, "gramsPerSquareMetre") > Number(atRest, "gramsPerSquareMetre"));
    }

    [Fact]
    public void Of_a_double_cloth_one_layer_is_reckoned_with_its_share_of_the_threads()
    {
        CommandLine run = CommandLine.Run(
            "cloth", "1234 | 1:1 2:123 3:3 4:134 | 1234", "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--ends", "40/in", "--picks", "40/in", "--json");
        CommandLine plain = CommandLine.Run("cloth", "plain", "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--ends", "20/in", "--picks", "20/in", "--json");

        Assert.Equal(Number(plain.Json, "gramsPerSquareMetre"), Number(run.Json, "gramsPerSquareMetre"), 1e-9);
        Assert.Contains("2 layers", run.Json.GetProperty("notes")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_cloths_of_a_worksheet_weigh_what_its_plan_says()
    {
        string scarves = Repository.PathOf("samples", "reedbed-scarves.json");
        JsonElement pieces = CommandLine.Run("cloth", scarves, "--json").Json.GetProperty("pieces");
        JsonElement plan = CommandLine.Run("plan", scarves, "--json").Json.GetProperty("pieces");

        Assert.Equal(plan.GetArrayLength(), pieces.GetArrayLength());
        for (int i = 0; i < pieces.GetArrayLength(); i++) Assert.Equal(Number(plan[i], "gramsPerSquareMetre"), Number(pieces[i], "gramsPerSquareMetre"), 1e-9);
    }

    [Fact]
    public void The_back_of_a_cloth_is_pictured_at_true_size()
    {
        using var folder = new PassingFolder();
        CommandLine run = CommandLine.Run([.. Twill, "--face", "back", "--out", folder.File("back.png")]);

        Assert.Equal(ExitCode.Done, run.ExitCode);
        using SKBitmap picture = SKBitmap.Decode(folder.File("back.png"));
        // 12 cm at 300 dots per inch.
        Assert.Equal(1417, picture.Width);
        Assert.Contains("the back at true size", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_colours_of_a_draft_file_are_those_of_the_cloth()
    {
        using var folder = new PassingFolder();
        File.WriteAllText(folder.File("mud.csv"), "part,number,value,colour\nshafts,,2,\nshed,,rising,\nend,1,1,#102030\nend,2,2,#102030\ntreadle,1,1,\ntreadle,2,2,\npick,1,1,#102030\npick,2,2,#102030\n");
        JsonElement cloth = CommandLine.Run("cloth", folder.File("mud.csv"), "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--ends", "20/in", "--json").Json;

        Assert.Equal("#102030", cloth.GetProperty("faceColour").GetString());
    }

    [Fact]
    public void The_weft_may_be_another_yarn_of_another_system_and_fibre()
    {
        JsonElement cloth = CommandLine.Run([.. Twill, "--weft", "2/28", "--weft-system", "worsted", "--weft-fibre", "merino", "--json"]).Json;

        Assert.Contains("2/28 ", cloth.GetProperty("name").GetString(), StringComparison.Ordinal);
        // ASTM D2260-03: worsted tex = 885.8 / count; 2/28 is two strands of 28s, finer than 8/2 cotton.
        double tex = 885.8119 / 28 * 2;
        double mass = (20 / 2.54 * 590.5412 / 4 * (1 + Number(cloth, "warpCrimpFraction")) + 18 / 2.54 * tex * (1 + Number(cloth, "weftCrimpFraction"))) / 10;
        Assert.Equal(mass, Number(cloth, "gramsPerSquareMetre"), 1e-3);
    }

    [Fact]
    public void A_figure_is_explained_with_its_sources()
    {
        CommandLine run = CommandLine.Run([.. Twill, "--explain", "Thickness"]);

        Assert.StartsWith("thickness = ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Peirce", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--yarn", "Give the warp yarn", "cloth", "plain")]
    [InlineData("--fibre", "--fibre cotton", "cloth", "plain", "--yarn", "400 m / 100 g")]
    [InlineData("--yarn", "--system cotton", "cloth", "plain", "--yarn", "8/2", "--fibre", "cotton")]
    [InlineData("--ends", "", "cloth", "plain", "--yarn", "400 m / 100 g", "--fibre", "cotton", "--ends", "many")]
    [InlineData("--face", "front or back", "cloth", "plain", "--yarn", "400 m / 100 g", "--fibre", "cotton", "--face", "left")]
    [InlineData("--at", "cloth or loom", "cloth", "plain", "--yarn", "400 m / 100 g", "--fibre", "cotton", "--at", "sea")]
    [InlineData("--piece", "1 to 1", "cloth", "plain", "--yarn", "400 m / 100 g", "--fibre", "cotton", "--piece", "2")]
    [InlineData("--explain", "thickness", "cloth", "plain", "--yarn", "400 m / 100 g", "--fibre", "cotton", "--explain", "thicknes")]
    [InlineData("--out", ".png", "cloth", "plain", "--yarn", "400 m / 100 g", "--fibre", "cotton", "--out", "face.bmp")]
    [InlineData("--colour", "#3b7a78", "cloth", "plain", "--yarn", "400 m / 100 g", "--fibre", "cotton", "--colour", "teal")]
    [InlineData("--units", "metric or customary", "cloth", "plain", "--yarn", "400 m / 100 g", "--fibre", "cotton", "--units", "ells")]
    [InlineData("file", "", "cloth", "nowhere.json")]
    public void A_slip_is_named_with_its_place_and_mend(string place, string mend, params string[] args)
    {
        CommandLine run = CommandLine.Run(args);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.StartsWith($"clothwright: {place}: ", run.Error, StringComparison.Ordinal);
        Assert.Contains(mend, run.Error, StringComparison.Ordinal);
    }

    private static double Number(JsonElement json, string name) => json.GetProperty(name).GetDouble();
}
