namespace Clothwright.Interchange.Http;

/// <summary>One save in the history of a worksheet.</summary>
/// <param name="Version">Its number, from 1, without gaps.</param>
/// <param name="SavedAt">When.</param>
/// <param name="Title">Name of the work at the time.</param>
/// <param name="RestoredFrom">The earlier save that it brought back; null for a save of its own.</param>
public sealed record WorksheetVersion(int Version, DateTimeOffset SavedAt, string Title, int? RestoredFrom = null);
