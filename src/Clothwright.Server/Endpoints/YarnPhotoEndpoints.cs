using Clothwright.Drawing.Photos;
using Clothwright.Interchange.Http;
using Clothwright.Server.Problems;
using Clothwright.Server.Requests;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/shelf/photos</c> and the photos of each yarn.</summary>
internal static class YarnPhotoEndpoints
{
    private const string Jpeg = "image/jpeg";

    private static readonly string[] Taken = [Jpeg, "image/png", "image/webp"];

    public static void MapYarnPhotos(this RouteGroupBuilder api)
    {
        RouteGroupBuilder photos = api.MapGroup("/shelf").WithTags("Shelf");
        photos.MapGet("/photos", ListAsync).WithName("ListPhotos").WithSummary("What is known of all photos of yarns.").Produces<YarnPhoto[]>();
        photos.MapGet("/photos/{id}.jpg", ReadAsync).WithName("ReadPhoto").WithSummary("One photo.").Produces(StatusCodes.Status200OK, contentType: Jpeg).Refuses(404);
        photos.MapDelete("/photos/{id}", RemoveAsync).WithName("RemovePhoto").WithSummary("Removes a photo.").Produces(StatusCodes.Status204NoContent).Refuses(404);
        photos.MapPost("/yarns/{id}/photos", AddAsync)
            .WithName("AddPhoto").WithSummary("Adds a photo to a yarn. It is turned upright, made smaller and written anew, without the notes of the camera.")
            .Accepts<byte[]>(Jpeg, "image/png", "image/webp").Produces<YarnPhoto>(StatusCodes.Status201Created).Refuses(400, 404, 413, 415);
    }

    private static async Task<IResult> ListAsync(Studio studio, CancellationToken cancel) =>
        Results.Json(await studio.Photos.ListAsync(cancel: cancel), StudioJson.Default.YarnPhotoArray);

    private static async Task<IResult> ReadAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        if (await studio.Photos.FindAsync(id, cancel) is not { } jpeg) return Answers.NotThere("photo", id);
        // A photo is never changed, only removed.
        http.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(jpeg, Jpeg);
    }

    private static async Task<IResult> AddAsync(string id, HttpContext http, Studio studio, CancellationToken cancel)
    {
        string yarn = RequestBodies.Sound(id);
        string given = (http.Request.ContentType ?? "").Split(';')[0].Trim();
        string expected = Taken.FirstOrDefault(t => t.Equals(given, StringComparison.OrdinalIgnoreCase)) ?? Jpeg;
        ReadOnlyMemory<byte> bytes = await http.Request.BytesAsync(UploadLimits.PhotoBytes, expected, cancel);
        StoredPhoto stored = PhotoIntake.Take(bytes.ToArray()).Value;
        return await studio.Photos.AddAsync(yarn, stored.Jpeg, stored.WidthPixels, stored.HeightPixels, cancel) is { } photo
            ? Results.Json(photo, StudioJson.Default.YarnPhoto, statusCode: StatusCodes.Status201Created)
            : Answers.NotThere("yarn", yarn);
    }

    private static async Task<IResult> RemoveAsync(string id, Studio studio, CancellationToken cancel) =>
        await studio.Photos.RemoveAsync(id, cancel) ? Results.NoContent() : Answers.NotThere("photo", id);
}
