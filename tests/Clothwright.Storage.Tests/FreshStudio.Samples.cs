using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Storage.Worksheets;
using Clothwright.TestKit;

namespace Clothwright.Storage.Tests;

/// <summary>What the tests put into a studio, whatever database keeps it.</summary>
internal sealed partial class FreshStudio
{
    /// <summary>A worksheet of the samples, with a title of its own.</summary>
    public static Worksheet Sheet(string title, string sample = "reedbed-scarves") =>
        WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", sample + ".json"))).Value with { Title = title };

    /// <summary>Every sample.</summary>
    public static IEnumerable<Worksheet> Samples() =>
        Directory.GetFiles(Repository.PathOf("samples"), "*.json").Order(StringComparer.Ordinal).Select(f => WorksheetReader.Read(File.ReadAllBytes(f)).Value);

    /// <summary>Saves and expects it to be kept; the number of the save.</summary>
    public async Task<int> SaveAsync(string id, string title, int? basedOn) =>
        Assert.IsType<WorksheetOutcome.Saved>(await Studio.Worksheets.SaveAsync(id, Sheet(title), basedOn)).Worksheet.Version;

    /// <summary>A clock that moves one minute at each look.</summary>
    private sealed class MinuteClock : TimeProvider
    {
        private int _looks;

        // A time with more digits than the tables hold.
        public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2026, 3, 1, 9, 0, 0, TimeSpan.Zero).AddMinutes(Interlocked.Increment(ref _looks)).AddTicks(1234567);
    }
}
