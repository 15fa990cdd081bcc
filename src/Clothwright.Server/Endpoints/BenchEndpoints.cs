using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/bench</c>: looms, reeds, heddles and warping tools.</summary>
internal static class BenchEndpoints
{
    public static void MapBench(this RouteGroupBuilder api)
    {
        RouteGroupBuilder bench = api.MapGroup("/bench").WithTags("Bench");
        bench.MapGet("/", ReadAsync).WithName("ReadBench").WithSummary("The whole bench; its version is the ETag. A bench that was never saved is empty and has none.").Produces<object>();
        bench.MapPut("/", KeepAsync)
            .WithName("KeepBench").WithSummary("Saves the whole bench: If-Match names the version it was made from, If-None-Match: * saves the first.")
            .Accepts<object>("application/json").Produces(StatusCodes.Status201Created).Produces(StatusCodes.Status204NoContent).Refuses(400, 404, 412, 413, 415, 428);
    }

    private static async Task<IResult> ReadAsync(HttpContext http, Studio studio, CancellationToken cancel)
    {
        Kept<BenchDocument>? kept = await studio.Bench.FindAsync(cancel);
        if (kept is not null) http.Response.Headers.ETag = VersionHeaders.TagOf(kept.Version);
        return Results.Bytes(BenchText.Write(kept?.Item ?? BenchDocument.Empty), "application/json");
    }

    private static async Task<IResult> KeepAsync(HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (!http.Request.TryBasedOn(out int? basedOn, out IResult refusal)) return refusal;
        BenchDocument bench = BenchText.Read(await http.Request.BytesAsync(UploadLimits.RecordBytes, "application/json", cancel)).Value;
        return Answers.Of(http, await studio.Bench.KeepAsync(bench, basedOn, cancel: cancel), "bench", "bench", "/api/bench");
    }
}
