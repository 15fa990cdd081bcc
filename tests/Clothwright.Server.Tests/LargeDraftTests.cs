using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Server.Tests;

/// <summary>A draft drawn thread by thread, 1,200 ends by 2,400 picks, is kept like any other.</summary>
public class LargeDraftTests
{
    private const int Ends = 1200;
    private const int Picks = 2400;
    private const int Shafts = 16;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_large_draft_is_saved_edited_and_restored(bool lifts)
    {
        await using StudioServer server = await StudioServer.StartAsync();
        (string first, string second) = (Sheet(lifts, changedPick: 0), Sheet(lifts, changedPick: 1500));
        Assert.Equal(HttpStatusCode.Created, await StatusAsync(server.PutAsync("api/worksheets/estuary", first, basedOn: null)));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(server.PutAsync("api/worksheets/estuary", second, basedOn: 1)));
        Assert.Equal(second, await server.Http.GetStringAsync("api/worksheets/estuary"));
        Assert.Equal(first, await server.Http.GetStringAsync("api/worksheets/estuary/history/1"));
        using HttpResponseMessage late = await server.PutAsync("api/worksheets/estuary", Sheet(lifts, changedPick: 9), basedOn: 1);
        ProblemReport conflict = await StudioServer.RefusalAsync(late, HttpStatusCode.PreconditionFailed);
        Assert.Equal(WrittenDraft(second), conflict.Current!.Worksheet.GetProperty("weave").GetProperty("draft").GetString());
        using HttpResponseMessage restored = await server.SendAsync(HttpMethod.Post, "api/worksheets/estuary/history/1/restore", r => r.Headers.TryAddWithoutValidation("If-Match", "\"2\""));
        Assert.Equal(HttpStatusCode.OK, restored.StatusCode);
        Assert.Equal(first, await server.Http.GetStringAsync("api/worksheets/estuary"));
        WorksheetVersion[] history = JsonSerializer.Deserialize(await server.Http.GetStringAsync("api/worksheets/estuary/history"), StudioJson.Default.WorksheetVersionArray)!;
        Assert.Equal([3, 2, 1], history.Select(s => s.Version));
    }

    [Fact]
    public async Task A_large_draft_goes_from_studio_to_studio()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        string sheet = Sheet(lifts: true, changedPick: 0);
        Assert.Equal(HttpStatusCode.Created, await StatusAsync(server.PutAsync("api/worksheets/estuary", sheet, basedOn: null)));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(server.PutAsync("api/worksheets/estuary", Sheet(lifts: true, changedPick: 7), basedOn: 1)));
        using var bundle = new ByteArrayContent(await server.Http.GetByteArrayAsync("api/bundle.zip"));
        bundle.Headers.ContentType = new MediaTypeHeaderValue("application/zip");
        await using StudioServer other = await StudioServer.StartAsync();
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(other.Http.PostAsync("api/bundle.zip", bundle)));
        Assert.Equal(sheet, await other.Http.GetStringAsync("api/worksheets/estuary/history/1"));
        Assert.Equal(Sheet(lifts: true, changedPick: 7), await other.Http.GetStringAsync("api/worksheets/estuary"));
    }

    [Fact]
    public async Task A_title_too_long_for_any_list_is_refused_with_its_length()
    {
        await using StudioServer server = await StudioServer.StartAsync();
        using HttpResponseMessage answer = await server.PutAsync("api/worksheets/estuary", StudioServer.Sheet(new string('~', WorksheetReader.LongestText + 1)), basedOn: null);
        ProblemReport report = await StudioServer.RefusalAsync(answer, HttpStatusCode.BadRequest);
        Assert.Equal("title", report.Where);
        Assert.Contains("10001 characters", report.What, StringComparison.Ordinal);
    }

    // Nothing repeats: every pick has shafts of its own, as in a drawn picture.
    private static string Sheet(bool lifts, int changedPick)
    {
        Draft draft = new()
        {
            Shafts = Shafts,
            Threading = [.. Enumerable.Range(0, Ends).Select(e => ShaftSet.Of(1 + (e * 7 + e / 16) % Shafts))],
            TieUp = lifts ? [] : [.. Enumerable.Range(0, Shafts).Select(t => Lift(t, 0))],
            Treadling = lifts ? [] : [.. Enumerable.Range(0, Picks).Select(p => ShaftSet.Of(1 + (p + p / 5 + (p == changedPick ? 1 : 0)) % Shafts))],
            LiftPlan = lifts ? [.. Enumerable.Range(0, Picks).Select(p => Lift(p, changedPick))] : [],
        };
        Worksheet worksheet = WorksheetReader.Read(Encoding.UTF8.GetBytes(StudioServer.Sheet("Estuary"))).Value with { Weave = new WeaveDecision.Drawn(draft) };
        return Encoding.UTF8.GetString(WorksheetWriter.Write(worksheet));
    }

    private static ShaftSet Lift(int pick, int changedPick) =>
        ShaftSet.Of([.. Enumerable.Range(1, Shafts).Where(s => (pick * 40503 + s * 7919 + (pick == changedPick ? 1 : 0) >> 3) % 2 == s % 2)]);

    private static string WrittenDraft(string sheet)
    {
        using JsonDocument document = JsonDocument.Parse(sheet);
        return document.RootElement.GetProperty("weave").GetProperty("draft").GetString()!;
    }

    private static async Task<HttpStatusCode> StatusAsync(Task<HttpResponseMessage> asked)
    {
        using HttpResponseMessage answer = await asked;
        return answer.StatusCode;
    }
}
