namespace Clothwright.Storage.Rows;

/// <summary>A swatch record.</summary>
internal sealed class SwatchRow : IKeptRow
{
    public required string Id { get; set; }

    public int Version { get; set; }

    public bool IsDemo { get; set; }

    public required string Title { get; set; }

    public string? WorksheetId { get; set; }

    public DateOnly? MeasuredOn { get; set; }

    public List<string> WarpYarnIds { get; set; } = [];

    public List<string> WeftYarnIds { get; set; } = [];

    public required string Weave { get; set; }

    public double? EndsPerCentimetre { get; set; }

    public double? PicksPerCentimetre { get; set; }

    public double? ReedWidthCentimetres { get; set; }

    public double? WovenLengthCentimetres { get; set; }

    public double? OffLoomWidthCentimetres { get; set; }

    public double? OffLoomLengthCentimetres { get; set; }

    public double? FinishedWidthCentimetres { get; set; }

    public double? FinishedLengthCentimetres { get; set; }

    public double? FinishedGrams { get; set; }

    public double? ThicknessMillimetres { get; set; }

    public required string Finishing { get; set; }

    public required string Note { get; set; }
}
