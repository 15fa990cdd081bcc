using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Storage.Sqlite;
using Clothwright.Storage.Worksheets;
using Clothwright.TestKit;

namespace Clothwright.Storage.Tests;

/// <summary>A studio in a folder of its own, gone with the test. The clock moves one minute at each look.</summary>
internal sealed class FreshStudio : IAsyncDisposable
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

    /// <summary>A worksheet of the samples, with a title of its own.</summary>
    public static Worksheet Sheet(string title, string sample = "reedbed-scarves") =>
        WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", sample + ".json"))).Value with { Title = title };

    /// <summary>Every sample.</summary>
    public static IEnumerable<Worksheet> Samples() =>
        Directory.GetFiles(Repository.PathOf("samples"), "*.json").Order(StringComparer.Ordinal).Select(f => WorksheetReader.Read(File.ReadAllBytes(f)).Value);

    /// <summary>Saves and expects it to be kept; the number of the save.</summary>
    public async Task<int> SaveAsync(string id, string title, int? basedOn) =>
        Assert.IsType<WorksheetOutcome.Saved>(await Studio.Worksheets.SaveAsync(id, Sheet(title), basedOn)).Worksheet.Version;

    public ValueTask DisposeAsync()
    {
        SqliteStudio.Close(Folder);
        Directory.Delete(Folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    private sealed class MinuteClock : TimeProvider
    {
        private int _looks;

        // A time with more digits than the tables hold.
        public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2026, 3, 1, 9, 0, 0, TimeSpan.Zero).AddMinutes(Interlocked.Increment(ref _looks)).AddTicks(1234567);
    }
}
