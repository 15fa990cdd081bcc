namespace Clothwright.Storage.Rows;

/// <summary>One sitting at the loom. The offset of its beginning is kept beside it, so that the hour reads as it was written.</summary>
internal sealed class WeavingLogRow : IKeptRow
{
    public required string Id { get; set; }

    public int Version { get; set; }

    public bool IsDemo { get; set; }

    public required string WorksheetId { get; set; }

    public DateTimeOffset Begun { get; set; }

    public int OffsetMinutes { get; set; }

    public double? Minutes { get; set; }

    public required string Work { get; set; }

    public int? PieceIndex { get; set; }

    public int Picks { get; set; }

    public required string Note { get; set; }
}
