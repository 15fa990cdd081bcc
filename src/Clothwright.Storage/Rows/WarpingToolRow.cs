namespace Clothwright.Storage.Rows;

/// <summary>A warping tool of the bench.</summary>
internal sealed class WarpingToolRow
{
    public int BenchId { get; set; }

    public int Place { get; set; }

    public required string Id { get; set; }

    public required string Name { get; set; }

    public required string Kind { get; set; }

    public double? LongestWarpMetres { get; set; }

    public double? TurnCentimetres { get; set; }

    public double? SectionCentimetres { get; set; }
}
