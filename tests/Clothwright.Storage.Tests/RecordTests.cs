using System.Text;
using System.Text.Json;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Benches;
using Clothwright.Storage.Shelf;

namespace Clothwright.Storage.Tests;

public class RecordTests
{
    public static SwatchRecord Swatch { get; } = new()
    {
        Id = "swatch-1",
        Title = "2/2 twill, tide blue",
        WorksheetId = "creek",
        MeasuredOn = new DateOnly(2026, 3, 2),
        WarpYarnIds = ["tide-blue", "dusk"],
        WeftYarnIds = ["saltmarsh"],
        Weave = "2/2 twill",
        EndsPerCentimetre = 8.1,
        PicksPerCentimetre = 7.9,
        ReedWidthCentimetres = 20,
        WovenLengthCentimetres = 30.3,
        OffLoomWidthCentimetres = 18.7,
        OffLoomLengthCentimetres = 28.4,
        FinishedWidthCentimetres = 17.9,
        FinishedLengthCentimetres = 27.1,
        FinishedGrams = 11.2,
        ThicknessMillimetres = 0.7,
        Finishing = "40 °C, pressed damp",
        Note = "=SUM(A1) is only a note",
    };

    public static WeavingLogEntry Sitting { get; } = new()
    {
        Id = "sitting-1",
        WorksheetId = "creek",
        Begun = new DateTimeOffset(2026, 3, 3, 19, 30, 0, TimeSpan.FromHours(-3.5)),
        Minutes = 95.5,
        Work = "weaving",
        PieceIndex = 0,
        Picks = 412,
        Note = "Neap tide; slow.",
    };

