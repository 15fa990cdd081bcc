namespace Clothwright.TestKit;

/// <summary>Finds files of the repository from wherever a test runs.</summary>
public static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A path below the root.</summary>
    /// <param name="parts">Folders and file name.</param>
    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Clothwright.slnx"))) return folder.FullName;
        }

        throw new InvalidOperationException("No folder above the tests holds Clothwright.slnx.");
    }
}
