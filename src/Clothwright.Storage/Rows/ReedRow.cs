namespace Clothwright.Storage.Rows;

/// <summary>A reed of the bench.</summary>
internal sealed class ReedRow
{
    public int BenchId { get; set; }

    public int Place { get; set; }

    public required string Name { get; set; }

    public double DentsPerMetre { get; set; }
}
