using System.Text;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Worksheets;

/// <summary>Worksheets as whole documents. Every save stays; what was acknowledged is on the disk.</summary>
public sealed class WorksheetArchive
{
    private readonly StudioWork _work;

    internal WorksheetArchive(StudioWork work) => _work = work;

    /// <summary>All worksheets, the last saved first.</summary>
    /// <param name="putAway">Whether to list those put away, instead of those at hand.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<WorksheetSummary[]> ListAsync(bool putAway = false, CancellationToken cancel = default) => _work.ReadAsync(
        studio => studio.Worksheets
            .Where(w => w.IsPutAway == putAway)
            .OrderByDescending(w => w.SavedAt).ThenBy(w => w.Id)
            .Select(w => new WorksheetSummary(w.Id, w.Title, w.Version, w.SavedAt, w.IsPutAway, w.IsDemo))
            .ToArrayAsync(cancel),
        cancel);

    /// <summary>A worksheet as it stands; null if there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<KeptWorksheet?> FindAsync(string id, CancellationToken cancel = default) => _work.ReadAsync(studio => CurrentAsync(studio, id, cancel), cancel);

    /// <summary>A worksheet as it was saved once; null if there is no such save.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="version">The number of the save.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<KeptWorksheet?> FindAsync(string id, int version, CancellationToken cancel = default) => _work.ReadAsync(
        studio => SaveAsync(studio, id, version, cancel), cancel);

    /// <summary>All saves of a worksheet, the last first; none if there is no such worksheet.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Calls it off.</param>
    public Task<WorksheetVersion[]> HistoryAsync(string id, CancellationToken cancel = default) => _work.ReadAsync(
        studio => studio.WorksheetSaves
            .Where(s => s.WorksheetId == id)
            .OrderByDescending(s => s.Version)
            .Select(s => new WorksheetVersion(s.Version, s.SavedAt, s.Title, s.RestoredFrom))
            .ToArrayAsync(cancel),
        cancel);

    /// <summary>Saves a new worksheet, or the next version of one.</summary>
    /// <param name="id">Its id, as <see cref="RecordId"/> allows.</param>
    /// <param name="worksheet">The decisions.</param>
    /// <param name="basedOn">The version it was made from; null for a worksheet that is not there yet.</param>
    /// <param name="demo">Whether it comes with the demo studio.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    /// <returns>Saved also where the same document stands already: a save that was sent twice is no conflict.</returns>
    public Task<WorksheetOutcome> SaveAsync(string id, Worksheet worksheet, int? basedOn, bool demo = false, CancellationToken cancel = default)
    {
        string sound = RecordId.Parse(id).Value;
        ArgumentNullException.ThrowIfNull(worksheet);
        string document = Encoding.UTF8.GetString(WorksheetWriter.Write(worksheet));
        return _work.WriteAsync(studio => SaveAsync(studio, sound, new Draft(document, worksheet.Title, null, demo), basedOn, cancel), cancel);
    }

    /// <summary>Makes an earlier save the next version; the saves between stay in the history.</summary>
    /// <param name="id">The worksheet.</param>
    /// <param name="version">The save to bring back.</param>
    /// <param name="basedOn">The version that was seen last.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    public Task<WorksheetOutcome> RestoreAsync(string id, int version, int basedOn, CancellationToken cancel = default) => _work.WriteAsync(
        async studio => await studio.WorksheetSaves.AsNoTracking().SingleOrDefaultAsync(s => s.WorksheetId == id && s.Version == version, cancel) is { } earlier
            ? await SaveAsync(studio, id, new Draft(earlier.Document, earlier.Title, version, false), basedOn, cancel)
            : new WorksheetOutcome.NotThere(),
        cancel);

    /// <summary>Puts a worksheet out of sight, or back in its place. Nothing of it is lost.</summary>
    /// <param name="id">The worksheet.</param>
    /// <param name="away">Whether it is to be out of sight.</param>
    /// <param name="cancel">Calls it off, unless it is being written already.</param>
    /// <returns>Whether there is such a worksheet.</returns>
    public Task<bool> PutAwayAsync(string id, bool away, CancellationToken cancel = default) => _work.WriteAsync(
        async studio =>
        {
            if (await studio.Worksheets.FindAsync([id], cancel) is not { } row) return false;
            row.IsPutAway = away;
            return true;
        },
        cancel);

    private async Task<WorksheetOutcome> SaveAsync(StudioContext studio, string id, Draft draft, int? basedOn, CancellationToken cancel)
    {
        WorksheetRow? row = await studio.Worksheets.FindAsync([id], cancel);
        if (row is null && basedOn is not null) return new WorksheetOutcome.NotThere();
        bool created = row is null;
        if (row is not null)
        {
            KeptWorksheet current = (await CurrentAsync(studio, id, cancel))!;
            bool same = string.Equals(current.Document, draft.Document, StringComparison.Ordinal);
            if (same && draft.RestoredFrom is null && !row.IsPutAway) return new WorksheetOutcome.Saved(new SavedWorksheet(id, current.Version, current.SavedAt), false);
            if (row.Version != basedOn) return new WorksheetOutcome.Conflict(current);
        }

        row ??= studio.Worksheets.Add(new WorksheetRow { Id = id, Title = draft.Title }).Entity;
        row.Title = draft.Title;
        row.Version++;
        row.SavedAt = _work.Now();
        row.IsPutAway = false;
        row.IsDemo = draft.IsDemo;
        studio.WorksheetSaves.Add(new WorksheetSaveRow
        {
            WorksheetId = id,
            Version = row.Version,
            SavedAt = row.SavedAt,
            Title = draft.Title,
            Document = draft.Document,
            RestoredFrom = draft.RestoredFrom,
        });
        return new WorksheetOutcome.Saved(new SavedWorksheet(id, row.Version, row.SavedAt), created);
    }

    private static async Task<KeptWorksheet?> CurrentAsync(StudioContext studio, string id, CancellationToken cancel) =>
        await studio.Worksheets.AsNoTracking().SingleOrDefaultAsync(w => w.Id == id, cancel) is { } row ? await SaveAsync(studio, id, row.Version, cancel) : null;

    private static Task<KeptWorksheet?> SaveAsync(StudioContext studio, string id, int version, CancellationToken cancel) => studio.WorksheetSaves
        .Where(s => s.WorksheetId == id && s.Version == version)
        .Select(s => new KeptWorksheet(s.WorksheetId, s.Version, s.SavedAt, s.Document))
        .SingleOrDefaultAsync(cancel);

    private sealed record Draft(string Document, string Title, int? RestoredFrom, bool IsDemo);
}
