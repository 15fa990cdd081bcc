namespace Clothwright.Storage.Rows;

/// <summary>The bench as a whole: there is one.</summary>
internal sealed class BenchRow
{
    public const int OnlyId = 1;

    public int Id { get; set; } = OnlyId;

    public int Version { get; set; }

    public bool IsDemo { get; set; }

    public List<LoomRow> Looms { get; set; } = [];

    public List<ReedRow> Reeds { get; set; } = [];

    public List<HeddleRow> Heddles { get; set; } = [];

    public List<WarpingToolRow> WarpingTools { get; set; } = [];
}
