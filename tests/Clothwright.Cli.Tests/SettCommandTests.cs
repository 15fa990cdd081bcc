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
    [InlineData("--weave", "2/2 twil", "Did you mean 2/2 twill?")]
    [InlineData("--weft-system", "worstid", "worsted")]
    [InlineData("--weft-strands", "0", "1 to 12")]
    [InlineData("--layers", "9", "double width")]
    [InlineData("--width", "wide", "--width")]
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

    // 20/2 worsted is 88.58 tex and 20/2 cotton 59.05 (ASTM D2260); a thicker weft leaves less room between the ends.
    [Fact]
    public void A_weft_of_another_count_system_takes_the_room_of_its_own_thickness()
    {
        double Most(params string[] more) => CommandLine
            .Run(["sett", "--yarn", "20/2", "--system", "cotton", "--fibre", "cotton", "--weave", "plain", "--json", .. more])
            .Json.GetProperty("maximumEndsPerCentimetre").GetDouble();

        double alike = Most();
        double worsted = Most("--weft", "20/2", "--weft-system", "worsted", "--weft-fibre", "wool-worsted");

        // Ashenhurst, unlike yarns: 1 ÷ (d1 + d2), d by √tex and K 0.92 and 0.90.
        Assert.Equal(2 / (1 + Math.Sqrt(885.812 / 590.541) * 0.92 / 0.90), worsted / alike, 1e-4);
        Assert.Equal(2 / (1 + Math.Sqrt(2)), Most("--weft-strands", "2") / alike, 1e-9);
    }

    // Common practice, no source: fingering wool on two 10-dent heddles, double width.
    [Fact]
    public void Double_width_on_two_heddles_is_told_for_one_layer_and_for_the_loom()
    {
        CommandLine run = CommandLine.Run(
            "sett", "--yarn", "400 m / 100 g", "--fibre", "wool-worsted", "--construction", "soft", "--weave", "plain", "--purpose", "drape", "--layers", "2", "--heddles", "10,10");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Contains("2 × 10", run.Output, StringComparison.Ordinal);
        Assert.Contains("gives  20.0 per inch", run.Output, StringComparison.Ordinal);
        Assert.Contains("2 layers share the reed", run.Output, StringComparison.Ordinal);
    }
}
