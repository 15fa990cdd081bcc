using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Clothwright.Interchange.Http;

namespace Clothwright.Server.Tests;

public class RecordAddressTests
{
    private const string Yarn = """{ "id": "tide-blue", "name": "tide blue", "count": "8/2", "system": "cotton", "fibres": [ { "fibre": "bamboo-viscose" } ], "colour": "#2f5f77" }""";

    [Fact]
    public async Task A_yarn_is_put_on_the_shelf_changed_and_taken_off()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        Assert.Equal(HttpStatusCode.Created, (await server.PutAsync("api/shelf/yarns/tide-blue", Yarn, basedOn: null)).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent, (await server.PutAsync("api/shelf/yarns/tide-blue", Yarn.Replace("tide blue", "slack blue", StringComparison.Ordinal), basedOn: 1)).StatusCode);
        ProblemReport late = await StudioServer.RefusalAsync(await server.PutAsync("api/shelf/yarns/tide-blue", Yarn, basedOn: 1), HttpStatusCode.PreconditionFailed);
        Assert.Equal(2, late.CurrentVersion);
        Kept<Core.Worksheets.YarnEntry> kept = Assert.Single(ShelfText.ReadShelf(await server.Http.GetByteArrayAsync("api/shelf")).Value);
        Assert.Equal((2, "slack blue"), (kept.Version, kept.Item.Name));
        Assert.Equal(HttpStatusCode.NoContent, (await server.SendAsync(HttpMethod.Delete, "api/shelf/yarns/tide-blue", r => r.Headers.TryAddWithoutValidation("If-Match", "\"2\""))).StatusCode);
        await StudioServer.RefusalAsync(await server.Http.GetAsync("api/shelf/yarns/tide-blue"), HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task A_yarn_sent_to_the_address_of_another_is_refused()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        ProblemReport report = await StudioServer.RefusalAsync(await server.PutAsync("api/shelf/yarns/dusk", Yarn, basedOn: null), HttpStatusCode.BadRequest);
        Assert.Contains("tide-blue", report.What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shelf_goes_out_as_a_table_and_comes_in_again()
    {
        await using StudioServer server = await StudioServer.StartAsync(demo: true);
        string table = await server.Http.GetStringAsync("api/shelf/table.csv");
        await using StudioServer other = await StudioServer.StartAsync();
        using var content = new StringContent(table, Encoding.UTF8, "text/csv");
        Assert.Equal(HttpStatusCode.NoContent, (await other.Http.PostAsync("api/shelf/table.csv", content)).StatusCode);
        string[] lines = (await other.Http.GetStringAsync("api/shelf/table.csv")).Split("\r\n");
        // A count read from 8/2 has its spread; the table's tex is the number itself, so that column may differ.
        Assert.Equal(table.Split("\r\n").Select(l => l.Split(',')[0]), lines.Select(l => l.Split(',')[0]));
    }

    [Fact]
    public async Task A_bench_that_was_never_saved_is_empty_and_can_be_saved()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage empty = await server.Http.GetAsync("api/bench");
        Assert.Null(empty.Headers.ETag);
        Assert.Empty(BenchText.Read(await empty.Content.ReadAsByteArrayAsync()).Value.Looms);
        const string bench = """{ "looms": [], "reeds": [ { "name": "10-dent", "dentsPerInch": 10 } ], "warpingTools": [ { "id": "mill", "kind": "mill" } ] }""";
        Assert.Equal(HttpStatusCode.Created, (await server.PutAsync("api/bench", bench, basedOn: null)).StatusCode);
        await StudioServer.RefusalAsync(await server.PutAsync("api/bench", bench, basedOn: null), HttpStatusCode.PreconditionFailed);
        string twins = bench.Replace("{ \"id\": \"mill\", \"kind\": \"mill\" }", "{ \"id\": \"mill\", \"kind\": \"mill\" }, { \"id\": \"mill\", \"kind\": \"board\" }", StringComparison.Ordinal);
        ProblemReport report = await StudioServer.RefusalAsync(await server.PutAsync("api/bench", twins, basedOn: 1), HttpStatusCode.BadRequest);
        Assert.Equal("warpingTools[1].id", report.Where);
    }

    [Fact]
    public async Task A_swatch_record_needs_no_more_than_an_id_and_a_title()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        Assert.Equal(HttpStatusCode.Created, (await server.PutAsync("api/swatches/s1", """{ "id": "s1", "title": "first" }""", basedOn: null)).StatusCode);
        SwatchRecord swatch = JsonSerializer.Deserialize(await server.Http.GetStringAsync("api/swatches/s1"), StudioJson.Default.SwatchRecord)!;
        Assert.Equal(("first", "", null), (swatch.Title, swatch.Note, swatch.FinishedGrams));
    }

