using System.Collections.Immutable;
using System.Text;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Storage.Benches;
using Clothwright.Storage.Records;
using Clothwright.Storage.Rows;
using Clothwright.Storage.Shelf;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Bundles;

/// <summary>Brings a packed studio in, within one transaction: all of it or nothing.</summary>
internal sealed class BundleUnpacking(StudioContext studio, BundleFile bundle, CancellationToken cancel)
{
    public async Task<BundleCounts> UnpackAsync()
    {
        BundleManifest manifest = await bundle.RecordAsync(BundleNames.Manifest, StudioJson.Default.BundleManifest, cancel);
        if (manifest.ClothwrightStudio != BundleManifest.CurrentVersion)
        {
            throw BundleFile.Problem($"{BundleNames.Manifest}, clothwrightStudio", $"The bundle is of version {manifest.ClothwrightStudio}; this program reads version {BundleManifest.CurrentVersion}.", "Use a newer program.");
        }

        await ClearDemoAsync();
        if (manifest.BenchVersion is { } benchVersion)
        {
            BenchDocument bench = BundleFile.Sound(BundleNames.Bench, BenchText.Read(await bundle.BytesAsync(BundleNames.Bench, BundleLimits.LargestFileBytes, cancel)));
            studio.Add(BenchRows.Row(bench, Numbered(benchVersion, $"{BundleNames.Manifest}, benchVersion"), manifest.DemoBench));
        }

        ImmutableHashSet<string> yarns = await UnpackShelfAsync([.. manifest.DemoYarns ?? []]);
        (int photos, int reserved) = await UnpackPhotosAsync(yarns);
        (int swatches, int sittings) = await UnpackRecordsAsync();
        await SaveAsync();
        int saves = 0;
        foreach (WorksheetSummary worksheet in manifest.Worksheets) saves += await UnpackAsync(worksheet);
        return new BundleCounts(manifest.Worksheets.Length, saves, yarns.Count, swatches, sittings, photos, reserved);
    }

    private async Task ClearDemoAsync()
    {
        if (!await Studio.IsOnlyDemoAsync(studio, cancel))
        {
            throw BundleFile.Problem(StudioBundles.StudioPlace, "This studio holds work of its own already.", "Bring the bundle into an empty studio: start the server with --data and a new folder.");
        }

        await studio.WorksheetSaves.ExecuteDeleteAsync(cancel);
        await studio.Worksheets.ExecuteDeleteAsync(cancel);
        await studio.Yarns.ExecuteDeleteAsync(cancel);
        await studio.Benches.ExecuteDeleteAsync(cancel);
    }

    private async Task<ImmutableHashSet<string>> UnpackShelfAsync(HashSet<string> demo)
    {
        ImmutableArray<Kept<YarnEntry>> yarns = BundleFile.Sound(BundleNames.Shelf, ShelfText.ReadShelf(await bundle.BytesAsync(BundleNames.Shelf, BundleLimits.LargestFileBytes, cancel)));
        RefuseTwins(BundleNames.Shelf, yarns.Select(y => y.Item.Id));
        foreach (Kept<YarnEntry> kept in yarns) Add(YarnRows.Row(kept.Item, demo.Contains(kept.Item.Id)), kept.Version, BundleNames.Shelf);
        return [.. yarns.Select(y => y.Item.Id)];
    }

