using System.Text.Json;

namespace Clothwright.Cli.Tests;

public class DraftFitCommandTests
{
    [Fact]
    public void A_twill_goes_on_three_rigid_heddles_without_a_stick()
    {
        // k heddles hold k kinds of ends in their eyes and one more in slots throughout: four kinds take three heddles.
        CommandLine run = CommandLine.Run("draft", "fit", "2/2 twill", "--rigid-heddles", "3", "--json");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.True(run.Json.GetProperty("feasible").GetBoolean());
        Assert.Equal(0, run.Json.GetProperty("sticks").GetArrayLength());
        Assert.Equal([1, 2, 3, 4], run.Json.GetProperty("groups").EnumerateArray().Select(g => g.GetInt32()).Order());
        Assert.All(run.Json.GetProperty("picks").EnumerateArray(), p => Assert.Equal(3, p.GetProperty("positions").GetArrayLength()));
    }

    [Fact]
    public void On_one_heddle_it_takes_sticks_and_says_how_many()
    {
        CommandLine without = CommandLine.Run("draft", "fit", "2/2 twill", "--rigid-heddles", "1");
        CommandLine with = CommandLine.Run("draft", "fit", "2/2 twill", "--rigid-heddles", "1", "--sticks", "4", "--json");

        Assert.Equal(ExitCode.CheckFailed, without.ExitCode);
        Assert.Contains("pick-up sticks", without.Output.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, with.ExitCode);
        Assert.NotEqual(0, with.Json.GetProperty("sticks").GetArrayLength());
    }

    [Theory]
    [InlineData("--rigid-heddles", "2")]
    [InlineData("--shafts", "3", "--treadles", "0")]
    public void What_must_change_to_weave_it_is_told_and_written(params string[] loom)
    {
        using var folder = new PassingFolder();
        CommandLine run = CommandLine.Run(["draft", "fit", "rosepath", .. loom, "--changed", folder.File("changed.wif"), "--json"]);
        JsonElement change = run.Json.GetProperty("smallestChange");

        // Rosepath has four kinds of ends; the fewest of a kind, one end, must go.
        Assert.Equal(ExitCode.CheckFailed, run.ExitCode);
        Assert.Equal(2, change.GetProperty("ends").GetArrayLength());
        Assert.True(change.GetProperty("proved").GetBoolean());
        Assert.Equal(ExitCode.Done, CommandLine.Run(["draft", "fit", folder.File("changed.wif"), .. loom]).ExitCode);
    }

    [Fact]
    public void What_the_loom_cannot_weave_is_shown_after_the_change_that_would_do()
    {
        CommandLine run = CommandLine.Run("draft", "fit", "rosepath", "--shafts", "3", "--treadles", "0");

        // The threading is drawn from the last shaft down: now it is shaft 3.
        string[] after = run.Output[run.Output.IndexOf("After that change:", StringComparison.Ordinal)..].Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains('3', after[1]);
        Assert.DoesNotContain('4', after[1]);
    }

    [Fact]
    public void The_table_tells_the_hole_of_every_end()
    {
        CommandLine text = CommandLine.Run("draft", "fit", "2/2 twill", "--rigid-heddles", "3", "--heddle", "10-dent");
        CommandLine json = CommandLine.Run("draft", "fit", "2/2 twill", "--rigid-heddles", "3", "--heddle", "10-dent", "--sett", "15/in", "--json");

        Assert.Contains("end 4: heddle 1 ", text.Output, StringComparison.Ordinal);
        Assert.Contains("pick 4: ", text.Output, StringComparison.Ordinal);
        Assert.Equal(4, json.Json.GetProperty("holes").GetArrayLength());
        Assert.Equal(15 / 2.54, json.Json.GetProperty("endsPerCentimetre").GetDouble(), 1e-9);
    }

