namespace Clothwright.Server.Endpoints;

/// <summary>The page: the files that the client was built into, and the page itself under every address it may have.</summary>
internal static class PageEndpoints
{
    // Every address but those of files and of the API.
    private const string PageAddresses = "{*path:nonfile:regex(^(?!api(/|$)))}";

    public static void MapPage(this WebApplication server)
    {
        string files = Path.Combine(AppContext.BaseDirectory, $"{server.Environment.ApplicationName}.staticwebassets.endpoints.json");
        // A program that starts the server without the page still has the API.
        if (!File.Exists(files)) return;
        server.MapStaticAssets(files);
        var page = new StaticFileOptions { OnPrepareResponse = file => file.Context.Response.Headers.CacheControl = "no-cache" };
        server.MapFallbackToFile("/", "index.html", page);
        server.MapFallbackToFile(PageAddresses, "index.html", page);
    }
}