    [Theory]
    [InlineData("""{ "id": "s1" }""", "\"title\" is missing")]
    [InlineData("""{ "id": "s1", "title": "t", "finishedGrams": -1 }""", "-1")]
    [InlineData("""{ "id": "s1", "title": "t", "finishedOunces": 1 }""", "no field called \"finishedOunces\"")]
    [InlineData("""{ "id": "s1", "title": "t", "measuredOn": "last week" }""", "measuredOn")]
    [InlineData("""{ "id": "s1", "title": "t", "warpYarnIds": [ "no/where" ] }""", "no/where")]
    [InlineData("""{ "id": "s1", "title": null }""", "title")]
    [InlineData("null", "null")]
    public async Task A_swatch_record_that_cannot_be_kept_is_refused_with_its_fault(string json, string named)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        ProblemReport report = await StudioServer.RefusalAsync(await server.PutAsync("api/swatches/s1", json, basedOn: null), HttpStatusCode.BadRequest);
        Assert.Contains(named, report.What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sittings_are_listed_for_one_worksheet()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.PutAsync("api/weaving-log/a", """{ "id": "a", "worksheetId": "creek", "begun": "2026-03-03T19:30:00+01:00", "picks": 200 }""", basedOn: null);
        await server.PutAsync("api/weaving-log/b", """{ "id": "b", "worksheetId": "ford", "begun": "2026-03-02T19:30:00+01:00" }""", basedOn: null);
        Kept<WeavingLogEntry> kept = Assert.Single(JsonSerializer.Deserialize(await server.Http.GetStringAsync("api/weaving-log?worksheet=creek"), StudioJson.Default.KeptWeavingLogEntryArray)!);
        Assert.Equal(200, kept.Item.Picks);
        Assert.Equal(TimeSpan.FromHours(1), kept.Item.Begun.Offset);
    }

    [Fact]
    public async Task A_studio_is_packed_and_brought_in_over_the_demo_studio()
    {
        await using StudioServer server = await StudioServer.StartAsync(demo: true);
        await server.SaveAsync("creek", "mine", basedOn: null);
        byte[] bundle = await server.Http.GetByteArrayAsync("api/bundle.zip");
        await using StudioServer other = await StudioServer.StartAsync(demo: true);
        using HttpResponseMessage came = await other.Http.PostAsync("api/bundle.zip", Zip(bundle));
        Assert.Equal(HttpStatusCode.OK, came.StatusCode);
        Assert.Equal(StudioServer.Sheet("mine"), await other.Http.GetStringAsync("api/worksheets/creek"));
        ProblemReport again = await StudioServer.RefusalAsync(await other.Http.PostAsync("api/bundle.zip", Zip(bundle)), HttpStatusCode.Conflict);
        Assert.Equal("studio", again.Where);
        await StudioServer.RefusalAsync(await server.Http.PostAsync("api/bundle.zip", Zip("no zip"u8.ToArray())), HttpStatusCode.BadRequest);
    }

    private static ByteArrayContent Zip(byte[] bytes) => new(bytes) { Headers = { ContentType = new MediaTypeHeaderValue("application/zip") } };
}
