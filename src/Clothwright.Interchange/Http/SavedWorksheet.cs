namespace Clothwright.Interchange.Http;

/// <summary>Says that a save is on the disk.</summary>
/// <param name="Id">The worksheet.</param>
/// <param name="Version">The number of the save; the next save names it as the one it was based on.</param>
/// <param name="SavedAt">When.</param>
public sealed record SavedWorksheet(string Id, int Version, DateTimeOffset SavedAt);
