using Clothwright.Core.Quantities;
using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;
using Clothwright.Storage.Bundles;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/bundle.zip</c>: everything in one file, out and in.</summary>
internal static class BundleEndpoints
{
    private const string Zip = "application/zip";

    public static void MapBundles(this RouteGroupBuilder api)
    {
        api.MapGet("/bundle.zip", PackAsync)
            .WithName("PackStudio").WithTags("Studio").WithSummary("Everything that is kept, in open formats: JSON, CSV, WIF.").Produces(StatusCodes.Status200OK, contentType: Zip);
        api.MapPost("/bundle.zip", UnpackAsync)
            .WithName("UnpackStudio").WithTags("Studio").WithSummary("Brings a packed studio in, where nothing is kept but the demo studio as it came. All or nothing.")
            .Accepts<byte[]>(Zip).Produces<BundleCounts>().Refuses(400, 409, 413, 415);
    }

    private static async Task<IResult> PackAsync(HttpContext http, Studio studio, ServerOptions options, CancellationToken cancel)
    {
        FileStream file = Passing(options);
        http.Response.RegisterForDisposeAsync(file);
        await studio.Bundles.PackAsync(file, cancel);
        file.Position = 0;
        return Results.File(file, Zip, "clothwright-studio.zip");
    }

    private static async Task<IResult> UnpackAsync(HttpContext http, Studio studio, ServerOptions options, CancellationToken cancel)
    {
        http.Request.Expect(UploadLimits.BundleBytes, Zip);
        await using FileStream file = Passing(options);
        await http.Request.Body.CopyToAsync(file, cancel);
        file.Position = 0;
        Parsed<BundleCounts> counts = await studio.Bundles.UnpackAsync(file, cancel);
        if (counts.TryGet(out BundleCounts? came)) return Results.Json(came, StudioJson.Default.BundleCounts);
        return counts.Problem!.Where == StudioBundles.StudioPlace
            ? Answers.Problem(StatusCodes.Status409Conflict, "Not into this studio", counts.Problem)
            : Answers.BadInput(counts.Problem);
    }

    // A file beside the studio that is gone when it is closed: a bundle may be larger than memory.
    private static FileStream Passing(ServerOptions options) => new(
        Path.Combine(options.DataFolder, $"passing-{Guid.NewGuid():N}.zip"),
        FileMode.CreateNew,
        FileAccess.ReadWrite,
        FileShare.None,
        64 * 1024,
        FileOptions.DeleteOnClose | FileOptions.Asynchronous);
}