    [Fact]
    public void The_solver_proves_what_the_quick_search_proves()
    {
        CommandLine run = CommandLine.Run("draft", "fit", "overshot", "--shafts", "4", "--treadles", "4", "--feet", "2", "--seconds", "5", "--json");

        Assert.True(run.Json.GetProperty("optimal").GetBoolean());
        Assert.Equal(4, run.Json.GetProperty("treadles").GetInt32());
    }

    [Fact]
    public void What_time_did_not_suffice_to_prove_is_said_to_be_unproved()
    {
        // Forty lifts of twelve shafts without order: neither a fit on 30 treadles nor its impossibility is found quickly.
        var random = new Random(5);
        string cloth = string.Join('\n', Enumerable.Range(0, 40).Select(_ => string.Concat(Enumerable.Range(0, 12).Select(_ => random.Next(2)))));
        using var folder = new PassingFolder();
        File.WriteAllText(folder.File("drift.txt"), cloth);
        string[] args = ["draft", "fit", folder.File("drift.txt"), "--shafts", "16", "--treadles", "30", "--feet", "2", "--seconds", "0.5"];
        CommandLine text = CommandLine.Run(args);
        CommandLine wide = CommandLine.Run([.. args[..6], "40", .. args[7..]]);

        Assert.Equal(ExitCode.CheckFailed, text.ExitCode);
        Assert.StartsWith("No way was found to weave it on this loom; not proved that there is none (0.5 s were not enough).", text.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, wide.ExitCode);
        Assert.Contains("not proved that fewer than", wide.Output, StringComparison.Ordinal);
        Assert.False(CommandLine.Run([.. args, "--json"]).Json.GetProperty("provedImpossible").GetBoolean());
    }

    [Fact]
    public void Too_few_shafts_are_proved_to_be_too_few() =>
        Assert.True(CommandLine.Run("draft", "fit", "2/2 twill", "--shafts", "2", "--treadles", "4", "--json").Json.GetProperty("provedImpossible").GetBoolean());

    [Fact]
    public void The_treadling_weaves_the_lift_plan()
    {
        JsonElement fit = CommandLine.Run("draft", "fit", "rosepath", "--shafts", "4", "--treadles", "6", "--json").Json;

        string[] ties = [.. fit.GetProperty("tieUp").EnumerateArray().Select(t => t.GetString()!)];
        Assert.NotEmpty(ties);
        Assert.Equal(fit.GetProperty("treadling").GetArrayLength(), fit.GetProperty("liftPlan").GetArrayLength());
    }

    [Fact]
    public void A_fitted_draft_is_written_and_weaves_the_same_cloth()
    {
        using var folder = new PassingFolder();
        CommandLine.Run("draft", "fit", "rosepath", "--shafts", "4", "--treadles", "6", "--out", folder.File("fitted.wif"));

        Assert.Equal(
            CommandLine.Run("draft", "check", "rosepath", "--json").Json.GetProperty("drawdown").ToString(),
            CommandLine.Run("draft", "check", folder.File("fitted.wif"), "--json").Json.GetProperty("drawdown").ToString());
    }

    [Theory]
    [InlineData("--shafts")]
    [InlineData("--treadles", "--shafts", "4")]
    [InlineData("--seconds", "--shafts", "4", "--treadles", "6", "--seconds", "0")]
    [InlineData("--seconds", "--shafts", "4", "--treadles", "6", "--seconds", "NaN")]
    [InlineData("--shed", "--shafts", "4", "--treadles", "6", "--shed", "sideways")]
    [InlineData("--rigid-heddles", "--rigid-heddles", "7")]
    [InlineData("--sticks", "--rigid-heddles", "1", "--sticks", "-1")]
    [InlineData("--heddle", "--rigid-heddles", "3", "--heddle", "coarse")]
    [InlineData("--sett", "--rigid-heddles", "3", "--heddle", "10", "--sett", "tight")]
    public void A_slip_is_named_with_its_option(string place, params string[] options)
    {
        CommandLine run = CommandLine.Run(["draft", "fit", "2/2 twill", .. options]);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith($"clothwright: {place}", run.Error, StringComparison.Ordinal);
    }
}
