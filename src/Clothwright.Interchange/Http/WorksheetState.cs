using System.Text.Json;

namespace Clothwright.Interchange.Http;

/// <summary>A worksheet as it stands on the server, sent when a save was based on an earlier one.</summary>
/// <param name="Id">The worksheet.</param>
/// <param name="Version">The number of its last save.</param>
/// <param name="SavedAt">When.</param>
/// <param name="Worksheet">The document, for <see cref="WorksheetJson.WorksheetReader"/>.</param>
public sealed record WorksheetState(string Id, int Version, DateTimeOffset SavedAt, JsonElement Worksheet);
