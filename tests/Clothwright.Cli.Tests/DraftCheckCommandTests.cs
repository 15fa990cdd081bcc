using System.Text.Json;

namespace Clothwright.Cli.Tests;

public class DraftCheckCommandTests
{
    [Fact]
    public void Floats_are_told_in_millimetres_at_the_sett()
    {
        JsonElement check = CommandLine.Run("draft", "check", "2/2 twill", "--sett", "20/in", "--picks", "10/in", "--json").Json;

        // Two picks at 10 per inch are 5.08 mm, two ends at 20 per inch half of it.
        Assert.Equal(5.08, check.GetProperty("maxWarpFloat").GetProperty("face").GetProperty("millimetres").GetDouble(), 1e-9);
        Assert.Equal(2.54, check.GetProperty("maxWeftFloat").GetProperty("back").GetProperty("millimetres").GetDouble(), 1e-9);
    }

    [Fact]
    public void A_float_over_the_edge_of_the_repeat_is_placed_in_the_next() =>
        Assert.Contains("end 1, over picks 4 to 1 of the next repeat", CommandLine.Run("draft", "check", "2/2 twill").Output, StringComparison.Ordinal);

    [Theory]
    [InlineData("scarf", ExitCode.Done)]
    [InlineData("bag", ExitCode.CheckFailed)]
    public void The_same_floats_do_for_a_scarf_and_are_too_long_for_a_bag(string purpose, int exitCode)
    {
        // Four ends at 12 per inch: 8.5 mm.
        CommandLine run = CommandLine.Run("draft", "check", "1111222233334444 | 1:12 2:23 3:34 4:14 | 1234", "--purpose", purpose, "--sett", "24/in", "--json");
        double longest = run.Json.GetProperty("maxWeftFloat").GetProperty("face").GetProperty("millimetres").GetDouble();

        Assert.Equal(8 * 25.4 / 24, longest, 1e-9);
        Assert.Equal(exitCode == ExitCode.Done, run.Json.GetProperty("floatAdvice").GetProperty("fine").GetBoolean());
        Assert.Equal(exitCode, run.ExitCode);
    }

