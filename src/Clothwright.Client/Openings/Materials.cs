using System.Collections.Immutable;
using System.Text;
using Clothwright.Client.Saving;
using Clothwright.Core.Looms;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;

namespace Clothwright.Client.Openings;

/// <summary>What a worksheet can begin with: the studio's shelf and bench.</summary>
/// <param name="Yarns">Yarns on the shelf.</param>
/// <param name="Looms">Looms on the bench.</param>
/// <param name="Reeds">Reeds on the bench.</param>
/// <param name="Heddles">Rigid heddles on the bench.</param>
public sealed record Materials(ImmutableArray<YarnEntry> Yarns, ImmutableArray<LoomEntry> Looms, ImmutableArray<Reed> Reeds, ImmutableArray<RigidHeddle> Heddles)
{
    /// <summary>Reads shelf and bench; nothing of either where the studio does not answer.</summary>
    /// <param name="studio">The studio.</param>
    public static async Task<Materials> ReadAsync(StudioCalls studio)
    {
        ArgumentNullException.ThrowIfNull(studio);
        StudioAnswer shelf = await studio.AskAsync("GET", "api/shelf");
        StudioAnswer bench = await studio.AskAsync("GET", "api/bench");
        ImmutableArray<YarnEntry> yarns = shelf.IsDone && ShelfText.ReadShelf(Encoding.UTF8.GetBytes(shelf.Text)).TryGet(out ImmutableArray<Kept<YarnEntry>> kept)
            ? [.. kept.Select(k => k.Item).Where(y => y.ToYarn().Succeeded)]
            : [];
        BenchDocument tools = bench.IsDone && BenchText.Read(Encoding.UTF8.GetBytes(bench.Text)).TryGet(out BenchDocument? read) ? read : BenchDocument.Empty;
        return new Materials(yarns, tools.Looms, tools.Reeds, tools.Heddles);
    }
}
