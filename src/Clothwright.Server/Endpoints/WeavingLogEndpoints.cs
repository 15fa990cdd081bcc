using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/weaving-log</c>: sittings at the loom.</summary>
internal static class WeavingLogEndpoints
{
    public static void MapWeavingLog(this RouteGroupBuilder api)
    {
        RouteGroupBuilder log = api.MapGroup("/weaving-log").WithTags("Weaving log");
        log.MapGet("/", ListAsync).WithName("ListSittings").WithSummary("Sittings at the loom in the order of time: all, or those of one worksheet.").Produces<Kept<WeavingLogEntry>[]>();
        log.MapGet("/{id}", ReadAsync).WithName("ReadSitting").WithSummary("One sitting; its version is the ETag.").Produces<WeavingLogEntry>().Refuses(404);
        log.MapPut("/{id}", KeepAsync)
            .WithName("KeepSitting").WithSummary("Keeps a sitting: a new one (If-None-Match: *), or the next version of one (If-Match).")
            .Accepts<WeavingLogEntry>("application/json").Produces(StatusCodes.Status201Created).Produces(StatusCodes.Status204NoContent).Refuses(400, 404, 412, 413, 415, 428);
        log.MapDelete("/{id}", RemoveAsync).WithName("RemoveSitting").WithSummary("Removes a sitting.").Produces(StatusCodes.Status204NoContent).Refuses(404, 412, 428);
    }

    private static async Task<IResult> ListAsync(Studio studio, CancellationToken cancel, string? worksheet = null) =>
        Results.Json(await studio.WeavingLog.ListAsync(worksheet, cancel), StudioJson.Default.KeptWeavingLogEntryArray);

    private static async Task<IResult> ReadAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (await studio.WeavingLog.FindAsync(id, cancel) is not { } kept) return Answers.NotThere("sitting", id);
        http.Response.Headers.ETag = VersionHeaders.TagOf(kept.Version);
        return Results.Json(kept.Item, StudioJson.Default.WeavingLogEntry);
    }

    private static async Task<IResult> KeepAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        string sound = RequestBodies.Sound(id);
        if (!http.Request.TryBasedOn(out int? basedOn, out IResult refusal)) return refusal;
        ReadOnlyMemory<byte> body = await http.Request.BytesAsync(UploadLimits.RecordBytes, "application/json", cancel);
        WeavingLogEntry entry = RecordText.Read(body.Span, StudioJson.Default.WeavingLogEntry).Value;
        RequestBodies.SameId(sound, entry.Id);
        return Answers.Of(http, await studio.WeavingLog.KeepAsync(entry, basedOn, cancel), "sitting", id, $"/api/weaving-log/{Uri.EscapeDataString(id)}");
    }

    private static async Task<IResult> RemoveAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (!http.Request.TrySeen(out int seen, out IResult refusal)) return refusal;
        return Answers.Of(http, await studio.WeavingLog.RemoveAsync(id, seen, cancel), "sitting", id, "");
    }
}
