using System.Text.Json.Nodes;
using Clothwright.TestKit;

namespace Clothwright.Cli.Tests;

public class CountCommandTests
{
    private static readonly string Photo = Repository.PathOf("samples", "photographs", "tide-line-swatch.jpg");

    [Fact]
    public void A_count_as_json_holds_the_fields_that_programs_rely_on()
    {
        CommandLine run = CommandLine.Run("count", Photo, "--scale", "50mm=500px", "--json");
        JsonNode json = JsonNode.Parse(run.Output)!;
        // The swatch was painted with 9 ends and 7.5 picks in a centimetre; 2 % is half a thread in 25.
        Assert.Equal(9, (double)json["endsPerCentimetre"]!, 0.18);
        Assert.Equal(7.5, (double)json["picksPerCentimetre"]!, 0.15);
        Assert.Equal(-3, (double)json["angleDegrees"]!["ends"]!, 0.75);
        Assert.Equal("sure", (string)json["sure"]!);
        Assert.InRange((double)json["spread"]!["endsPerCentimetreDeviation"]!, 0.01, 0.3);
        Assert.Empty(json["questions"]!.AsArray());
        Assert.NotNull(json["ends"]!["working"]);
    }

    [Fact]
    public void A_warp_across_the_picture_exchanges_ends_and_picks()
    {
        JsonNode json = JsonNode.Parse(CommandLine.Run("count", Photo, "--scale", "50mm=500px", "--warp", "across", "--area", "80,80 560,560", "--json").Output)!;
        Assert.Equal(7.5, (double)json["endsPerCentimetre"]!, 0.15);
    }

    [Theory]
    [InlineData("--scale", "--units", "metric")]
    [InlineData("--scale", "--scale", "wide")]
    [InlineData("--scale", "--scale", "50mm=500px", "--card", "0,0 1,0 1,1 0,1")]
    [InlineData("--card", "--card", "0,0 10,0")]
    [InlineData("--warp", "--scale", "50mm=500px", "--warp", "askew")]
    [InlineData("--area", "--scale", "50mm=500px", "--area", "somewhere")]
    [InlineData("--piece", "--scale", "50mm=500px", "--piece", "1,1", "--wraps", "1,1 2,2")]
    public void What_cannot_be_used_is_told_where_it_was_typed(string where, params string[] options)
    {
        CommandLine run = CommandLine.Run(["count", Photo, .. options]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(where, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_photograph_is_refused()
    {
        CommandLine run = CommandLine.Run("count", Repository.PathOf("samples", "heron-shawl.json"), "--scale", "50mm=500px");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("not a picture", run.Error, StringComparison.Ordinal);
    }
}
