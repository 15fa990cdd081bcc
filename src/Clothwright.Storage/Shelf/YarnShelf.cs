using System.Collections.Immutable;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Shelf;

/// <summary>Yarns owned, with their packages.</summary>
public sealed class YarnShelf
{
    private readonly StudioWork _work;

    internal YarnShelf(StudioWork work) => _work = work;

    /// <summary>All yarns, by name.</summary>
    /// <param name="cancel">Calls it off.</param>
    public Task<ImmutableArray<Kept<YarnEntry>>> ListAsync(CancellationToken cancel = default) => _work.ReadAsync(
        async studio => (await Whole(studio).OrderBy(y => y.Name).ThenBy(y => y.Id).ToListAsync(cancel)).Select(Kept).ToImmutableArray(), cancel);

    /// <summary>One yarn; null if it does not stand on the shelf.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<Kept<YarnEntry>?> FindAsync(string id, CancellationToken cancel = default) => _work.ReadAsync(
        async studio => await Held(studio, id, cancel) is { } row ? Kept(row) : null, cancel);

    /// <summary>Puts a yarn on the shelf, or in the place of what stood under its id.</summary>
    /// <param name="yarn">The yarn.</param>
    /// <param name="basedOn">The version it was made from; null for a yarn that is not there yet.</param>
    /// <param name="demo">Whether it comes with the demo studio.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<SaveOutcome> KeepAsync(YarnEntry yarn, int? basedOn, bool demo = false, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        string id = RecordId.Parse(yarn.Id).Value;
        return _work.WriteAsync(async studio => await studio.KeepAsync(YarnRows.Row(yarn, demo), await Held(studio, id, cancel), basedOn, cancel), cancel);
    }

    /// <summary>Puts many yarns on the shelf at once; those that stood under the same ids give way. All or none.</summary>
    /// <param name="yarns">The yarns, no two of one id.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    /// <returns>How many were put there.</returns>
    public Task<int> KeepAllAsync(IReadOnlyCollection<YarnEntry> yarns, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(yarns);
        foreach ((int index, YarnEntry yarn) in yarns.Index()) _ = RecordId.Parse(yarn.Id, $"yarns[{index}].id").Value;
        return _work.WriteAsync(
            async studio =>
            {
                foreach (YarnEntry yarn in yarns)
                {
                    YarnRow? held = await Held(studio, yarn.Id, cancel);
                    await studio.KeepAsync(YarnRows.Row(yarn, demo: false), held, held?.Version, cancel);
                }

                return yarns.Count;
            },
            cancel);
    }

    /// <summary>Takes a yarn off the shelf, with its photos and what was set aside of it.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="basedOn">The version that was seen last.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<SaveOutcome> RemoveAsync(string id, int basedOn, CancellationToken cancel = default) =>
        _work.WriteAsync(
            async studio =>
            {
                SaveOutcome outcome = studio.Drop(await Held(studio, id, cancel), basedOn);
                if (outcome is not SaveOutcome.Saved) return outcome;
                await studio.YarnPhotos.Where(p => p.YarnId == id).ExecuteDeleteAsync(cancel);
                await studio.Reservations.Where(r => r.YarnId == id).ExecuteDeleteAsync(cancel);
                return outcome;
            },
            cancel);

    internal static IQueryable<YarnRow> Whole(StudioContext studio) => studio.Yarns.Include(y => y.Fibres).Include(y => y.Packages).AsSplitQuery();

    internal static Kept<YarnEntry> Kept(YarnRow row) => new(row.Version, YarnRows.Yarn(row));

    private static Task<YarnRow?> Held(StudioContext studio, string id, CancellationToken cancel) => Whole(studio).SingleOrDefaultAsync(y => y.Id == id, cancel);
}
