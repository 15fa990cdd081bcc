using System.CommandLine;
using System.CommandLine.Invocation;

namespace Clothwright.Cli;

/// <summary>Prints name and version of the program.</summary>
internal sealed class VersionLine : SynchronousCommandLineAction
{
    /// <summary>The line, for example <c>clothwright 0.1.0</c>.</summary>
    public static string Text => $"clothwright {typeof(VersionLine).Assembly.GetName().Version!.ToString(3)}";

    /// <inheritdoc />
    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine(Text);
        return ExitCode.Done;
    }
}