    // Bundles of earlier versions hold neither photos nor reservations.
    private async Task<(int Photos, int Reserved)> UnpackPhotosAsync(ImmutableHashSet<string> yarns)
    {
        YarnPhoto[] photos = bundle.Has(BundleNames.Photos) ? await bundle.RecordAsync(BundleNames.Photos, StudioJson.Default.YarnPhotoArray, cancel) : [];
        RefuseTwins(BundleNames.Photos, photos.Select(p => p.Id));
        foreach (YarnPhoto photo in photos)
        {
            _ = BundleFile.Sound(BundleNames.Photos, RecordId.Parse(photo.Id));
            if (!yarns.Contains(photo.YarnId)) throw BundleFile.Problem(BundleNames.Photos, $"A photo is of \"{photo.YarnId}\", which is not on the shelf.");
            byte[] jpeg = await bundle.BytesAsync(BundleNames.Photo(photo.Id), UploadLimits.PhotoBytes, cancel);
            if (!jpeg.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])) throw BundleFile.Problem(BundleNames.Photo(photo.Id), "The photo is no JPEG.");
            studio.Add(YarnPhotos.Row(photo, jpeg));
            await SaveAsync();
        }

        Kept<YarnReservation>[] reserved = bundle.Has(BundleNames.Reservations) ? await bundle.RecordAsync(BundleNames.Reservations, StudioJson.Default.KeptYarnReservationArray, cancel) : [];
        RefuseTwins(BundleNames.Reservations, reserved.Select(r => $"{r.Item.YarnId} / {r.Item.WorksheetId}"));
        foreach (Kept<YarnReservation> kept in reserved) studio.Add(YarnReservations.Row(BundleFile.Sound(BundleNames.Reservations, RecordChecks.Checked(kept.Item)), Numbered(kept.Version, BundleNames.Reservations)));
        return (photos.Length, reserved.Length);
    }

    private async Task<(int Swatches, int Sittings)> UnpackRecordsAsync()
    {
        Kept<SwatchRecord>[] swatches = await bundle.RecordAsync(BundleNames.Swatches, StudioJson.Default.KeptSwatchRecordArray, cancel);
        RefuseTwins(BundleNames.Swatches, swatches.Select(s => s.Item.Id));
        foreach (Kept<SwatchRecord> kept in swatches) Add(SwatchRows.Row(BundleFile.Sound(BundleNames.Swatches, RecordChecks.Checked(kept.Item))), kept.Version, BundleNames.Swatches);
        Kept<WeavingLogEntry>[] log = await bundle.RecordAsync(BundleNames.WeavingLog, StudioJson.Default.KeptWeavingLogEntryArray, cancel);
        RefuseTwins(BundleNames.WeavingLog, log.Select(e => e.Item.Id));
        foreach (Kept<WeavingLogEntry> kept in log) Add(WeavingLogRows.Row(BundleFile.Sound(BundleNames.WeavingLog, RecordChecks.Checked(kept.Item))), kept.Version, BundleNames.WeavingLog);
        return (swatches.Length, log.Length);
    }

    private async Task<int> UnpackAsync(WorksheetSummary worksheet)
    {
        string id = BundleFile.Sound(BundleNames.Manifest, RecordId.Parse(worksheet.Id));
        string name = BundleNames.History(id);
        WorksheetVersion[] history = [.. (await bundle.RecordAsync(name, StudioJson.Default.WorksheetVersionArray, cancel)).OrderBy(s => s.Version)];
        if (history.Length == 0 || !history.Select(s => s.Version).SequenceEqual(Enumerable.Range(1, history.Length)) || worksheet.Version != history.Length)
        {
            throw BundleFile.Problem(name, $"The {history.Length} saves of \"{id}\" are not numbered from 1 to {worksheet.Version}.");
        }

        if (await studio.Worksheets.AnyAsync(w => w.Id == id, cancel)) throw BundleFile.Problem(BundleNames.Manifest, $"The worksheet \"{id}\" is listed twice.");
        studio.Add(new WorksheetRow { Id = id, Title = history[^1].Title, Version = worksheet.Version, SavedAt = history[^1].SavedAt, IsPutAway = worksheet.PutAway, IsDemo = worksheet.Demo });
        foreach (WorksheetVersion save in history)
        {
            string file = BundleNames.Save(id, save.Version);
            byte[] document = await bundle.BytesAsync(file, UploadLimits.WorksheetBytes, cancel);
            _ = BundleFile.Sound(file, WorksheetReader.Read(document));
            studio.Add(new WorksheetSaveRow
            {
                WorksheetId = id,
                Version = save.Version,
                SavedAt = save.SavedAt,
                Title = save.Title,
                Document = Encoding.UTF8.GetString(document),
                RestoredFrom = save.RestoredFrom,
            });
        }

        await SaveAsync();
        return history.Length;
    }

    private void Add(IKeptRow row, int version, string file)
    {
        _ = BundleFile.Sound(file, RecordId.Parse(row.Id));
        row.Version = Numbered(version, file);
        studio.Add(row);
    }

    private async Task SaveAsync()
    {
        await studio.SaveChangesAsync(cancel);
        studio.ChangeTracker.Clear();
    }

    private static int Numbered(int version, string where) => version >= 1 ? version : throw BundleFile.Problem(where, $"{version} is no number of a save.");

    private static void RefuseTwins(string file, IEnumerable<string> ids)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (string id in ids)
        {
            if (!seen.Add(id)) throw BundleFile.Problem(file, $"\"{id}\" stands twice.");
        }
    }
}
