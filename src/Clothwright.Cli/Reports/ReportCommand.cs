using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Clothwright.Cli.Reports;

/// <summary>A command that ends in a <see cref="Report"/>: prints it as text, or as JSON when asked.</summary>
internal abstract class ReportCommand : Command
{
    private static readonly JsonSerializerOptions Pretty = new()
    {
        WriteIndented = true,

        // The output is a file or a terminal, never a web page: letters stay readable.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

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
            output.WriteLine(json ? report.Json.ToJsonString(Pretty) : report.Text);
            return report.ExitCode;
        }
        catch (Core.Quantities.InputProblemException exception)
        {
            input.InvocationConfiguration.Error.WriteLine(json
                ? ProblemText.Json(exception.Problem).ToJsonString(Pretty)
                : ProblemText.Write(exception.Problem));
            return ExitCode.BadInput;
        }
    }
}
