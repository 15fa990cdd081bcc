using System.CommandLine;
using System.Text;

namespace Clothwright.Cli.Tests;

/// <summary>Writes the reference of all commands from the tree of commands itself.</summary>
internal static class CommandReference
{
    private const string Head = """
        # Commands

        Written from the program by its tests: change the program, not this page. A tour with real output stands in [the guide](../guide/commands.md).

        Every command that reports takes `--json` (numbers in SI units, the unit in each name) and every command `--help`; `clothwright --version` tells the version. With `--json` a problem is JSON too, on the error output.

        | exit code | meaning |
        | --- | --- |
        | 0 | done |
        | 1 | done, and a check of the work failed: the draft falls apart, the loom cannot weave it, a float is too long, the cloth is not as drafted |
        | 2 | what was given cannot be used; nothing was written |
        | 70 | a fault of the program; please report it. `CLOTHWRIGHT_TRACE=1` prints the details to send along |
        | 130 | stopped by Ctrl-C; nothing is left half written |

        Lengths take cm, m, in, yd; setts take /in, /cm, /10cm. Drafts are given as a file (`.wif`, `.txt`, `.csv`, `.png`), a weave by name (`draft make --list`), or in notation: threading, tie-up, treadling, for example `"1234 | 1:12 2:23 3:34 4:14 | 1234"`.

        """;

    public static string Write(RootCommand root)
    {
        var text = new StringBuilder(Head);
        foreach (Command command in root.Subcommands) Append(text, command, "clothwright");
        return text.ToString();
    }

    private static void Append(StringBuilder text, Command command, string before)
    {
        string name = $"{before} {command.Name}";
        if (command.Subcommands.Count > 0)
        {
            foreach (Command inner in command.Subcommands) Append(text, inner, name);
            return;
        }

        text.AppendLine().AppendLine($"## {name[(name.IndexOf(' ', StringComparison.Ordinal) + 1)..]}").AppendLine();
        text.AppendLine(command.Description).AppendLine();
        text.AppendLine($"    {name}{string.Concat(command.Arguments.Select(Usage))} [options]").AppendLine();
        text.AppendLine("| | |").AppendLine("| --- | --- |");
        foreach (Argument argument in command.Arguments) text.AppendLine($"| `<{argument.Name}>` | {Cell(argument.Description)} |");
        foreach (Option option in command.Options.Where(o => o.Name != "--json"))
        {
            string needed = option.Required ? " Required." : "";
            string usual = option.HasDefaultValue && option.ValueType != typeof(bool) && option.GetDefaultValue() is { } value and not Array ? $" Usually {value}." : "";
            text.AppendLine($"| `{option.Name}` | {Cell(option.Description)}{needed}{usual} |");
        }
    }

    private static string Usage(Argument argument) => argument.Arity.MinimumNumberOfValues == 0 ? $" [<{argument.Name}>]" : $" <{argument.Name}>";

    private static string Cell(string? text) => text?.Replace("|", "\\|", StringComparison.Ordinal) ?? "";
}
