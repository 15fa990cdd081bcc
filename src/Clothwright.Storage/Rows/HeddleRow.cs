namespace Clothwright.Storage.Rows;

/// <summary>A rigid heddle of the bench.</summary>
internal sealed class HeddleRow
{
    public int BenchId { get; set; }

    public int Place { get; set; }

    public required string Name { get; set; }

    public double SpacesPerMetre { get; set; }

    public int Count { get; set; }
}
