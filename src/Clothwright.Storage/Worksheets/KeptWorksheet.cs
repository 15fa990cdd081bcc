namespace Clothwright.Storage.Worksheets;

/// <summary>One save of a worksheet with its document.</summary>
/// <param name="Id">The worksheet.</param>
/// <param name="Version">The number of the save.</param>
/// <param name="SavedAt">When.</param>
/// <param name="Document">The worksheet as JSON.</param>
public sealed record KeptWorksheet(string Id, int Version, DateTimeOffset SavedAt, string Document);
