using System.Text.Json.Nodes;

namespace Clothwright.Cli.Reports;

/// <summary>What a command found, once for a person and once for a program.</summary>
/// <param name="Text">For a person; ends without a line end.</param>
/// <param name="Json">For a program: SI numbers with the unit in the name.</param>
internal sealed record Report(string Text, JsonObject Json)
{
    /// <summary>What the shell is told.</summary>
    public int ExitCode { get; init; } = Cli.ExitCode.Done;
}
