namespace Clothwright.Storage.Rows;

/// <summary>A loom of the bench.</summary>
internal sealed class LoomRow
{
    public int BenchId { get; set; }

    public int Place { get; set; }

    public required string Id { get; set; }

    public required string Name { get; set; }

    public required string Kind { get; set; }

    public double WeavingWidthMetres { get; set; }

    public int Shafts { get; set; }

    public int Treadles { get; set; }

    public required string Shed { get; set; }

    public int RigidHeddles { get; set; }

    public int WarpBeams { get; set; }

    public int HeddlesPerShaft { get; set; }

    public double? WasteMetres { get; set; }
}
