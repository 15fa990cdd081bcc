using System.Reflection;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Storage;

namespace Clothwright.Server.Demo;

/// <summary>The demo studio: the sample worksheets, with a shelf and a bench of what they use.</summary>
internal static class DemoStudio
{
    /// <summary>The worksheet that stands first.</summary>
    public const string FirstWorksheet = "reedbed-scarves";

    private const string Folder = "samples/";

    /// <summary>Fills an empty studio.</summary>
    public static async Task SeedAsync(Studio studio, CancellationToken cancel)
    {
        (string Id, Worksheet Worksheet)[] samples = [.. Samples().OrderBy(s => s.Id == FirstWorksheet).ThenByDescending(s => s.Id, StringComparer.Ordinal)];
        foreach (YarnEntry yarn in samples.SelectMany(s => s.Worksheet.Shelf).DistinctBy(y => y.Id)) await studio.Shelf.KeepAsync(yarn, null, demo: true, cancel);
        await studio.Bench.KeepAsync(BenchOf([.. samples.Select(s => s.Worksheet)]), null, demo: true, cancel);
        // The last saved is listed first.
        foreach ((string id, Worksheet worksheet) in samples) await studio.Worksheets.SaveAsync(id, worksheet, null, demo: true, cancel);
    }

    private static IEnumerable<(string Id, Worksheet Worksheet)> Samples()
    {
        Assembly assembly = typeof(DemoStudio).Assembly;
        foreach (string name in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal)))
        {
            using Stream stream = assembly.GetManifestResourceStream(name)!;
            byte[] bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            yield return (Path.GetFileNameWithoutExtension(name), WorksheetReader.Read(bytes).Value);
        }
    }

    private static BenchDocument BenchOf(Worksheet[] worksheets) => new()
    {
        Looms = [.. worksheets.SelectMany(w => w.Looms).DistinctBy(l => l.Id)],
        Reeds = [.. worksheets.SelectMany(w => w.Reeds).DistinctBy(r => r.Name)],
        Heddles = [.. worksheets.SelectMany(w => w.Heddles).DistinctBy(h => h.Name)],
        WarpingTools =
        [
            new WarpingTool { Id = "board", Name = "warping board", Kind = WarpingToolKind.Board, LongestWarpMetres = 9, TurnCentimetres = 90 },
            new WarpingTool { Id = "mill", Name = "upright warping mill", Kind = WarpingToolKind.Mill, LongestWarpMetres = 30, TurnCentimetres = 200 },
        ],
    };
}
