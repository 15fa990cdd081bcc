using Clothwright.Cli.Reports;

namespace Clothwright.Cli;

/// <summary>Runs a command line so that a slip of the program never ends in a wall of text.</summary>
internal static class ProgramFault
{
    /// <summary>The setting of the shell that asks for the details of a fault.</summary>
    public const string TraceSetting = "CLOTHWRIGHT_TRACE";

    /// <summary>Runs the work; if it breaks, says so in one line, and in full when asked for.</summary>
    /// <param name="work">The work; gives an exit code.</param>
    /// <param name="error">Where the line goes.</param>
    /// <param name="traced">Whether the details are wanted.</param>
    /// <returns>The exit code of the work, or <see cref="ExitCode.ProgramFault"/>.</returns>
    public static int Guard(Func<int> work, TextWriter error, bool traced)
    {
        try
        {
            return work();
        }
        catch (Exception exception)
        {
            error.WriteLine(Line(exception));
            if (traced) error.WriteLine(exception);
            return ExitCode.ProgramFault;
        }
    }

    private static string Line(Exception exception) =>
        $"clothwright: a fault of the program, not of your input ({exception.GetType().Name}: {ProblemText.OneLine(exception.Message)}). "
        + $"Please report it with the command line and its files; run again with {TraceSetting}=1 for the details to send along.";
}
