using System.Net;
using System.Text;
using System.Text.Json;
using Clothwright.Interchange.Http;

namespace Clothwright.Server.Tests;

public class WorksheetAddressTests
{
    [Fact]
    public async Task A_first_run_opens_on_the_worksheets_of_the_demo_studio()
    {
        await using StudioServer server = await StudioServer.StartAsync(demo: true);
        WorksheetSummary[] list = JsonSerializer.Deserialize(await server.Http.GetStringAsync("api/worksheets"), StudioJson.Default.WorksheetSummaryArray)!;
        Assert.Equal("reedbed-scarves", list[0].Id);
        Assert.True(list.Length >= 5 && list.All(w => w.Demo && w.Version == 1));
        StudioFacts facts = JsonSerializer.Deserialize(await server.Http.GetStringAsync("api/studio"), StudioJson.Default.StudioFacts)!;
        Assert.True(facts.OnlyDemo && facts.Yarns > 10);
        Assert.Contains("table-8", await server.Http.GetStringAsync("api/bench"), StringComparison.Ordinal);
        foreach (WorksheetSummary worksheet in list) Assert.Contains("\"ends\":", await server.Http.GetStringAsync($"api/worksheets/{worksheet.Id}/plan"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_saved_worksheet_reads_back_with_its_version_as_tag()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        Assert.Equal(1, (await server.SaveAsync("creek", "Creek scarf", basedOn: null)).Version);
        using HttpResponseMessage read = await server.Http.GetAsync("api/worksheets/creek");
        Assert.Equal("\"1\"", read.Headers.ETag?.Tag);
        Assert.Equal(StudioServer.Sheet("Creek scarf"), await read.Content.ReadAsStringAsync());
        using HttpResponseMessage known = await server.SendAsync(HttpMethod.Get, "api/worksheets/creek", r => r.Headers.TryAddWithoutValidation("If-None-Match", "\"1\""));
        Assert.Equal(HttpStatusCode.NotModified, known.StatusCode);
    }

    [Fact]
    public async Task A_worksheet_without_an_id_gets_one()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage made = await server.Http.PostAsync("api/worksheets", new StringContent(StudioServer.Sheet("new"), Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.Created, made.StatusCode);
        Assert.Equal(StudioServer.Sheet("new"), await server.Http.GetStringAsync(made.Headers.Location));
    }

    [Fact]
    public async Task A_conflict_brings_the_current_worksheet_along()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.SaveAsync("creek", "first", basedOn: null);
        await server.SaveAsync("creek", "second", basedOn: 1);
        using HttpResponseMessage late = await server.PutAsync("api/worksheets/creek", StudioServer.Sheet("late"), basedOn: 1);
        ProblemReport report = await StudioServer.RefusalAsync(late, HttpStatusCode.PreconditionFailed);
        Assert.Equal(2, report.CurrentVersion);
        Assert.Equal("second", report.Current!.Worksheet.GetProperty("title").GetString());
        Assert.Equal("\"2\"", late.Headers.ETag?.Tag);
    }

    [Fact]
    public async Task A_save_that_names_no_version_is_refused()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.Http.PutAsync("api/worksheets/creek", new StringContent(StudioServer.Sheet("x"), Encoding.UTF8, "application/json"));
        ProblemReport report = await StudioServer.RefusalAsync(answer, HttpStatusCode.PreconditionRequired);
        Assert.Contains("If-None-Match: *", report.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("W/\"1\"")]
    [InlineData("\"one\"")]
    [InlineData("1")]
    [InlineData("\"-1\"")]
    public async Task What_is_no_version_is_refused_with_its_text(string tag)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.SendAsync(HttpMethod.Delete, "api/swatches/s", r => r.Headers.TryAddWithoutValidation("If-Match", tag));
        ProblemReport report = await StudioServer.RefusalAsync(answer, HttpStatusCode.BadRequest);
        Assert.Contains(tag, report.What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task History_is_read_and_an_earlier_save_restored()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.SaveAsync("creek", "first", basedOn: null);
        await server.SaveAsync("creek", "second", basedOn: 1);
        Assert.Equal(StudioServer.Sheet("first"), await server.Http.GetStringAsync("api/worksheets/creek/history/1"));
        using HttpResponseMessage restored = await server.SendAsync(HttpMethod.Post, "api/worksheets/creek/history/1/restore", r => r.Headers.TryAddWithoutValidation("If-Match", "\"2\""));
        Assert.Equal(HttpStatusCode.OK, restored.StatusCode);
        Assert.Equal(StudioServer.Sheet("first"), await server.Http.GetStringAsync("api/worksheets/creek"));
        WorksheetVersion[] history = JsonSerializer.Deserialize(await server.Http.GetStringAsync("api/worksheets/creek/history"), StudioJson.Default.WorksheetVersionArray)!;
        Assert.Equal([(3, 1), (2, null), (1, (int?)null)], history.Select(s => (s.Version, s.RestoredFrom)));
    }

    [Fact]
    public async Task A_worksheet_is_put_away_and_brought_back()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        await server.SaveAsync("creek", "first", basedOn: null);
        Assert.Equal(HttpStatusCode.NoContent, (await server.Http.DeleteAsync("api/worksheets/creek")).StatusCode);
        Assert.Equal("[]", await server.Http.GetStringAsync("api/worksheets"));
        Assert.Contains("creek", await server.Http.GetStringAsync("api/worksheets?putAway=true"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NoContent, (await server.Http.PostAsync("api/worksheets/creek/bring-back", null)).StatusCode);
        Assert.Contains("creek", await server.Http.GetStringAsync("api/worksheets"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bad_JSON_is_answered_with_what_where_and_mend()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage torn = await server.PutAsync("api/worksheets/creek", "{ \"clothwright\": 1,", basedOn: null);
        ProblemReport report = await StudioServer.RefusalAsync(torn, HttpStatusCode.BadRequest);
        Assert.StartsWith("line 1", report.Where, StringComparison.Ordinal);
        using HttpResponseMessage wrong = await server.PutAsync("api/worksheets/creek", StudioServer.Sheet("x").Replace("\"drape\"", "\"drapy\"", StringComparison.Ordinal), basedOn: null);
        report = await StudioServer.RefusalAsync(wrong, HttpStatusCode.BadRequest);
        Assert.Equal("purpose", report.Where);
        Assert.Contains("drapy", report.What, StringComparison.Ordinal);
        Assert.Contains("drape", report.Mend, StringComparison.Ordinal);
        using HttpResponseMessage none = await server.Http.GetAsync("api/worksheets/creek");
        await StudioServer.RefusalAsync(none, HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task The_handout_is_a_PDF_on_the_paper_asked_for()
    {
        await using StudioServer server = await StudioServer.StartAsync(demo: true);
        byte[] pdf = await server.Http.GetByteArrayAsync("api/worksheets/reedbed-scarves/handout.pdf?paper=letter");
        Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);
        // Letter paper is 612 by 792 points: ANSI/ASME Y14.1, size A (8.5 by 11 inches at 72 points).
        Assert.Contains("/MediaBox [0 0 612 792]", Encoding.Latin1.GetString(pdf), StringComparison.Ordinal);
        using HttpResponseMessage odd = await server.Http.GetAsync("api/worksheets/reedbed-scarves/handout.pdf?paper=a9");
        Assert.Equal("paper", (await StudioServer.RefusalAsync(odd, HttpStatusCode.BadRequest)).Where);
        Assert.StartsWith("[WIF]", await server.Http.GetStringAsync("api/worksheets/reedbed-scarves/draft.wif"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_worksheet_that_cannot_be_made_is_kept_and_its_plan_says_why()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        string sheet = StudioServer.Sheet("x").Replace("2/2 twill", "97/3 moonshine", StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Created, (await server.PutAsync("api/worksheets/creek", sheet, basedOn: null)).StatusCode);
        using HttpResponseMessage plan = await server.Http.GetAsync("api/worksheets/creek/plan");
        Assert.Equal("weave", (await StudioServer.RefusalAsync(plan, HttpStatusCode.UnprocessableEntity)).Where);
    }

    [Fact]
    public async Task A_character_that_no_database_keeps_is_refused_where_it_stands()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage sheet = await server.PutAsync("api/worksheets/creek", StudioServer.Sheet("ebb").Replace("\"ebb\"", "\"e\\u0000bb\"", StringComparison.Ordinal), basedOn: null);
        Assert.Equal("title", (await StudioServer.RefusalAsync(sheet, HttpStatusCode.BadRequest)).Where);
        using HttpResponseMessage swatch = await server.PutAsync("api/swatches/s", "{\"id\":\"s\",\"title\":\"t\",\"note\":\"\\u0000\"}", basedOn: null);
        Assert.Equal("note", (await StudioServer.RefusalAsync(swatch, HttpStatusCode.BadRequest)).Where);
    }
}
