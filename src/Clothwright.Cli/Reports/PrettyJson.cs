using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Clothwright.Cli.Reports;

/// <summary>Writes JSON for a terminal or a file: indented, letters readable.</summary>
internal static class PrettyJson
{
    // The output is never part of a web page, so letters need no escapes.
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The text.</summary>
    /// <param name="json">What to write.</param>
    public static string Write(JsonNode json) => json.ToJsonString(Options);
}
