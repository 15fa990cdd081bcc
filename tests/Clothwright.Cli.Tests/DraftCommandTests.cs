using System.Text.Json;

namespace Clothwright.Cli.Tests;

public class DraftCommandTests
{
    [Fact]
    public void A_made_twill_has_the_size_asked_for()
    {
        CommandLine run = CommandLine.Run("draft", "make", "2/2 twill", "--ends", "10", "--picks", "6", "--json");

        Assert.Equal(10, run.Json.GetProperty("ends").GetInt32());
        Assert.Equal(6, run.Json.GetProperty("picks").GetInt32());
        Assert.Equal("1100110011", run.Json.GetProperty("drawdown")[0].GetString());
    }

    [Fact]
    public void A_two_two_twill_checks_as_the_books_say()
    {
        CommandLine run = CommandLine.Run("draft", "check", "2/2 twill", "--json");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.True(run.Json.GetProperty("hangsTogether").GetBoolean());
        Assert.Equal(1, run.Json.GetProperty("layers").GetInt32());
        Assert.Equal(2, run.Json.GetProperty("maxWarpFloat").GetProperty("face").GetProperty("length").GetInt32());
        Assert.Equal(2, run.Json.GetProperty("maxWeftFloat").GetProperty("back").GetProperty("length").GetInt32());
        Assert.Equal(0.5, run.Json.GetProperty("warpFaceFraction").GetDouble());
    }

    [Fact]
    public void A_cloth_that_falls_apart_fails_its_check()
    {
        // Two plain cloths woven one above the other, each with a shuttle of its own.
        CommandLine run = CommandLine.Run("draft", "check", "1234 | 1:1 2:123 3:3 4:134 | 1234", "--json");

        Assert.Equal(ExitCode.CheckFailed, run.ExitCode);
        Assert.False(run.Json.GetProperty("hangsTogether").GetBoolean());
        Assert.Equal(2, run.Json.GetProperty("layers").GetInt32());
        Assert.NotEqual(0, run.Json.GetProperty("problems").GetArrayLength());
    }

    [Fact]
    public void Overshot_sheds_need_four_treadles_when_two_are_pressed_at_once()
    {
        // The six sheds of overshot: 6 treadles singly, 4 with two feet (worked out by two exact methods).
        CommandLine one = CommandLine.Run("draft", "fit", "overshot", "--shafts", "4", "--treadles", "6", "--json");
        CommandLine two = CommandLine.Run("draft", "fit", "overshot", "--shafts", "4", "--treadles", "4", "--feet", "2", "--json");

        Assert.Equal(6, one.Json.GetProperty("treadles").GetInt32());
        Assert.True(two.Json.GetProperty("feasible").GetBoolean());
        Assert.Equal(4, two.Json.GetProperty("treadles").GetInt32());
        Assert.True(two.Json.GetProperty("optimal").GetBoolean());
    }

    [Fact]
    public void A_draft_that_asks_for_more_shafts_says_why_and_fails()
    {
        CommandLine run = CommandLine.Run("draft", "fit", "2/2 twill", "--shafts", "2", "--treadles", "4");

        Assert.Equal(ExitCode.CheckFailed, run.ExitCode);
        Assert.Contains("because it needs 4", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_goes_through_wif_and_comes_back_the_same()
    {
        using var folder = new PassingFolder();
        string wif = folder.File("goose.wif");
        CommandLine made = CommandLine.Run("draft", "make", "goose-eye", "--out", wif, "--json");
        CommandLine read = CommandLine.Run("draft", "check", wif, "--json");

        Assert.Equal(ExitCode.Done, made.ExitCode);
        Assert.Equal(made.Json.GetProperty("drawdown").ToString(), read.Json.GetProperty("drawdown").ToString());
    }

    [Theory]
    [InlineData(".txt")]
    [InlineData(".csv")]
    [InlineData(".svg")]
    [InlineData(".png")]
    public void A_draft_is_written_in_every_form(string ending)
    {
        using var folder = new PassingFolder();
        CommandLine run = CommandLine.Run("draft", "make", "rosepath", "--out", folder.File("rosepath" + ending));

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.NotEqual(0, new FileInfo(folder.File("rosepath" + ending)).Length);
    }

    [Fact]
    public void A_file_that_is_no_draft_is_refused_and_nothing_is_written()
    {
        using var folder = new PassingFolder();
        File.WriteAllBytes(folder.File("noise.wif"), [.. Enumerable.Range(0, 10_000_000).Select(i => (byte)(i * 31 ^ i >> 7))]);
        CommandLine run = CommandLine.Run("draft", "convert", folder.File("noise.wif"), folder.File("out.svg"));

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Single(Directory.GetFiles(folder.Path));
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_weave_of_the_list_can_be_made_by_its_name()
    {
        CommandLine list = CommandLine.Run("draft", "make", "--list", "--json");
        string text = CommandLine.Run("draft", "make", "--list").Output;

        foreach (JsonElement weave in list.Json.GetProperty("weaves").EnumerateArray())
        {
            string name = weave.GetProperty("name").GetString()!;
            Assert.Contains($"  {name}: ", text, StringComparison.Ordinal);
            Assert.True(CommandLine.Run("draft", "make", name).ExitCode == ExitCode.Done, name);
        }
    }

    [Fact]
    public void A_choice_of_the_weave_changes_it()
    {
        CommandLine usual = CommandLine.Run("draft", "make", "goose-eye", "--json");
        CommandLine longer = CommandLine.Run("draft", "make", "goose-eye", "--with", "runs=3", "--json");

        Assert.True(longer.Json.GetProperty("repeatEnds").GetInt32() > usual.Json.GetProperty("repeatEnds").GetInt32());
    }

    [Theory]
    [InlineData("weave", "draft", "make")]
    [InlineData("--with", "draft", "make", "goose-eye", "--with", "three")]
    [InlineData("--construction", "sett", "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--weave", "plain", "--construction", "knitted")]
    [InlineData("--paper", "plan", "x.json", "--paper", "vellum")]
    [InlineData("--burns", "yarn", "identify", "--length", "10m", "--mass", "1g", "--burns", "loudly")]
    [InlineData("file", "draft", "check", "nowhere.wif")]
    public void What_is_not_known_is_named_with_its_place(string place, params string[] args)
    {
        CommandLine run = CommandLine.Run(args);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith($"clothwright: {place}: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_profile_in_a_file_fills_the_blocks_of_a_weave()
    {
        using var folder = new PassingFolder();
        File.WriteAllText(folder.File("profile.txt"), "0110\n1001\n0000\n");
        CommandLine made = CommandLine.Run("draft", "make", "summer and winter", "--profile", folder.File("profile.txt"), "--json");

        // Two blocks on two tie-downs; four units of four ends, three lines of four picks. The first line is the lowest.
        Assert.Equal((16, 12, 4), (made.Json.GetProperty("ends").GetInt32(), made.Json.GetProperty("picks").GetInt32(), made.Json.GetProperty("shafts").GetInt32()));
    }

    [Fact]
    public void Clasped_yarns_are_pictured_as_areas()
    {
        using var folder = new PassingFolder();
        CommandLine made = CommandLine.Run("draft", "make", "clasped warp", "--ends", "12", "--picks", "20", "--out", folder.File("areas.svg"));

        Assert.Contains("end 1: first yarn over", made.Output, StringComparison.Ordinal);
        Assert.Equal(2, File.ReadAllText(folder.File("areas.svg")).Split("class=\"warp\"").Length - 1);
    }
}
