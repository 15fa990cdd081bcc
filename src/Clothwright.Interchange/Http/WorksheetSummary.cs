namespace Clothwright.Interchange.Http;

/// <summary>A worksheet in the list of worksheets.</summary>
/// <param name="Id">Its id, as in its address.</param>
/// <param name="Title">Name of the work.</param>
/// <param name="Version">The number of its last save, from 1.</param>
/// <param name="SavedAt">When it was last saved.</param>
/// <param name="PutAway">Whether it was put away: kept with its history, but out of sight.</param>
/// <param name="Demo">Whether it came with the demo studio and was never saved since.</param>
public sealed record WorksheetSummary(string Id, string Title, int Version, DateTimeOffset SavedAt, bool PutAway, bool Demo);
