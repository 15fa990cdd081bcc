namespace Clothwright.Storage.Bundles;

/// <summary>How large a packed studio may be when it is opened: a small file must not unfold into a full disk.</summary>
public static class BundleLimits
{
    /// <summary>The most files.</summary>
    public const int MostFiles = 500_000;

    /// <summary>The most bytes of one file, unpacked.</summary>
    public const int LargestFileBytes = 64 * 1024 * 1024;

    /// <summary>The most bytes of all files together, unpacked.</summary>
    public const long LargestBytes = 4L * 1024 * 1024 * 1024;
}
