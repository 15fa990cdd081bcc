using System.Text.Json;

namespace Clothwright.Cli.Tests;

public class YarnCommandTests
{
    [Fact]
    public void Eight_two_cotton_converts_as_the_standard_says()
    {
        CommandLine run = CommandLine.Run("yarn", "convert", "8/2", "--system", "cotton", "--json");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        // 8/2 cotton: 4 hanks of 840 yards in a pound; ASTM D2260-03(2013) factor 590.5412 / 4.
        Assert.Equal(147.635, run.Json.GetProperty("tex").GetDouble(), 0.001);
        Assert.Equal(3360, run.Json.GetProperty("yardsPerPound").GetDouble(), 0.001);
        Assert.Equal(6, run.Json.GetProperty("resultantCounts").GetProperty("worsted").GetDouble(), 0.0001);
    }

    [Fact]
    public void Other_readings_of_eight_two_are_listed_with_their_lengths()
    {
        CommandLine run = CommandLine.Run("yarn", "convert", "8/2", "--system", "cotton", "--json");

        Dictionary<string, double> readings = run.Json.GetProperty("otherReadings").EnumerateArray()
            .ToDictionary(r => r.GetProperty("system").GetString()!, r => r.GetProperty("yardsPerPound").GetDouble());
        // The table of one label read in many systems: 2,240 worsted, 1,984 metric, 1,200 linen, 6,720 English spun silk.
        Assert.Equal(2240, readings["worsted"], 0.5);
        Assert.Equal(1984, readings["metric"], 0.5);
        Assert.Equal(1200, readings["linen"], 0.5);
        Assert.Equal(6720, readings["silk-english"], 0.5);
    }

    [Fact]
    public void A_count_without_system_is_answered_with_a_question()
    {
        CommandLine run = CommandLine.Run("yarn", "convert", "8/2");

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains("does not say its count system", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_needs_no_system()
    {
        CommandLine run = CommandLine.Run("yarn", "convert", "400 m / 100 g", "--json");

        Assert.Equal(250, run.Json.GetProperty("tex").GetDouble(), 1e-9);
    }

    [Fact]
    public void A_yarn_that_lost_its_label_is_found_by_length_and_mass()
    {
        CommandLine run = CommandLine.Run("yarn", "identify", "--length", "5 m", "--mass", "0.59 g", "--feels", "soft-dull", "--json");

        // 0.59 g in 5 m is 118 tex; 10/2 cotton is 118.11 by rule.
        Assert.Equal(118, run.Json.GetProperty("tex").GetDouble(), 0.001);
        JsonElement first = run.Json.GetProperty("readings")[0];
        Assert.Equal("10/2", first.GetProperty("count").GetString());
        Assert.Equal("cotton", first.GetProperty("fibre").GetString());
    }

    [Theory]
    [InlineData("--length", "ten metres", "--mass", "1 g")]
    [InlineData("--length", "-3 m", "--mass", "1 g")]
    [InlineData("--length", "10 m", "--mass", "0 g")]
    [InlineData("--length", "10 m", "--mass", "1 g", "--wraps-per-inch", "0")]
    public void Bad_measures_are_refused_with_a_mend(params string[] args)
    {
        CommandLine run = CommandLine.Run(["yarn", "identify", .. args]);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.True(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length >= 2, run.Error);
    }
}
