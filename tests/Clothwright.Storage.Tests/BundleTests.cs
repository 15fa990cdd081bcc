using System.IO.Compression;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Bundles;

namespace Clothwright.Storage.Tests;

public class BundleTests
{
    [Fact]
    public async Task A_packed_studio_unpacks_with_nothing_lost()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await FillAsync(fresh);
        using MemoryStream bundle = await PackAsync(fresh.Studio);
        await using FreshStudio other = await FreshStudio.OpenAsync();
        Parsed<BundleCounts> counts = await other.Studio.Bundles.UnpackAsync(bundle);
        Assert.Equal(new BundleCounts(2, 4, 3, 1, 1), counts.Value);
        using MemoryStream again = await PackAsync(other.Studio);
        Dictionary<string, string> first = Files(bundle);
        Dictionary<string, string> second = Files(again);
        Assert.Equal(first.Keys.Order(StringComparer.Ordinal), second.Keys.Order(StringComparer.Ordinal));
        foreach ((string name, string text) in first.Where(f => f.Key != BundleNames.Manifest)) Assert.Equal(text, second[name]);
        Assert.Equal(await fresh.Studio.Worksheets.ListAsync(putAway: true), await other.Studio.Worksheets.ListAsync(putAway: true));
        Assert.Equal(await fresh.Studio.Worksheets.ListAsync(), await other.Studio.Worksheets.ListAsync());
    }

    [Fact]
    public async Task A_bundle_holds_open_formats_beside_its_own()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await FillAsync(fresh);
        using MemoryStream bundle = await PackAsync(fresh.Studio);
        Dictionary<string, string> files = Files(bundle);
        Assert.StartsWith("[WIF]", files["worksheets/creek/draft.wif"], StringComparison.Ordinal);
        Assert.StartsWith("id,", files["shelf.csv"], StringComparison.Ordinal);
        // A spreadsheet must not run a note as a formula.
        Assert.Contains("'=SUM(A1)", files["swatches.csv"], StringComparison.Ordinal);
        Assert.Contains("2026-03-03T19:30:00.0000000-03:30", files["weaving-log.csv"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_studio_with_work_of_its_own_takes_no_bundle()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await FillAsync(fresh);
        using MemoryStream bundle = await PackAsync(fresh.Studio);
        Parsed<BundleCounts> counts = await fresh.Studio.Bundles.UnpackAsync(bundle);
        Assert.Equal(StudioBundles.StudioPlace, counts.Problem!.Where);
        Assert.Equal(3, (await fresh.Studio.Worksheets.HistoryAsync("creek")).Length);
    }

    [Fact]
    public async Task The_demo_studio_as_it_came_gives_way_and_a_touched_one_does_not()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await FillAsync(fresh);
        using MemoryStream bundle = await PackAsync(fresh.Studio);
        await using FreshStudio demo = await FreshStudio.OpenAsync();
        await demo.Studio.Worksheets.SaveAsync("demo", FreshStudio.Sheet("demo"), null, demo: true);
        await demo.Studio.Shelf.KeepAsync(FreshStudio.Sheet("demo").Shelf[0], null, demo: true);
        await demo.Studio.Bench.KeepAsync(RecordTests.Bench(), null, demo: true);
        Assert.True(await demo.Studio.IsOnlyDemoAsync());
        Assert.True((await demo.Studio.Bundles.UnpackAsync(bundle)).Succeeded);
        Assert.Null(await demo.Studio.Worksheets.FindAsync("demo"));
        Assert.False(await demo.Studio.IsOnlyDemoAsync());

        await using FreshStudio touched = await FreshStudio.OpenAsync();
        await touched.Studio.Worksheets.SaveAsync("demo", FreshStudio.Sheet("demo"), null, demo: true);
        await touched.SaveAsync("demo", "mine now", basedOn: 1);
        Assert.False((await touched.Studio.Bundles.UnpackAsync(bundle)).Succeeded);
        Assert.Equal(2, (await touched.Studio.Worksheets.HistoryAsync("demo")).Length);
    }

    [Theory]
    [InlineData("worksheets/creek/history/0002.json", null, "holds no file")]
    [InlineData("worksheets/creek/history/0002.json", "{", "not well-formed JSON")]
    [InlineData("worksheets/creek/history.json", "[]", "are not numbered")]
    [InlineData("shelf.json", "{ \"yarns\": 3 }", "where a list belongs")]
    [InlineData("swatches.json", "[{\"version\":0,\"item\":{\"id\":\"s\",\"title\":\"t\"}}]", "0 is no number of a save")]
    [InlineData("clothwright.json", "{\"clothwrightStudio\":2,\"packedAt\":\"2026-03-01T00:00:00Z\",\"worksheets\":[]}", "of version 2")]
    public async Task A_bundle_with_a_bad_file_is_refused_whole_and_says_which(string file, string? text, string what)
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        await FillAsync(fresh);
        using MemoryStream bundle = await PackAsync(fresh.Studio);
        using (var zip = new ZipArchive(bundle, ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.GetEntry(file)!.Delete();
            if (text is not null)
            {
                using var writer = new StreamWriter(zip.CreateEntry(file).Open());
                writer.Write(text);
            }
        }

        bundle.Position = 0;
        await using FreshStudio other = await FreshStudio.OpenAsync();
        InputProblem problem = (await other.Studio.Bundles.UnpackAsync(bundle)).Problem!;
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.StartsWith(file, problem.Where, StringComparison.Ordinal);
        Assert.True(await other.Studio.IsBareAsync());
    }

    [Fact]
    public async Task What_is_no_zip_file_is_refused()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        using var stream = new MemoryStream("a letter, not a bundle"u8.ToArray());
        Assert.Contains("no zip file", (await fresh.Studio.Bundles.UnpackAsync(stream)).Problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_unpacks_to_more_than_its_limit_is_refused()
    {
        await using FreshStudio fresh = await FreshStudio.OpenAsync();
        using var bundle = new MemoryStream();
        using (var zip = new ZipArchive(bundle, ZipArchiveMode.Create, leaveOpen: true))
        {
            using Stream entry = zip.CreateEntry(BundleNames.Manifest).Open();
            byte[] blank = new byte[1024 * 1024];
            for (int i = 0; i <= BundleLimits.LargestFileBytes / blank.Length; i++) entry.Write(blank);
        }

        bundle.Position = 0;
        Assert.Contains("unpacks to more than", (await fresh.Studio.Bundles.UnpackAsync(bundle)).Problem!.What, StringComparison.Ordinal);
    }

    private static async Task FillAsync(FreshStudio fresh)
    {
        await fresh.SaveAsync("creek", "first", basedOn: null);
        await fresh.SaveAsync("creek", "second", basedOn: 1);
        await fresh.Studio.Worksheets.RestoreAsync("creek", version: 1, basedOn: 2);
        await fresh.SaveAsync("old", "old", basedOn: null);
        await fresh.Studio.Worksheets.PutAwayAsync("old", away: true);
        foreach (YarnEntry yarn in FreshStudio.Sheet("x").Shelf) await fresh.Studio.Shelf.KeepAsync(yarn, basedOn: null);
        await fresh.Studio.Shelf.KeepAsync(FreshStudio.Sheet("x").Shelf[0] with { Name = "renamed" }, basedOn: 1);
        await fresh.Studio.Bench.KeepAsync(RecordTests.Bench(), basedOn: null);
        await fresh.Studio.Swatches.KeepAsync(RecordTests.Swatch, basedOn: null);
        await fresh.Studio.WeavingLog.KeepAsync(RecordTests.Sitting, basedOn: null);
    }

    private static async Task<MemoryStream> PackAsync(Studio studio)
    {
        var stream = new MemoryStream();
        await studio.Bundles.PackAsync(stream);
        stream.Position = 0;
        return stream;
    }

    private static Dictionary<string, string> Files(MemoryStream bundle)
    {
        bundle.Position = 0;
        using var zip = new ZipArchive(bundle, ZipArchiveMode.Read, leaveOpen: true);
        return zip.Entries.ToDictionary(e => e.FullName, e => new StreamReader(e.Open()).ReadToEnd());
    }
}
