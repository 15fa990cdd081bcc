using System.CommandLine;
using System.CommandLine.Parsing;
using Clothwright.Cli.Commands;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli;

/// <summary>The command <c>clothwright</c> with all its subcommands.</summary>
public static class ClothwrightCommand
{
    /// <summary>Runs one command line.</summary>
    /// <param name="args">The words after <c>clothwright</c>.</param>
    /// <param name="output">Where results go.</param>
    /// <param name="error">Where problems go.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error)
    {
        ParseResult input = Root().Parse(args);
        if (input.Errors.Count > 0)
        {
            error.WriteLine(ProblemText.Write(CommandLineProblem(input, args)));
            return ExitCode.BadInput;
        }

        return input.Invoke(new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false });
    }

    private static RootCommand Root() => new("Plans, checks and documents handwoven cloth: from yarn to handout.")
    {
        new Command("yarn", "What a yarn really is.") { new YarnConvertCommand(), new YarnIdentifyCommand() },
        new SettCommand(),
        new Command("draft", "Drafts: make, check, fit to a loom, convert.")
        {
            new DraftMakeCommand(), new DraftCheckCommand(), new DraftFitCommand(), new DraftConvertCommand(),
        },
        new PlanCommand(),
        new Command("colour", "Colours of threads.") { new ColourDifferenceCommand(), new ColourMixCommand() },
    };

    private static InputProblem CommandLineProblem(ParseResult input, string[] args)
    {
        string line = string.Join(' ', args);
        string word = input.UnmatchedTokens.Count > 0 ? input.UnmatchedTokens[0] : "";
        Command command = input.CommandResult.Command;
        string path = string.Join(' ', CommandPath(input.CommandResult));
        string[] subcommands = [.. command.Subcommands.Select(c => c.Name)];
        string mend = subcommands.Length > 0
            ? $"After \"{path}\" comes one of: {string.Join(", ", subcommands)}."
            : $"\"{path} --help\" lists what it takes.";
        return new InputProblem(input.Errors[0].Message.TrimEnd('.') + ".", "command line", mend)
        {
            Text = line,
            Position = word.Length > 0 ? Math.Max(line.IndexOf(word, StringComparison.Ordinal), 0) : line.Length,
        };
    }

    private static Stack<string> CommandPath(CommandResult result)
    {
        var names = new Stack<string>();
        for (SymbolResult? at = result; at is not null; at = at.Parent)
        {
            if (at is CommandResult named) names.Push(named.Command is RootCommand ? "clothwright" : named.Command.Name);
        }

        return names;
    }
}