    [Fact]
    public async Task Every_yarn_of_the_samples_comes_off_the_shelf_as_it_went_on()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        YarnEntry[] yarns = [.. FreshStudio.Samples().SelectMany(s => s.Shelf).DistinctBy(y => y.Id)];
        Assert.True(yarns.Length > 10);
        foreach (YarnEntry yarn in yarns) Assert.Equal(new SaveOutcome.Saved(1, true), await fresh.Studio.Shelf.KeepAsync(yarn, basedOn: null));
        foreach (YarnEntry yarn in yarns)
        {
            Kept<YarnEntry> kept = (await fresh.Studio.Shelf.FindAsync(yarn.Id))!;
            Assert.Equal(Text(ShelfText.Write(yarn)), Text(ShelfText.Write(kept.Item)));
        }
    }

    [Fact]
    public void A_yarn_of_every_field_passes_through_the_tables_exactly()
    {
        YarnEntry yarn = FreshStudio.Sheet("x").Shelf[0] with { Wraps = Sett.FromPerInch(33.3), CountSystem = null, Count = null, LinearDensity = LinearDensity.FromTex(1000 / 7.0) };
        YarnEntry back = YarnRows.Yarn(YarnRows.Row(yarn, demo: false));
        Assert.Equal(yarn.LinearDensity!.Value.Tex, back.LinearDensity!.Value.Tex);
        Assert.Equal(yarn.Wraps!.Value.PerMetre, back.Wraps!.Value.PerMetre);
        Assert.Equal(yarn.Packages.AsEnumerable(), back.Packages.AsEnumerable());
        Assert.Equal(yarn.Fibres.AsEnumerable(), back.Fibres.AsEnumerable());
        Assert.Equal(yarn.Offer, back.Offer);
    }

    [Fact]
    public async Task A_yarn_changed_from_an_earlier_version_is_a_conflict()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        YarnEntry yarn = FreshStudio.Sheet("x").Shelf[0];
        await fresh.Studio.Shelf.KeepAsync(yarn, basedOn: null);
        Assert.Equal(new SaveOutcome.Saved(2, false), await fresh.Studio.Shelf.KeepAsync(yarn with { Packages = [.. yarn.Packages, .. yarn.Packages] }, basedOn: 1));
        Assert.Equal(new SaveOutcome.Conflict(2), await fresh.Studio.Shelf.KeepAsync(yarn with { Name = "late" }, basedOn: 1));
        Assert.Equal(new SaveOutcome.Conflict(2), await fresh.Studio.Shelf.RemoveAsync(yarn.Id, basedOn: 1));
        Assert.Equal(2 * yarn.Packages.Length, (await fresh.Studio.Shelf.FindAsync(yarn.Id))!.Item.Packages.Length);
        Assert.IsType<SaveOutcome.Saved>(await fresh.Studio.Shelf.RemoveAsync(yarn.Id, basedOn: 2));
        Assert.Empty(await fresh.Studio.Shelf.ListAsync());
        Assert.IsType<SaveOutcome.NotThere>(await fresh.Studio.Shelf.RemoveAsync(yarn.Id, basedOn: 2));
    }

    [Fact]
    public async Task Of_many_yarns_with_one_bad_id_none_is_kept()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        YarnEntry yarn = FreshStudio.Sheet("x").Shelf[0];
        var refusal = await Assert.ThrowsAsync<InputProblemException>(() => fresh.Studio.Shelf.KeepAllAsync([yarn, yarn with { Id = "no/where" }]));
        Assert.Equal("yarns[1].id", refusal.Problem.Where);
        Assert.Empty(await fresh.Studio.Shelf.ListAsync());
    }

    [Fact]
    public async Task The_bench_comes_back_as_it_was_saved()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        Assert.Null(await fresh.Studio.Bench.FindAsync());
        BenchDocument bench = Bench();
        Assert.Equal(new SaveOutcome.Saved(1, true), await fresh.Studio.Bench.KeepAsync(bench, basedOn: null));
        Kept<BenchDocument> kept = (await fresh.Studio.Bench.FindAsync())!;
        Assert.Equal(Text(BenchText.Write(bench)), Text(BenchText.Write(kept.Item)));
        Assert.Equal(new SaveOutcome.Saved(2, false), await fresh.Studio.Bench.KeepAsync(bench with { Reeds = [] }, basedOn: 1));
        Assert.Equal(new SaveOutcome.Conflict(2), await fresh.Studio.Bench.KeepAsync(bench, basedOn: 1));
        Assert.Empty((await fresh.Studio.Bench.FindAsync())!.Item.Reeds);
    }

    [Fact]
    public void A_bench_reads_back_from_its_own_text()
    {
        byte[] written = BenchText.Write(Bench());
        Assert.Equal(Text(written), Text(BenchText.Write(BenchText.Read(written).Value)));
        BenchDocument back = BenchRows.Bench(BenchRows.Row(Bench(), 1, demo: false));
        Assert.Equal(Bench().Looms.AsEnumerable(), back.Looms.AsEnumerable());
        Assert.Equal(Bench().WarpingTools.AsEnumerable(), back.WarpingTools.AsEnumerable());
    }

    [Fact]
    public async Task A_swatch_record_comes_back_with_every_measure()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await fresh.Studio.Swatches.KeepAsync(Swatch, basedOn: null);
        Kept<SwatchRecord> kept = (await fresh.Studio.Swatches.FindAsync(Swatch.Id))!;
        Assert.Equal(JsonSerializer.Serialize(Swatch, StudioJson.Default.SwatchRecord), JsonSerializer.Serialize(kept.Item, StudioJson.Default.SwatchRecord));
        Assert.Equal(new SaveOutcome.Saved(2, false), await fresh.Studio.Swatches.KeepAsync(Swatch with { FinishedGrams = 11.3 }, basedOn: 1));
        Assert.Equal(new SaveOutcome.Conflict(2), await fresh.Studio.Swatches.RemoveAsync(Swatch.Id, basedOn: 1));
        await fresh.Studio.Swatches.RemoveAsync(Swatch.Id, basedOn: 2);
        Assert.Empty(await fresh.Studio.Swatches.ListAsync());
    }

    [Fact]
    public async Task A_measure_that_cannot_be_right_is_refused_with_its_value()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        var refusal = await Assert.ThrowsAsync<InputProblemException>(() => fresh.Studio.Swatches.KeepAsync(Swatch with { FinishedGrams = -3 }, basedOn: null));
        Assert.Equal("finishedGrams", refusal.Problem.Where);
        Assert.Contains("-3", refusal.Problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sittings_come_back_in_the_order_of_time_with_the_hour_as_written()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        WeavingLogEntry earlier = Sitting with { Id = "sitting-0", Begun = Sitting.Begun.AddHours(-1).ToUniversalTime() };
        await fresh.Studio.WeavingLog.KeepAsync(Sitting, basedOn: null);
        await fresh.Studio.WeavingLog.KeepAsync(earlier, basedOn: null);
        await fresh.Studio.WeavingLog.KeepAsync(Sitting with { Id = "elsewhere", WorksheetId = "other" }, basedOn: null);
        Kept<WeavingLogEntry>[] log = await fresh.Studio.WeavingLog.ListAsync("creek");
        Assert.Equal([earlier, Sitting], log.Select(e => e.Item));
        Assert.Equal(Sitting.Begun.Offset, log[1].Item.Begun.Offset);
        Assert.Equal(3, (await fresh.Studio.WeavingLog.ListAsync()).Length);
    }

    public static BenchDocument Bench() => new()
    {
        Looms = [.. FreshStudio.Samples().SelectMany(s => s.Looms).DistinctBy(l => l.Id)],
        Reeds = [.. FreshStudio.Samples().SelectMany(s => s.Reeds).DistinctBy(r => r.Name)],
        Heddles = [.. FreshStudio.Samples().SelectMany(s => s.Heddles).DistinctBy(h => h.Name)],
        WarpingTools = [new WarpingTool { Id = "mill", Name = "mill", Kind = WarpingToolKind.Mill, LongestWarpMetres = 31.5, TurnCentimetres = 201 }],
    };

    private static string Text(byte[] utf8) => Encoding.UTF8.GetString(utf8);
}
