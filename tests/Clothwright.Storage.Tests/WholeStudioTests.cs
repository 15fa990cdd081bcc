using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Bundles;
using Clothwright.TestKit;

namespace Clothwright.Storage.Tests;

/// <summary>A studio that uses every column of every table goes into a file and out of it, and nothing is lost.</summary>
public class WholeStudioTests
{
    // Columns that are empty in this studio by their nature: a demo record is never one of her own.
    private static readonly string[] AlwaysOne = ["bench.Id", "bench.IsDemo"];

    [Fact]
    public async Task Every_cell_of_every_table_and_every_photo_comes_through_packing_and_unpacking()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        byte[][] photographs = await FillAsync(fresh.Studio);
        await using StudioContext tables = fresh.Tables();
        var before = await EveryTable.OfAsync(tables);
        Assert.Equal(14, before.Count);
        Assert.Equal("", Unused(before));

        using var bundle = new MemoryStream();
        await fresh.Studio.Bundles.PackAsync(bundle);
        bundle.Position = 0;
        await using FreshStudio other = await FreshStudio.OpenAsync();
        BundleCounts counts = (await other.Studio.Bundles.UnpackAsync(bundle)).Value;
        Assert.Equal(photographs.Length, counts.Photos);
        await using StudioContext arrived = other.Tables();
        var after = await EveryTable.OfAsync(arrived);
        foreach ((string table, var rows) in before)
        {
            Assert.Equal(rows.Count, after[table].Count);
            foreach ((int place, var row) in rows.Index()) Assert.Equal($"{table} {string.Join("; ", row)}", $"{table} {string.Join("; ", after[table][place])}");
        }

        YarnPhoto[] kept = await other.Studio.Photos.ListAsync();
        foreach ((int place, byte[] photograph) in photographs.Index()) Assert.Equal(photograph, await other.Studio.Photos.FindAsync(kept[place].Id));
    }

    [Fact]
    public async Task A_studio_goes_through_two_files_unchanged()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await FillAsync(fresh.Studio);
        await using FreshStudio second = await FreshStudio.OpenAsync();
        await CarryAsync(fresh.Studio, second.Studio);
        await using FreshStudio third = await FreshStudio.OpenAsync();
        await CarryAsync(second.Studio, third.Studio);
        await using StudioContext first = fresh.Tables();
        await using StudioContext last = third.Tables();
        Assert.Equal(Lines(await EveryTable.OfAsync(first)), Lines(await EveryTable.OfAsync(last)));
    }

    private static async Task CarryAsync(Studio from, Studio to)
    {
        using var bundle = new MemoryStream();
        await from.Bundles.PackAsync(bundle);
        bundle.Position = 0;
        Assert.True((await to.Bundles.UnpackAsync(bundle)).Succeeded);
    }

    private static IEnumerable<string> Lines(SortedDictionary<string, List<SortedDictionary<string, string>>> tables) =>
        tables.SelectMany(t => t.Value.Select(row => $"{t.Key} {string.Join("; ", row)}"));

    // A column in which every row holds the same nothing would prove nothing.
    private static string Unused(SortedDictionary<string, List<SortedDictionary<string, string>>> tables) => string.Join(", ",
        from table in tables
        from column in table.Value.Count == 0 ? ["(no row)"] : table.Value[0].Keys.ToArray()
        where table.Value.Count == 0 || table.Value.All(row => row[column] is "null" or "" or "0" or "[]" or "False")
        select $"{table.Key}.{column}" into named
        where !AlwaysOne.Contains(named) && named is not ("swatches.IsDemo" or "weaving_log.IsDemo")
        select named);

    // As it comes from the page: text holds twelve decimals, which no scale or ruler has.
    private static YarnEntry Sent(YarnEntry yarn) => ShelfText.ReadYarn(ShelfText.Write(yarn)).Value;

    private static async Task<byte[][]> FillAsync(Studio studio)
    {
        await studio.Worksheets.SaveAsync("creek", FreshStudio.Sheet("first"), basedOn: null);
        await studio.Worksheets.SaveAsync("creek", FreshStudio.Sheet("second; “ebb” <b>&amp;</b> ½"), basedOn: 1);
        await studio.Worksheets.RestoreAsync("creek", version: 1, basedOn: 2);
        await studio.Worksheets.SaveAsync("old", FreshStudio.Sheet("old", "heron-shawl"), basedOn: null);
        await studio.Worksheets.PutAwayAsync("old", away: true);
        await studio.Worksheets.SaveAsync("demo", FreshStudio.Sheet("demo"), basedOn: null, demo: true);

        YarnEntry[] yarns = [.. FreshStudio.Samples().SelectMany(s => s.Shelf).DistinctBy(y => y.Id)];
        foreach (YarnEntry yarn in yarns) await studio.Shelf.KeepAsync(Sent(yarn), basedOn: null, demo: yarn == yarns[^1]);
        YarnEntry full = yarns[0] with
        {
            Label = null,
            Count = null,
            CountSystem = null,
            LinearDensity = LinearDensity.FromTex(1000 / 7.0),
            Wraps = Sett.FromPerInch(33.3),
            Colour = SrgbColour.Parse("#2F5D73").Value,
            Offer = new YarnOffer(PackageForm.Cone, Mass.FromGrams(500), Money.FromAmount(23.95)),
            Packages =
            [
                new YarnPackage(PackageForm.Cone, Mass.FromGrams(231.7), Mass.FromGrams(38.2)) { Lot = "tide 7", RelativeHumidity = Ratio.FromPercent(61), Basis = MassBasis.Weighed },
                new YarnPackage(PackageForm.Skein, Mass.FromGrams(100), Mass.Zero) { Basis = MassBasis.Told },
            ],
        };
        await studio.Shelf.KeepAsync(Sent(full), basedOn: 1);
        await studio.Shelf.KeepAsync(Sent(yarns[1] with { Count = null, CountSystem = null, LinearDensity = null, Label = "400 m / 100 g" }), basedOn: 1);

        BenchDocument bench = RecordTests.Bench();
        await studio.Bench.KeepAsync(
            BenchText.Read(BenchText.Write(bench with
            {
                Looms = [.. bench.Looms, bench.Looms[0] with { Id = "waste", Waste = Length.FromCentimetres(61.3), HeddlesPerShaft = 120 }],
                WarpingTools = [.. bench.WarpingTools, new WarpingTool { Id = "wheel", Name = "sectional wheel", Kind = bench.WarpingTools[0].Kind, SectionCentimetres = 5.08 }],
            })).Value,
            basedOn: null);
        await studio.Swatches.KeepAsync(RecordTests.Swatch, basedOn: null);
        await studio.Swatches.KeepAsync(RecordTests.Swatch with { FinishedGrams = 11.3 }, basedOn: 1);
        await studio.WeavingLog.KeepAsync(RecordTests.Sitting with { PieceIndex = 1 }, basedOn: null);
        await studio.Reservations.KeepAsync(new YarnReservation { YarnId = yarns[0].Id, WorksheetId = "creek", Grams = 120.5, Note = "for the hem" }, basedOn: null);

        // A photograph as a camera makes it, and every byte that there is behind the beginning of one.
        byte[][] photographs = [await File.ReadAllBytesAsync(Repository.PathOf("samples", "photographs", "tide-line-swatch.jpg")), [0xFF, 0xD8, 0xFF, .. Enumerable.Range(0, 256).Select(b => (byte)b)]];
        foreach (byte[] photograph in photographs) Assert.NotNull(await studio.Photos.AddAsync(yarns[0].Id, photograph, 640, 480));
        return photographs;
    }
}
