namespace Clothwright.Server.Endpoints;

/// <summary>Every address of the API.</summary>
internal static class StudioApi
{
    public static void MapStudioApi(this WebApplication server)
    {
        server.MapOpenApi("/api/openapi.json");
        RouteGroupBuilder api = server.MapGroup("/api");
        api.AddEndpointFilter(static async (call, next) =>
        {
            // What was read may be kept, but is asked for again before it is used.
            call.HttpContext.Response.Headers.CacheControl = "no-cache";
            return await next(call);
        });
        api.MapStudio();
        api.MapWorksheets();
        api.MapWorksheetHistory();
        api.MapWorksheetPages();
        api.MapDrafts();
        api.MapShelf();
        api.MapShelfTables();
        api.MapYarnPhotos();
        api.MapReservations();
        api.MapBench();
        api.MapSwatches();
        api.MapWeavingLog();
        api.MapBundles();
    }
}
