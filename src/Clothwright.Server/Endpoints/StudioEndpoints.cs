using Clothwright.Interchange.Http;
using Clothwright.Storage;

namespace Clothwright.Server.Endpoints;

/// <summary><c>/api/studio</c>: what the server says of itself.</summary>
internal static class StudioEndpoints
{
    public static void MapStudio(this RouteGroupBuilder api) => api.MapGet("/studio", ReadAsync)
        .WithName("ReadStudio").WithTags("Studio").WithSummary("What this server keeps, and its version.").Produces<StudioFacts>();

    private static async Task<IResult> ReadAsync(Studio studio, CancellationToken cancel)
    {
        string version = typeof(StudioEndpoints).Assembly.GetName().Version?.ToString(3) ?? "";
        var facts = new StudioFacts("Clothwright", version, (await studio.Worksheets.ListAsync(cancel: cancel)).Length, (await studio.Shelf.ListAsync(cancel)).Length, await studio.IsOnlyDemoAsync(cancel));
        return Results.Json(facts, StudioJson.Default.StudioFacts);
    }
}
