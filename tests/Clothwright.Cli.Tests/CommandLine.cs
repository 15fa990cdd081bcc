namespace Clothwright.Cli.Tests;

/// <summary>Runs the command in this process and keeps what it said.</summary>
internal sealed record CommandLine(int ExitCode, string Output, string Error)
{
    public static CommandLine Run(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        int exitCode = ClothwrightCommand.Run(args, output, error);
        return new CommandLine(exitCode, output.ToString(), error.ToString());
    }

    /// <summary>The output read as JSON.</summary>
    public System.Text.Json.JsonElement Json => System.Text.Json.JsonDocument.Parse(Output).RootElement;
}
