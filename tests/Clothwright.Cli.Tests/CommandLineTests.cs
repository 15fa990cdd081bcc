namespace Clothwright.Cli.Tests;

public class CommandLineTests
{
    [Fact]
    public void Alone_the_command_tells_what_it_can_do()
    {
        CommandLine run = CommandLine.Run();

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Contains("Commands:", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no \"clothwright draft chek\".", "make, check, fit", "draft", "chek", "x")]
    [InlineData("\"clothwright draft\" does nothing by itself.", "make, check, fit", "draft")]
    [InlineData("'--purple'", "--help", "draft", "check", "plain", "--purple")]
    [InlineData("'--fibre'", "--help", "sett", "--yarn", "8/2", "--weave", "plain")]
    [InlineData("'many'", "--help", "draft", "make", "plain", "--ends", "many")]
    public void A_slip_in_the_command_is_pointed_at(string what, string mend, params string[] args)
    {
        CommandLine run = CommandLine.Run(args);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.StartsWith("clothwright: command line: ", run.Error, StringComparison.Ordinal);
        Assert.Contains(what, run.Error, StringComparison.Ordinal);
        Assert.Contains(mend, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void With_json_a_problem_is_json_too()
    {
        CommandLine line = CommandLine.Run("draft", "chek", "--json");
        CommandLine input = CommandLine.Run("draft", "check", "mist weave", "--json");

        foreach (CommandLine run in (CommandLine[])[line, input])
        {
            using var json = System.Text.Json.JsonDocument.Parse(run.Error);
            Assert.NotEmpty(json.RootElement.GetProperty("problem").GetProperty("mend").GetString()!);
        }
    }
}
