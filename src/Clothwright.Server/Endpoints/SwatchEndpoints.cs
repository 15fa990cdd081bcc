using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/swatches</c>: samples and their measurements.</summary>
internal static class SwatchEndpoints
{
    public static void MapSwatches(this RouteGroupBuilder api)
    {
        RouteGroupBuilder swatches = api.MapGroup("/swatches").WithTags("Swatch records");
        swatches.MapGet("/", ListAsync).WithName("ListSwatches").WithSummary("All swatch records with their versions.").Produces<Kept<SwatchRecord>[]>();
        swatches.MapGet("/{id}", ReadAsync).WithName("ReadSwatch").WithSummary("One swatch record; its version is the ETag.").Produces<SwatchRecord>().Refuses(404);
        swatches.MapPut("/{id}", KeepAsync)
            .WithName("KeepSwatch").WithSummary("Keeps a swatch record: a new one (If-None-Match: *), or the next version of one (If-Match).")
            .Accepts<SwatchRecord>("application/json").Produces(StatusCodes.Status201Created).Produces(StatusCodes.Status204NoContent).Refuses(400, 404, 412, 413, 415, 428);
        swatches.MapDelete("/{id}", RemoveAsync).WithName("RemoveSwatch").WithSummary("Removes a swatch record.").Produces(StatusCodes.Status204NoContent).Refuses(404, 412, 428);
    }

    private static async Task<IResult> ListAsync(Studio studio, CancellationToken cancel) =>
        Results.Json(await studio.Swatches.ListAsync(cancel), StudioJson.Default.KeptSwatchRecordArray);

    private static async Task<IResult> ReadAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (await studio.Swatches.FindAsync(id, cancel) is not { } kept) return Answers.NotThere("swatch record", id);
        http.Response.Headers.ETag = VersionHeaders.TagOf(kept.Version);
        return Results.Json(kept.Item, StudioJson.Default.SwatchRecord);
    }

    private static async Task<IResult> KeepAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        string sound = RequestBodies.Sound(id);
        if (!http.Request.TryBasedOn(out int? basedOn, out IResult refusal)) return refusal;
        ReadOnlyMemory<byte> body = await http.Request.BytesAsync(UploadLimits.RecordBytes, "application/json", cancel);
        SwatchRecord swatch = RecordText.Read(body.Span, StudioJson.Default.SwatchRecord).Value;
        RequestBodies.SameId(sound, swatch.Id);
        return Answers.Of(http, await studio.Swatches.KeepAsync(swatch, basedOn, cancel), "swatch record", id, $"/api/swatches/{Uri.EscapeDataString(id)}");
    }

    private static async Task<IResult> RemoveAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (!http.Request.TrySeen(out int seen, out IResult refusal)) return refusal;
        return Answers.Of(http, await studio.Swatches.RemoveAsync(id, seen, cancel), "swatch record", id, "");
    }
}
