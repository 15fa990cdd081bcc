using System.Text.Json;

namespace Clothwright.Cli.Tests;

public class YarnCompareCommandTests
{
    [Fact]
    public void Equal_counts_of_unlike_fibres_differ_and_it_is_said_in_what()
    {
        CommandLine run = CommandLine.Run("yarn", "compare", "8/2", "--system", "cotton", "--fibres", "bamboo,lyocell,cotton,wool", "--json");

        Assert.Equal(4, run.Json.GetProperty("fibres").GetArrayLength());
        JsonElement[] differences = [.. run.Json.GetProperty("differences").EnumerateArray()];
        foreach (string fibre in run.Json.GetProperty("fibres").EnumerateArray().Skip(1).Select(f => f.GetString()!))
        {
            Assert.Contains(differences, d => d.GetProperty("fibre").GetString() == fibre && d.GetProperty("matters").GetBoolean());
        }

        // Common practice, no source: wool felts, the others do not.
        Assert.Contains(differences, d => d.GetProperty("topic").GetString() == "Felting" && d.GetProperty("matters").GetBoolean());
        Assert.All(run.Json.GetProperty("properties").EnumerateArray(), p => Assert.Equal(0, p.GetProperty("differenceFractions")[0].GetDouble()));
    }

    [Fact]
    public void The_table_has_a_column_for_each_fibre_and_lines_that_fit_a_page()
    {
        CommandLine run = CommandLine.Run("yarn", "compare", "8/2", "--system", "cotton", "--fibres", "cotton,lyocell");

        Assert.Contains("lyocell against cotton:", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    [Theory]
    [InlineData("--fibres", "cotton")]
    [InlineData("--fibres", "cotton,cotton")]
    [InlineData("--fibres", "cotton,mist")]
    public void Fibres_that_cannot_be_compared_are_refused(string place, string fibres)
    {
        CommandLine run = CommandLine.Run("yarn", "compare", "8/2", "--system", "cotton", "--fibres", fibres);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith($"clothwright: {place}: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_count_written_the_other_way_round_is_read_with_a_remark()
    {
        CommandLine run = CommandLine.Run("yarn", "convert", "2/60", "--system", "cotton", "--json");

        Assert.Contains("Read as 2 strands of 60", run.Json.GetProperty("remark").GetString(), StringComparison.Ordinal);
        Assert.Contains("Read as 2 strands of 60", CommandLine.Run("yarn", "convert", "2/60", "--system", "cotton").Output, StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, CommandLine.Run("yarn", "convert", "60/2", "--system", "cotton", "--json").Json.GetProperty("remark").ValueKind);
    }
}
