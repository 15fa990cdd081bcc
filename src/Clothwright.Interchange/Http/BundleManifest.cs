namespace Clothwright.Interchange.Http;

/// <summary>The first page of a packed studio: what is in it.</summary>
/// <param name="ClothwrightStudio">Version of the form of the bundle.</param>
/// <param name="PackedAt">When it was packed.</param>
/// <param name="Worksheets">Every worksheet, those put away too.</param>
/// <param name="BenchVersion">The number of the last save of the bench; null if there is none.</param>
/// <param name="DemoYarns">Yarns that came with the demo studio and were never changed, by id; null where there are none.</param>
/// <param name="DemoBench">Whether the bench came with the demo studio and was never changed.</param>
public sealed record BundleManifest(
    int ClothwrightStudio, DateTimeOffset PackedAt, WorksheetSummary[] Worksheets, int? BenchVersion = null, string[]? DemoYarns = null, bool DemoBench = false)
{
    /// <summary>The version that this program writes and reads.</summary>
    public const int CurrentVersion = 1;
}
