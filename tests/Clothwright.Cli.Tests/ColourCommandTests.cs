namespace Clothwright.Cli.Tests;

public class ColourCommandTests
{
    [Fact]
    public void Difference_of_two_colours_has_the_promised_fields()
    {
        CommandLine run = CommandLine.Run("colour", "difference", "#5b2a86", "#e86a17", "--json");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        // The same pair stands in the table of published colours as D01.
        Assert.Equal(54.315, run.Json.GetProperty("deltaE2000").GetDouble(), 0.001);
        Assert.Equal(110.497, run.Json.GetProperty("deltaE76").GetDouble(), 0.001);
    }

    [Fact]
    public void Threads_fuse_in_light_not_in_codes()
    {
        CommandLine run = CommandLine.Run("colour", "mix", "#5b2a86", "#e86a17", "--share", "0.5", "--json");

        // Averaging the codes would give #a24a4f; averaging the light is what the eye does.
        Assert.Equal("#b45263", run.Json.GetProperty("srgb").GetString());
    }

    [Fact]
    public void A_word_that_is_no_colour_is_pointed_at()
    {
        CommandLine run = CommandLine.Run("colour", "difference", "#5b2a86", "teal-ish");

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Equal(
            "clothwright: other: \"teal-ish\" is not a colour.\n  teal-ish\n  ^\n  Write it as # and six hexadecimal digits, for example #3b7a78.\n",
            run.Error.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_share_above_one_is_refused() =>
        Assert.Equal(ExitCode.BadInput, CommandLine.Run("colour", "mix", "#000000", "#ffffff", "--share", "1.5").ExitCode);

    [Fact]
    public void An_unknown_command_is_answered_with_those_that_exist()
    {
        CommandLine run = CommandLine.Run("colour", "blend");

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains("difference, mix", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }
}