    [Fact]
    public void For_a_small_child_the_strictest_rule_holds_and_a_caution_is_given()
    {
        CommandLine run = CommandLine.Run("draft", "check", "8-end satin", "--purpose", "throw", "--child", "--sett", "20/in");

        Assert.Equal(ExitCode.CheckFailed, run.ExitCode);
        Assert.Contains("Too long: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Caution: A small child", run.Output, StringComparison.Ordinal);
        Assert.Contains("where you live", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Heddles_are_counted_over_the_whole_warp()
    {
        CommandLine enough = CommandLine.Run("draft", "check", "2/2 twill", "--ends", "200", "--heddles-per-shaft", "50", "--json");
        CommandLine few = CommandLine.Run("draft", "check", "2/2 twill", "--ends", "200", "--heddles-per-shaft", "49", "--json");

        Assert.Equal(200, enough.Json.GetProperty("heddles").GetInt32());
        Assert.Equal(ExitCode.Done, enough.ExitCode);
        Assert.Equal(ExitCode.CheckFailed, few.ExitCode);
        Assert.Equal(4, few.Json.GetProperty("problems").GetArrayLength());
    }

    [Fact]
    public void A_stripe_that_hardly_interlaces_is_advised_a_beam_of_its_own()
    {
        // Forty ends of plain weave beside forty that change face once in eight picks.
        string plain = string.Concat(Enumerable.Repeat("12", 20));
        string floats = string.Concat(Enumerable.Repeat("34", 20));
        CommandLine run = CommandLine.Run("draft", "check", $"{plain}{floats} | 1:13 2:23 3:14 4:24 | 1212121234343434", "--json");

        Assert.True(run.Json.GetProperty("takeUpRatio").GetDouble() > 1.6, run.Output);
        Assert.True(run.Json.GetProperty("needsSecondBeam").GetBoolean());
    }

    [Fact]
    public void Edges_that_no_start_catches_are_advised_a_floating_selvedge()
    {
        CommandLine run = CommandLine.Run("draft", "check", "1122 | 1:1 2:2 | 1122");

        Assert.Contains("floating selvedge", run.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Interlacing_firmness_repeat_and_symmetry_are_told()
    {
        JsonElement twill = CommandLine.Run("draft", "check", "2/2 twill", "--ends", "12", "--json").Json;

        // 2/2 twill changes face twice in four threads either way: once a crossing, half as often as plain weave.
        Assert.Equal(1, twill.GetProperty("crossingOverFirmness").GetDouble());
        Assert.All(twill.GetProperty("changesPerEnd").EnumerateArray(), c => Assert.Equal(2, c.GetInt32()));
        Assert.Equal(2, twill.GetProperty("meanPickFloat").GetDouble());
        Assert.Equal((4, 4), (twill.GetProperty("repeatEnds").GetInt32(), twill.GetProperty("repeatPicks").GetInt32()));
        Assert.Contains("warp and weft change places", twill.GetProperty("symmetries").EnumerateArray().Select(s => s.GetString()));
        Assert.Contains("Symmetry     left and right alike", CommandLine.Run("draft", "check", "rosepath").Output, StringComparison.Ordinal);
        Assert.Contains("none but the repeat", CommandLine.Run("draft", "check", "12341 | 1:12 2:3 3:134 4:2 | 112334").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tube", ExitCode.Done)]
    [InlineData("double width", ExitCode.Done)]
    [InlineData("1234 | 1:1 2:123 3:3 4:134 | 1234", ExitCode.CheckFailed)]
    [InlineData("1234 | 1:1 2:123 3:3 4:134 | 1234", ExitCode.Done, "--layers", "2")]
    [InlineData("tube", ExitCode.CheckFailed, "--layers", "1")]
    [InlineData("2/2 twill", ExitCode.CheckFailed, "--layers", "2")]
    public void Layers_that_are_meant_are_no_fault(string draft, int exitCode, params string[] options)
    {
        CommandLine run = CommandLine.Run(["draft", "check", draft, .. options, "--json"]);

        Assert.Equal(exitCode, run.ExitCode);
        Assert.Equal(exitCode == ExitCode.Done, run.Json.GetProperty("problems").GetArrayLength() == 0);
    }

    [Fact]
    public void Floating_selvedges_catch_what_pulls_out()
    {
        Assert.Equal(ExitCode.CheckFailed, CommandLine.Run("draft", "check", "basket").ExitCode);
        Assert.Equal(ExitCode.Done, CommandLine.Run("draft", "check", "basket", "--floating-selvedges").ExitCode);
    }

    [Fact]
    public void The_picture_marks_what_was_found()
    {
        using var folder = new PassingFolder();
        CommandLine.Run("draft", "check", "8-end satin", "--mark-floats", "7", "--out", folder.File("satin.svg"));
        CommandLine.Run("draft", "check", "8-end satin", "--purpose", "bag", "--sett", "20/in", "--out", folder.File("bag.svg"));

        Assert.Contains("over 7 threads or more", File.ReadAllText(folder.File("satin.svg")), StringComparison.Ordinal);
        Assert.Contains("longer than 0.8 cm", File.ReadAllText(folder.File("bag.svg")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("draft.svg")]
    [InlineData("draft.png")]
    public void The_checked_draft_is_pictured(string name)
    {
        using var folder = new PassingFolder();
        CommandLine run = CommandLine.Run("draft", "check", "rosepath", "--out", folder.File(name));

        Assert.NotEqual(0, new FileInfo(folder.File(name)).Length);
        Assert.Contains("Wrote ", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--purpose", "--purpose", "hammock", "--sett", "20/in")]
    [InlineData("--sett", "--purpose", "scarf")]
    [InlineData("--sett", "--child")]
    [InlineData("--sett", "--picks", "20/in")]
    [InlineData("--sett", "--sett", "0/in")]
    [InlineData("--ends", "--ends", "0")]
    [InlineData("--heddles-per-shaft", "--heddles-per-shaft", "0")]
    [InlineData("--layers", "--layers", "0")]
    [InlineData("--mark-floats", "--mark-floats", "1", "--out", "draft.svg")]
    [InlineData("--out", "--out", "draft.wif")]
    public void A_slip_is_named_with_its_option(string place, params string[] options)
    {
        CommandLine run = CommandLine.Run(["draft", "check", "2/2 twill", .. options]);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith($"clothwright: {place}", run.Error, StringComparison.Ordinal);
    }
}
