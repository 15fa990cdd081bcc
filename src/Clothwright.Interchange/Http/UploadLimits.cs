using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Interchange.Http;

/// <summary>The most that one request may carry, in bytes.</summary>
public static class UploadLimits
{
    /// <summary>A worksheet.</summary>
    public const int WorksheetBytes = WorksheetReader.LargestBytes;

    /// <summary>One yarn, swatch record or entry of the weaving log, or the bench.</summary>
    public const int RecordBytes = 256 * 1024;

    /// <summary>A shelf as a table.</summary>
    public const int ShelfTableBytes = 4 * 1024 * 1024;

    /// <summary>A photo as it comes from a camera.</summary>
    public const int PhotoBytes = 16 * 1024 * 1024;

    /// <summary>A whole studio, packed.</summary>
    public const int BundleBytes = 256 * 1024 * 1024;
}
