namespace Clothwright.Storage.Rows;

/// <summary>One save of a worksheet. Never changed, never removed.</summary>
internal sealed class WorksheetSaveRow
{
    public required string WorksheetId { get; set; }

    public int Version { get; set; }

    public DateTimeOffset SavedAt { get; set; }

    public required string Title { get; set; }

    public required string Document { get; set; }

    public int? RestoredFrom { get; set; }
}
