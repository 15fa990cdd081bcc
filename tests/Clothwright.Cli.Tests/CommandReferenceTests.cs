using System.CommandLine;
using Clothwright.TestKit;

namespace Clothwright.Cli.Tests;

public class CommandReferenceTests
{
    [Fact]
    public void The_reference_tells_every_command_as_it_is()
    {
        string path = Repository.PathOf("docs", "reference", "commands.md");
        string actual = CommandReference.Write(ClothwrightCommand.Root()).ReplaceLineEndings("\n");
        string written = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        if (actual != written) File.WriteAllText(path + ".received", actual);

        Assert.True(actual == written, "docs/reference/commands.md is not what the commands are: read commands.md.received beside it, and rename it if it is right.");
    }

    public static TheoryData<string> Commands => [.. Paths(ClothwrightCommand.Root(), "")];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Help_is_a_page_that_fits_and_says_what_everything_is(string command)
    {
        CommandLine run = CommandLine.Run([.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]);

        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.All(run.Output.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 100, line));
        Assert.All(Described(Find(command)), described => Assert.False(string.IsNullOrWhiteSpace(described.Description), described.Name));
    }

    [Fact]
    public void The_version_stands_behind_the_name() =>
        Assert.Matches(@"^clothwright \d+\.\d+\.\d+$", CommandLine.Run("--version").Output.Trim());

    private static IEnumerable<string> Paths(Command command, string before)
    {
        yield return before;
        foreach (Command inner in command.Subcommands)
        {
            foreach (string path in Paths(inner, $"{before} {inner.Name}".Trim())) yield return path;
        }
    }

    private static Command Find(string path) =>
        path.Split(' ', StringSplitOptions.RemoveEmptyEntries).Aggregate((Command)ClothwrightCommand.Root(), (c, name) => c.Subcommands.Single(s => s.Name == name));

    private static IEnumerable<Symbol> Described(Command command) => [command, .. command.Arguments, .. command.Options];
}
