using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/worksheets/{id}/history</c>: every save of a worksheet.</summary>
internal static class WorksheetHistoryEndpoints
{
    public static void MapWorksheetHistory(this RouteGroupBuilder api)
    {
        RouteGroupBuilder history = api.MapGroup("/worksheets/{id}/history").WithTags("Worksheet history");
        history.MapGet("/", ListAsync)
            .WithName("ListWorksheetSaves").WithSummary("Every save of a worksheet, the last first.").Produces<WorksheetVersion[]>().Refuses(404);
        history.MapGet("/{version:int}", ReadAsync)
            .WithName("ReadWorksheetSave").WithSummary("A worksheet as it was saved once.").Produces<object>().Refuses(404);
        history.MapPost("/{version:int}/restore", RestoreAsync)
            .WithName("RestoreWorksheetSave").WithSummary("Makes an earlier save the next version; If-Match names the version that stands.").Produces<SavedWorksheet>().Refuses(404, 412, 428);
    }

    private static async Task<IResult> ListAsync(string id, Studio studio, CancellationToken cancel)
    {
        WorksheetVersion[] saves = await studio.Worksheets.HistoryAsync(id, cancel);
        return saves.Length == 0 ? Answers.NotThere("worksheet", id) : Results.Json(saves, StudioJson.Default.WorksheetVersionArray);
    }

    private static async Task<IResult> ReadAsync(string id, int version, Studio studio, CancellationToken cancel) =>
        await studio.Worksheets.FindAsync(id, version, cancel) is { } save
            ? Results.Text(save.Document, "application/json")
            : Answers.NotThere($"version {version} of a worksheet", id);

    private static async Task<IResult> RestoreAsync(string id, int version, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (!http.Request.TrySeen(out int seen, out IResult refusal)) return refusal;
        return WorksheetEndpoints.Answer(http, id, await studio.Worksheets.RestoreAsync(id, version, seen, cancel));
    }
}
