using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using Clothwright.Cli.Commands;
using Clothwright.Cli.Reports;
using Clothwright.Cli.Shelf;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli;

/// <summary>The command <c>clothwright</c> with all its subcommands.</summary>
public static class ClothwrightCommand
{
    /// <summary>Runs one command line.</summary>
    /// <param name="args">The words after <c>clothwright</c>.</param>
    /// <param name="output">Where results go.</param>
    /// <param name="error">Where problems go.</param>
    /// <param name="traced">Whether a fault of the program is told with all its details.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error, bool traced = false) =>
        ProgramFault.Guard(() => Invoke(args, output, error), error, traced);

    private static int Invoke(string[] args, TextWriter output, TextWriter error)
    {
        ParseResult input = Root().Parse(args.Length == 0 ? ["--help"] : args);
        if (input.Errors.Count > 0)
        {
            InputProblem problem = CommandLineProblem(input, args);
            error.WriteLine(args.Contains("--json") ? ProblemText.Json(problem).ToString() : ProblemText.Write(problem));
            return ExitCode.BadInput;
        }

        return input.Invoke(new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false });
    }

    /// <summary>The tree of commands.</summary>
    internal static RootCommand Root()
    {
        RootCommand root = Tree();
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        if (help.Action is HelpAction action) action.MaxWidth = WrappedText.LineLength;
        root.Options.OfType<VersionOption>().Single().Action = new VersionLine();
        return root;
    }

    private static RootCommand Tree() => new("Plans, checks and documents handwoven cloth: from yarn to handout.")
    {
        new ServeCommand(),
        new PlanCommand(),
        new Command("yarn", "What a yarn really is, by its count, its label or a measured length.")
        {
            new YarnConvertCommand(), new YarnIdentifyCommand(), new YarnCompareCommand(),
        },
        new SettCommand(),
        new ClothCommand(),
        new CountCommand(),
        new Command("draft", "Drafts: make, check, fit to a loom, find faults, convert.")
        {
            new DraftMakeCommand(), new DraftCheckCommand(), new DraftFitCommand(), new DraftFaultsCommand(), new DraftConvertCommand(),
        },
        new Command("shelf", "The yarns that are owned: list, add, use, tables in and out.")
        {
            new ShelfListCommand(), new ShelfAddCommand(), new ShelfUseCommand(), new ShelfImportCommand(), new ShelfExportCommand(),
        },
        new Command("colour", "Colours of threads: how they differ, what they fuse to, who can tell them apart.")
        {
            new ColourDifferenceCommand(), new ColourMixCommand(), new ColourPaletteCommand(), new ColourSimulateCommand(), new ColourStripesCommand(), new ColourWeftCommand(),
        },
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
        string what = (subcommands.Length, word.Length) switch
        {
            (0, _) => input.Errors[0].Message.TrimEnd('.') + ".",
            (_, 0) => $"\"{path}\" does nothing by itself.",
            _ => $"There is no \"{path} {word}\".",
        };
        return new InputProblem(what, "command line", mend)
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
