using System.CommandLine;

namespace Clothwright.Cli.Reports;

/// <summary>A command that ends in a <see cref="Report"/>: prints it as text, or as JSON when asked.</summary>
internal abstract class ReportCommand : Command
{
    private readonly Option<bool> _json = new("--json") { Description = "Print the result as JSON (SI numbers, unit in each name)." };

    /// <summary>A command by its name as typed and one sentence of help.</summary>
    /// <param name="name">As typed.</param>
    /// <param name="description">One sentence.</param>
    protected ReportCommand(string name, string description)
        : base(name, description)
    {
        Options.Add(_json);
        SetAction(Print);
    }

    /// <summary>Does the work.</summary>
    /// <param name="input">The words after the command.</param>
    /// <exception cref="Core.Quantities.InputProblemException">Something given cannot be used.</exception>
    protected abstract Report Make(ParseResult input);

    private int Print(ParseResult input)
    {
        bool json = input.GetValue(_json);
        TextWriter output = input.InvocationConfiguration.Output;
        try
        {
            Report report = Make(input);
            output.WriteLine(json ? PrettyJson.Write(report.Json) : report.Text);
            return report.ExitCode;
        }
        catch (Core.Quantities.InputProblemException exception)
        {
            input.InvocationConfiguration.Error.WriteLine(json
                ? PrettyJson.Write(ProblemText.Json(exception.Problem))
                : ProblemText.Write(exception.Problem));
            return ExitCode.BadInput;
        }
    }
}
