using System.Collections.Immutable;
using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Csv;
using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/shelf</c>: yarns with their packages.</summary>
internal static class ShelfEndpoints
{
    public static void MapShelf(this RouteGroupBuilder api)
    {
        RouteGroupBuilder shelf = api.MapGroup("/shelf").WithTags("Shelf");
        shelf.MapGet("/", ListAsync).WithName("ListYarns").WithSummary("All yarns with their packages and versions, by name.").Produces<object>();
        shelf.MapGet("/table.csv", TableAsync).WithName("ReadShelfTable").WithSummary("The shelf as a table, one row a package.").Produces(StatusCodes.Status200OK, contentType: "text/csv");
        shelf.MapPost("/table.csv", BringInAsync)
            .WithName("BringShelfTableIn").WithSummary("Puts the yarns of a table on the shelf; those of the same ids give way. All or none.")
            .Accepts<string>("text/csv").Produces(StatusCodes.Status204NoContent).Refuses(400, 413, 415);
        shelf.MapGet("/yarns/{id}", ReadAsync).WithName("ReadYarn").WithSummary("One yarn, as it is written on a worksheet; its version is the ETag.").Produces<object>().Refuses(404);
        shelf.MapPut("/yarns/{id}", KeepAsync)
            .WithName("KeepYarn").WithSummary("Puts a yarn on the shelf (If-None-Match: *), or in the place of a version (If-Match).")
            .Accepts<object>("application/json").Produces(StatusCodes.Status201Created).Produces(StatusCodes.Status204NoContent).Refuses(400, 404, 412, 413, 415, 428);
        shelf.MapDelete("/yarns/{id}", RemoveAsync).WithName("RemoveYarn").WithSummary("Takes a yarn off the shelf.").Produces(StatusCodes.Status204NoContent).Refuses(404, 412, 428);
    }

    private static async Task<IResult> ListAsync(Studio studio, CancellationToken cancel) =>
        Results.Bytes(ShelfText.Write(await studio.Shelf.ListAsync(cancel)), "application/json");

    private static async Task<IResult> TableAsync(Studio studio, CancellationToken cancel)
    {
        // A yarn whose count cannot be read yet stands in the JSON only.
        IEnumerable<Yarn> yarns = (await studio.Shelf.ListAsync(cancel)).Select(y => y.Item.ToYarn()).Where(y => y.Succeeded).Select(y => y.Value);
        return Results.File(Encoding.UTF8.GetBytes(YarnShelfTable.Write(yarns)), "text/csv; charset=utf-8", "shelf.csv");
    }

    private static async Task<IResult> BringInAsync(HttpContext http, Studio studio, CancellationToken cancel)
    {
        ReadOnlyMemory<byte> bytes = await http.Request.BytesAsync(UploadLimits.ShelfTableBytes, "text/csv", cancel);
        ImmutableArray<Yarn> yarns = YarnShelfTable.Read(Encoding.UTF8.GetString(bytes.Span).TrimStart('\uFEFF')).Value;
        await studio.Shelf.KeepAllAsync([.. yarns.Select(YarnEntry.Of)], cancel);
        return Results.NoContent();
    }

    private static async Task<IResult> ReadAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (await studio.Shelf.FindAsync(id, cancel) is not { } kept) return Answers.NotThere("yarn", id);
        http.Response.Headers.ETag = VersionHeaders.TagOf(kept.Version);
        return Results.Bytes(ShelfText.Write(kept.Item), "application/json");
    }

    private static async Task<IResult> KeepAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        string sound = RequestBodies.Sound(id);
        if (!http.Request.TryBasedOn(out int? basedOn, out IResult refusal)) return refusal;
        YarnEntry yarn = ShelfText.ReadYarn(await http.Request.BytesAsync(UploadLimits.RecordBytes, "application/json", cancel)).Value;
        RequestBodies.SameId(sound, yarn.Id);
        return Answers.Of(http, await studio.Shelf.KeepAsync(yarn, basedOn, cancel: cancel), "yarn", id, $"/api/shelf/yarns/{Uri.EscapeDataString(id)}");
    }

    private static async Task<IResult> RemoveAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (!http.Request.TrySeen(out int seen, out IResult refusal)) return refusal;
        return Answers.Of(http, await studio.Shelf.RemoveAsync(id, seen, cancel), "yarn", id, "");
    }
}
