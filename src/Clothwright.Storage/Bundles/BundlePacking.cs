using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Csv;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Storage.Benches;
using Clothwright.Storage.Records;
using Clothwright.Storage.Rows;
using Clothwright.Storage.Shelf;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage.Bundles;

/// <summary>Packs everything, within one transaction: what is packed belongs together.</summary>
internal sealed class BundlePacking(StudioContext studio, ZipArchive zip, DateTimeOffset now, CancellationToken cancel)
{
    public async Task PackAsync()
    {
        WorksheetSummary[] worksheets = await studio.Worksheets.AsNoTracking()
            .OrderBy(w => w.Id)
            .Select(w => new WorksheetSummary(w.Id, w.Title, w.Version, w.SavedAt, w.IsPutAway, w.IsDemo))
            .ToArrayAsync(cancel);
        BenchRow? bench = await BenchKeeper.Whole(studio).AsNoTracking().SingleOrDefaultAsync(cancel);
        string[] demoYarns = await studio.Yarns.Where(y => y.IsDemo).OrderBy(y => y.Id).Select(y => y.Id).ToArrayAsync(cancel);
        var manifest = new BundleManifest(BundleManifest.CurrentVersion, now, worksheets, bench?.Version, demoYarns.Length == 0 ? null : demoYarns, bench?.IsDemo ?? false);
        await RecordAsync(BundleNames.Manifest, manifest, StudioJson.Default.BundleManifest);
        if (bench is not null) await FileAsync(BundleNames.Bench, BenchText.Write(BenchRows.Bench(bench)));
        await PackShelfAsync();
        await PackPhotosAsync();
        await PackRecordsAsync();
        foreach (WorksheetSummary worksheet in worksheets) await PackAsync(worksheet);
    }

    private async Task PackShelfAsync()
    {
        List<YarnRow> rows = await YarnShelf.Whole(studio).AsNoTracking().OrderBy(y => y.Id).ToListAsync(cancel);
        Kept<YarnEntry>[] yarns = [.. rows.Select(YarnShelf.Kept)];
        await FileAsync(BundleNames.Shelf, ShelfText.Write(yarns));
        // A yarn whose count cannot be read yet stands in the JSON only.
        IEnumerable<Yarn> readable = yarns.Select(y => y.Item.ToYarn()).Where(y => y.Succeeded).Select(y => y.Value);
        await TextAsync(BundleNames.ShelfTable, YarnShelfTable.Write(readable));
    }

    private async Task PackPhotosAsync()
    {
        Kept<YarnReservation>[] reserved = [.. (await studio.Reservations.AsNoTracking().OrderBy(r => r.YarnId).ThenBy(r => r.WorksheetId).ToListAsync(cancel)).Select(YarnReservations.Kept)];
        await RecordAsync(BundleNames.Reservations, reserved, StudioJson.Default.KeptYarnReservationArray);
        var photos = new List<YarnPhoto>();
        await foreach (YarnPhotoRow row in studio.YarnPhotos.AsNoTracking().OrderBy(p => p.AddedAt).ThenBy(p => p.Id).AsAsyncEnumerable().WithCancellation(cancel))
        {
            photos.Add(new YarnPhoto(row.Id, row.YarnId, row.AddedAt, row.WidthPixels, row.HeightPixels));
            await FileAsync(BundleNames.Photo(row.Id), row.Jpeg);
        }

        await RecordAsync(BundleNames.Photos, [.. photos], StudioJson.Default.YarnPhotoArray);
    }

    private async Task PackRecordsAsync()
    {
        Kept<SwatchRecord>[] swatches = [.. (await studio.Swatches.AsNoTracking().OrderBy(s => s.Id).ToListAsync(cancel)).Select(r => new Kept<SwatchRecord>(r.Version, SwatchRows.Swatch(r)))];
        await RecordAsync(BundleNames.Swatches, swatches, StudioJson.Default.KeptSwatchRecordArray);
        await TextAsync(BundleNames.SwatchTable, RecordTables.Swatches(swatches.Select(s => s.Item)));
        Kept<WeavingLogEntry>[] log = [.. (await studio.WeavingLog.AsNoTracking().OrderBy(e => e.Id).ToListAsync(cancel)).Select(r => new Kept<WeavingLogEntry>(r.Version, WeavingLogRows.Entry(r)))];
        await RecordAsync(BundleNames.WeavingLog, log, StudioJson.Default.KeptWeavingLogEntryArray);
        await TextAsync(BundleNames.WeavingLogTable, RecordTables.WeavingLog(log.Select(e => e.Item)));
    }

    private async Task PackAsync(WorksheetSummary worksheet)
    {
        var history = new List<WorksheetVersion>();
        await foreach (WorksheetSaveRow save in studio.WorksheetSaves.AsNoTracking().Where(s => s.WorksheetId == worksheet.Id).OrderBy(s => s.Version).AsAsyncEnumerable().WithCancellation(cancel))
        {
            history.Add(new WorksheetVersion(save.Version, save.SavedAt, save.Title, save.RestoredFrom));
            await TextAsync(BundleNames.Save(worksheet.Id, save.Version), save.Document);
            if (save.Version != worksheet.Version) continue;
            await TextAsync(BundleNames.Worksheet(worksheet.Id), save.Document);
            if (Wif(save.Document) is { } wif) await FileAsync(BundleNames.Draft(worksheet.Id), wif);
        }

        await RecordAsync(BundleNames.History(worksheet.Id), [.. history], StudioJson.Default.WorksheetVersionArray);
    }

    // The draft alone, for other programs; none where the weave cannot be made yet.
    private static byte[]? Wif(string document) =>
        WorksheetReader.Read(Encoding.UTF8.GetBytes(document)).TryGet(out Worksheet? worksheet)
        && worksheet.Weave.Resolve().TryGet(out Core.Weaves.Structures.Weave? weave)
        && DraftFiles.Write(new WovenDraft(weave.Draft, WovenThreads.Plain, WovenThreads.Plain), "draft.wif").TryGet(out byte[]? wif)
            ? wif
            : null;

    private Task RecordAsync<T>(string name, T record, JsonTypeInfo<T> form) => FileAsync(name, JsonSerializer.SerializeToUtf8Bytes(record, form));

    private Task TextAsync(string name, string text) => FileAsync(name, Encoding.UTF8.GetBytes(text));

    private async Task FileAsync(string name, byte[] bytes)
    {
        ZipArchiveEntry entry = zip.CreateEntry(name, CompressionLevel.Fastest);
        entry.LastWriteTime = now;
        await using Stream stream = await entry.OpenAsync(cancel);
        await stream.WriteAsync(bytes, cancel);
    }
}
