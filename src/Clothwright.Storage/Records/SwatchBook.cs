using Clothwright.Interchange.Http;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Records;

/// <summary>Samples and their measurements.</summary>
public sealed class SwatchBook
{
    private readonly StudioWork _work;

    internal SwatchBook(StudioWork work) => _work = work;

    /// <summary>All swatch records, by id.</summary>
    /// <param name="cancel">Calls it off.</param>
    public Task<Kept<SwatchRecord>[]> ListAsync(CancellationToken cancel = default) => _work.ReadAsync(
        async studio => (await studio.Swatches.OrderBy(s => s.Id).ToListAsync(cancel)).Select(r => new Kept<SwatchRecord>(r.Version, SwatchRows.Swatch(r))).ToArray(), cancel);

    /// <summary>One swatch record; null if there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<Kept<SwatchRecord>?> FindAsync(string id, CancellationToken cancel = default) => _work.ReadAsync(
        async studio => await studio.Swatches.FindAsync([id], cancel) is { } row ? new Kept<SwatchRecord>(row.Version, SwatchRows.Swatch(row)) : null, cancel);

    /// <summary>Keeps a swatch record.</summary>
    /// <param name="swatch">The record; a problem in it is thrown as an <see cref="Core.Quantities.InputProblemException"/>.</param>
    /// <param name="basedOn">The version it was made from; null for a new one.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<SaveOutcome> KeepAsync(SwatchRecord swatch, int? basedOn, CancellationToken cancel = default)
    {
        SwatchRecord sound = RecordChecks.Checked(swatch).Value;
        return _work.WriteAsync(async studio => await studio.KeepAsync(SwatchRows.Row(sound), await studio.Swatches.FindAsync([sound.Id], cancel), basedOn, cancel), cancel);
    }

    /// <summary>Removes a swatch record.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="basedOn">The version that was seen last.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<SaveOutcome> RemoveAsync(string id, int basedOn, CancellationToken cancel = default) =>
        _work.WriteAsync(async studio => studio.Drop(await studio.Swatches.FindAsync([id], cancel), basedOn), cancel);
}
