using System.Text.Json;

namespace Clothwright.Cli.Tests;

public class SettCommandTests
{
    [Theory]
    // Common practice, no source: 8/2 bamboo viscose, lyocell or cotton twill scarves are set at about 20 ends per inch,
    // a patterned twill scarf of 60/2 silk at about 40.
    [InlineData("8/2", "cotton", "bamboo-viscose", 20)]
    [InlineData("8/2", "cotton", "lyocell", 20)]
    [InlineData("8/2", "cotton", "cotton", 20)]
    [InlineData("60/2", "metric", "silk-spun", 40)]
    public void The_range_for_a_twill_scarf_holds_the_customary_sett(string count, string system, string fibre, double endsPerInch)
    {
        CommandLine run = CommandLine.Run("sett", "--yarn", count, "--system", system, "--fibre", fibre, "--weave", "2/2 twill", "--purpose", "drape", "--json");

        JsonElement range = run.Json.GetProperty("range");
        Assert.InRange(endsPerInch, range.GetProperty("lowEndsPerInch").GetDouble(), range.GetProperty("highEndsPerInch").GetDouble());
    }

    [Fact]
    public void Three_published_methods_stand_side_by_side()
    {
        CommandLine run = CommandLine.Run("sett", "--yarn", "8/2", "--system", "cotton", "--fibre", "cotton", "--weave", "plain", "--reeds", "8,10,12", "--json");

        string[] methods = [.. run.Json.GetProperty("methods").EnumerateArray().Select(m => m.GetProperty("name").GetString()!)];
        Assert.Contains(methods, m => m.Contains("Ashenhurst", StringComparison.Ordinal));
        Assert.Contains(methods, m => m.Contains("Peirce", StringComparison.Ordinal));
        Assert.Contains(methods, m => m.Contains("Brierley", StringComparison.Ordinal));
        Assert.Equal(3, run.Json.GetProperty("reeds").GetArrayLength());
    }

    [Theory]
    [InlineData("--fibre", "bambo", "Did you mean bamboo?")]
    [InlineData("--weave", "2/2 twil", "twill")]
    [InlineData("--purpose", "cosy", "drape")]
    [InlineData("--reeds", "ten", "10-dent")]
    public void A_slip_is_answered_with_what_was_likely_meant(string option, string slip, string mend)
    {
        var options = new Dictionary<string, string> { ["--yarn"] = "8/2", ["--system"] = "cotton", ["--fibre"] = "cotton", ["--weave"] = "plain", ["--purpose"] = "drape" };
        options[option] = slip;
        CommandLine run = CommandLine.Run(["sett", .. options.SelectMany(o => new[] { o.Key, o.Value })]);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains(option, run.Error, StringComparison.Ordinal);
        Assert.Contains(mend, run.Error, StringComparison.Ordinal);
    }
}
