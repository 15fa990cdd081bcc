using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;
using Clothwright.Storage.Worksheets;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/worksheets</c>: the list, and each worksheet as a whole document.</summary>
internal static class WorksheetEndpoints
{
    public static void MapWorksheets(this RouteGroupBuilder api)
    {
        RouteGroupBuilder worksheets = api.MapGroup("/worksheets").WithTags("Worksheets");
        worksheets.MapGet("/", ListAsync)
            .WithName("ListWorksheets").WithSummary("Worksheets at hand, the last saved first; with putAway=true those put away.").Produces<WorksheetSummary[]>();
        worksheets.MapPost("/", CreateAsync)
            .WithName("CreateWorksheet").WithSummary("Saves a new worksheet under an id of the server's choice.")
            .Accepts<object>("application/json").Produces<SavedWorksheet>(StatusCodes.Status201Created).Refuses(400, 413, 415);
        worksheets.MapGet("/{id}", ReadAsync)
            .WithName("ReadWorksheet").WithSummary("A worksheet as it stands; its version is the ETag.").Produces<object>().Refuses(404);
        worksheets.MapPut("/{id}", SaveAsync)
            .WithName("SaveWorksheet").WithSummary("Saves the next version: If-Match names the version it was made from, If-None-Match: * makes a new worksheet. A conflict (412) brings the current one along.")
            .Accepts<object>("application/json").Produces<SavedWorksheet>().Produces<SavedWorksheet>(StatusCodes.Status201Created).Refuses(400, 404, 412, 413, 415, 428);
        worksheets.MapDelete("/{id}", (string id, Studio studio, CancellationToken cancel) => PutAwayAsync(id, away: true, studio, cancel))
            .WithName("PutWorksheetAway").WithSummary("Puts a worksheet out of sight; nothing of it is lost.").Produces(StatusCodes.Status204NoContent).Refuses(404);
        worksheets.MapPost("/{id}/bring-back", (string id, Studio studio, CancellationToken cancel) => PutAwayAsync(id, away: false, studio, cancel))
            .WithName("BringWorksheetBack").WithSummary("Brings a worksheet back that was put away.").Produces(StatusCodes.Status204NoContent).Refuses(404);
    }

    /// <summary>The answer to a save of a worksheet.</summary>
    internal static IResult Answer(HttpContext http, string id, WorksheetOutcome outcome)
    {
        switch (outcome)
        {
            case WorksheetOutcome.Saved saved:
                http.Response.Headers.ETag = VersionHeaders.TagOf(saved.Worksheet.Version);
                if (saved.Created) http.Response.Headers.Location = $"/api/worksheets/{Uri.EscapeDataString(id)}";
                return Results.Json(saved.Worksheet, StudioJson.Default.SavedWorksheet, statusCode: saved.Created ? StatusCodes.Status201Created : StatusCodes.Status200OK);
            case WorksheetOutcome.Conflict { Current: var current }:
                http.Response.Headers.ETag = VersionHeaders.TagOf(current.Version);
                var problem = new InputProblem(
                    $"The worksheet was saved again since: version {current.Version} stands now.",
                    "If-Match",
                    $"Join the changes with the worksheet in \"current\", and send If-Match: \"{current.Version}\".");
                using (var document = System.Text.Json.JsonDocument.Parse(current.Document))
                {
                    var state = new WorksheetState(current.Id, current.Version, current.SavedAt, document.RootElement.Clone());
                    return Answers.Problem(ProblemReport.Of(problem, StatusCodes.Status412PreconditionFailed, "Another save came first") with { CurrentVersion = current.Version, Current = state });
                }

            default:
                return Answers.NotThere("worksheet", id);
        }
    }

    private static async Task<IResult> ListAsync(Studio studio, CancellationToken cancel, bool putAway = false) =>
        Results.Json(await studio.Worksheets.ListAsync(putAway, cancel), StudioJson.Default.WorksheetSummaryArray);

    private static async Task<IResult> CreateAsync(HttpContext http, Studio studio, CancellationToken cancel)
    {
        Worksheet worksheet = await BodyAsync(http, cancel);
        string id = Guid.CreateVersion7().ToString("N");
        return Answer(http, id, await studio.Worksheets.SaveAsync(id, worksheet, basedOn: null, cancel: cancel));
    }

    private static async Task<IResult> ReadAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (await studio.Worksheets.FindAsync(id, cancel) is not { } found) return Answers.NotThere("worksheet", id);
        http.Response.Headers.ETag = VersionHeaders.TagOf(found.Version);
        http.Response.GetTypedHeaders().LastModified = found.SavedAt;
        return http.Request.HasAlready(found.Version) ? Results.StatusCode(StatusCodes.Status304NotModified) : Results.Text(found.Document, "application/json");
    }

    private static async Task<IResult> SaveAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        string sound = RequestBodies.Sound(id);
        if (!http.Request.TryBasedOn(out int? basedOn, out IResult refusal)) return refusal;
        Worksheet worksheet = await BodyAsync(http, cancel);
        return Answer(http, sound, await studio.Worksheets.SaveAsync(sound, worksheet, basedOn, cancel: cancel));
    }

    private static async Task<IResult> PutAwayAsync(string id, bool away, Studio studio, CancellationToken cancel) =>
        await studio.Worksheets.PutAwayAsync(id, away, cancel) ? Results.NoContent() : Answers.NotThere("worksheet", id);

    private static async Task<Worksheet> BodyAsync(HttpContext http, CancellationToken cancel) =>
        WorksheetReader.Read(await http.Request.BytesAsync(UploadLimits.WorksheetBytes, "application/json", cancel)).Value;
}
