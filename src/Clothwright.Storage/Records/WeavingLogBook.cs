using Clothwright.Interchange.Http;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Records;

/// <summary>Sittings at the loom.</summary>
public sealed class WeavingLogBook
{
    private readonly StudioWork _work;

    internal WeavingLogBook(StudioWork work) => _work = work;

    /// <summary>The entries of one worksheet, or of all, in the order of time.</summary>
    /// <param name="worksheetId">The worksheet; null for all.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<Kept<WeavingLogEntry>[]> ListAsync(string? worksheetId = null, CancellationToken cancel = default) => _work.ReadAsync(
        async studio => (await studio.WeavingLog
            .Where(e => worksheetId == null || e.WorksheetId == worksheetId)
            .OrderBy(e => e.Begun).ThenBy(e => e.Id)
            .ToListAsync(cancel)).Select(r => new Kept<WeavingLogEntry>(r.Version, WeavingLogRows.Entry(r))).ToArray(),
        cancel);

    /// <summary>One entry; null if there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<Kept<WeavingLogEntry>?> FindAsync(string id, CancellationToken cancel = default) => _work.ReadAsync(
        async studio => await studio.WeavingLog.FindAsync([id], cancel) is { } row ? new Kept<WeavingLogEntry>(row.Version, WeavingLogRows.Entry(row)) : null, cancel);

    /// <summary>Keeps an entry.</summary>
    /// <param name="entry">The entry; a problem in it is thrown as an <see cref="Core.Quantities.InputProblemException"/>.</param>
    /// <param name="basedOn">The version it was made from; null for a new one.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<SaveOutcome> KeepAsync(WeavingLogEntry entry, int? basedOn, CancellationToken cancel = default)
    {
        WeavingLogEntry sound = RecordChecks.Checked(entry).Value;
        return _work.WriteAsync(async studio => await studio.KeepAsync(WeavingLogRows.Row(sound), await studio.WeavingLog.FindAsync([sound.Id], cancel), basedOn, cancel), cancel);
    }

    /// <summary>Removes an entry.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="basedOn">The version that was seen last.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<SaveOutcome> RemoveAsync(string id, int basedOn, CancellationToken cancel = default) =>
        _work.WriteAsync(async studio => studio.Drop(await studio.WeavingLog.FindAsync([id], cancel), basedOn), cancel);
}
