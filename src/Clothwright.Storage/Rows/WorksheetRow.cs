namespace Clothwright.Storage.Rows;

/// <summary>A worksheet: what its list shows. The document itself is its last save.</summary>
internal sealed class WorksheetRow
{
    public required string Id { get; set; }

    public required string Title { get; set; }

    public int Version { get; set; }

    public DateTimeOffset SavedAt { get; set; }

    public bool IsPutAway { get; set; }

    public bool IsDemo { get; set; }
}
