using Clothwright.Storage.Sqlite;

namespace Clothwright.Storage.Tests;

/// <summary>A studio in a folder of its own, gone with the test.</summary>
internal sealed partial class FreshStudio : IAsyncDisposable
{
    private FreshStudio(string folder, Studio studio)
    {
        Folder = folder;
        Studio = studio;
    }

    public string Folder { get; }

    public Studio Studio { get; private set; }

    public static async Task<FreshStudio> OpenAsync()
    {
        string folder = Directory.CreateTempSubdirectory("clothwright-studio-").FullName;
        return new FreshStudio(folder, await SqliteStudio.OpenAsync(folder, new MinuteClock()));
    }

    /// <summary>The tables themselves.</summary>
    public StudioContext Tables() => new(SqliteStudio.OptionsOf($"Data Source={Path.Combine(Folder, SqliteStudio.FileName)};Pooling=False"));

    /// <summary>Closes the file and opens it again, as after a restart.</summary>
    public async Task ReopenAsync()
    {
        SqliteStudio.Close(Folder);
        Studio = await SqliteStudio.OpenAsync(Folder, new MinuteClock());
    }

    public ValueTask DisposeAsync()
    {
        SqliteStudio.Close(Folder);
        Directory.Delete(Folder, recursive: true);
        return ValueTask.CompletedTask;
    }
}
