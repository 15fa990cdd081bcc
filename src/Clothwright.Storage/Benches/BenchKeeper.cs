using Clothwright.Interchange.Http;
using Clothwright.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Benches;

/// <summary>The bench: looms, reeds, heddles and warping tools, saved together.</summary>
public sealed class BenchKeeper
{
    private readonly StudioWork _work;

    internal BenchKeeper(StudioWork work) => _work = work;

    /// <summary>The bench as it stands; null if none was saved yet.</summary>
    /// <param name="cancel">Calls it off.</param>
    public Task<Kept<BenchDocument>?> FindAsync(CancellationToken cancel = default) => _work.ReadAsync(
        async studio => await Whole(studio).SingleOrDefaultAsync(cancel) is { } row ? new Kept<BenchDocument>(row.Version, BenchRows.Bench(row)) : null, cancel);

    /// <summary>Saves the bench.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="basedOn">The version it was made from; null if none was saved yet.</param>
    /// <param name="demo">Whether it comes with the demo studio.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<SaveOutcome> KeepAsync(BenchDocument bench, int? basedOn, bool demo = false, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return _work.WriteAsync<SaveOutcome>(
            async studio =>
            {
                BenchRow? held = await Whole(studio).SingleOrDefaultAsync(cancel);
                if (held is null && basedOn is not null) return new SaveOutcome.NotThere();
                if (held is not null && held.Version != basedOn) return new SaveOutcome.Conflict(held.Version);
                int version = (held?.Version ?? 0) + 1;
                if (held is not null)
                {
                    studio.Remove(held);
                    await studio.SaveChangesAsync(cancel);
                }

                studio.Add(BenchRows.Row(bench, version, demo));
                return new SaveOutcome.Saved(version, held is null);
            },
            cancel);
    }

    internal static IQueryable<BenchRow> Whole(StudioContext studio) => studio.Benches
        .Include(b => b.Looms).Include(b => b.Reeds).Include(b => b.Heddles).Include(b => b.WarpingTools)
        .AsSplitQuery();
}
