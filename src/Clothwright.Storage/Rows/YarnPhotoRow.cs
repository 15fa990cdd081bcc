namespace Clothwright.Storage.Rows;

/// <summary>A photo of a yarn.</summary>
internal sealed class YarnPhotoRow
{
    public required string Id { get; set; }

    public required string YarnId { get; set; }

    public DateTimeOffset AddedAt { get; set; }

    public int WidthPixels { get; set; }

    public int HeightPixels { get; set; }

    public required byte[] Jpeg { get; set; }
}
