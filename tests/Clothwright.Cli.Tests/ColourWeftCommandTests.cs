using System.Text.Json;
using Clothwright.Core.Colours;
using Clothwright.TestKit;

namespace Clothwright.Cli.Tests;

public class ColourWeftCommandTests
{
    private static readonly string Scarves = Repository.PathOf("samples", "reedbed-scarves.json");

    [Fact]
    public void Wefts_for_a_colour_stand_in_the_order_of_their_distance_when_nothing_else_speaks()
    {
        CommandLine run = CommandLine.Run("colour", "weft", Scarves, "--aim", "#2f5f77", "--json");
        JsonElement[] proposals = [.. run.Json.GetProperty("proposals").EnumerateArray()];

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Equal("tide-blue", proposals[0].GetProperty("yarns")[0].GetString());
        // Weft and warp of one colour give that colour, whatever the weave: light averaged by area.
        Assert.Equal(0, proposals[0].GetProperty("faceDeltaE2000").GetDouble(), 0.5);
        Assert.True(proposals[^1].GetProperty("faceDeltaE2000").GetDouble() > proposals[0].GetProperty("faceDeltaE2000").GetDouble());
    }

    [Fact]
    public void The_present_weft_is_among_them_with_the_colour_that_the_cloth_command_gives()
    {
        JsonElement present = CommandLine.Run("colour", "weft", Scarves, "--json").Json.GetProperty("proposals").EnumerateArray().Single(p => p.GetProperty("presentWeft").GetBoolean());

        Assert.Equal(CommandLine.Run("cloth", Scarves, "--json").Json.GetProperty("faceColour").GetString(), present.GetProperty("faceColour").GetString());
    }

    [Fact]
    public void Two_yarns_in_turn_fuse_between_the_two()
    {
        CommandLine run = CommandLine.Run("colour", "weft", Scarves, "--aim", "#4a6a70", "--pairs", "--most", "20", "--json");
        JsonElement[] proposals = [.. run.Json.GetProperty("proposals").EnumerateArray()];
        JsonElement pair = proposals.First(p => p.GetProperty("yarns").GetArrayLength() == 2);
        double[] lightness = [.. pair.GetProperty("yarns").EnumerateArray()
            .Select(y => proposals.First(p => p.GetProperty("yarns").GetArrayLength() == 1 && p.GetProperty("yarns")[0].GetString() == y.GetString()))
            .Append(pair)
            .Select(p => CieLab.From(SrgbColour.Parse(p.GetProperty("faceColour").GetString()!).Value).L)];

        Assert.InRange(lightness[2], lightness[..2].Min() - 0.5, lightness[..2].Max() + 0.5);
    }

    [Theory]
    [InlineData("--aim", "blue")]
    [InlineData("--piece", "9")]
    [InlineData("--most", "0")]
    public void What_cannot_be_asked_is_refused_by_name(string option, string value)
    {
        CommandLine run = CommandLine.Run("colour", "weft", Scarves, option, value);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains(option, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gradient")]
    [InlineData("summing")]
    [InlineData("even")]
    [InlineData("lot")]
    public void Stripes_fill_the_threads(string manner)
    {
        JsonElement stripes = CommandLine.Run("colour", "stripes", manner, "--threads", "97", "--yarns", "3", "--json").Json;

        Assert.Equal(97, stripes.GetProperty("counts").EnumerateArray().Sum(c => c.GetInt32()));
    }

    [Theory]
    [InlineData("zigzag", "--threads", "10", "manner")]
    [InlineData("lot", "--least", "0", "--least")]
    [InlineData("even", "--yarns", "1", "--yarns")]
    public void Stripes_that_cannot_be_laid_are_refused_by_name(string manner, string option, string value, string named)
    {
        CommandLine run = CommandLine.Run("colour", "stripes", manner, option, value);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains(named, run.Error, StringComparison.Ordinal);
    }
}
