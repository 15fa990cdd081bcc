using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Logging;

namespace Clothwright.Browser.Tests;

/// <summary>Serves a folder on a free port of this machine; an address that names no file gets the page.</summary>
internal sealed class SiteServer : IAsyncDisposable
{
    private readonly WebApplication _app;

    private SiteServer(WebApplication app) => _app = app;

    /// <summary>Where it listens.</summary>
    public string Address => _app.Services.GetRequiredService<Microsoft.AspNetCore.Hosting.Server.IServer>()
        .Features.Get<IServerAddressesFeature>()!.Addresses.Single();

    /// <summary>Starts serving.</summary>
    /// <param name="folder">The folder.</param>
    public static async Task<SiteServer> StartAsync(string folder)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        WebApplication app = builder.Build();
        var types = new FileExtensionContentTypeProvider();
        types.Mappings[".wasm"] = "application/wasm";
        var options = new StaticFileOptions { FileProvider = new PhysicalFileProvider(folder), ContentTypeProvider = types, ServeUnknownFileTypes = true };
        app.UseStaticFiles(options);
        app.MapFallbackToFile("index.html", options);
        await app.StartAsync();
        return new SiteServer(app);
    }

    public ValueTask DisposeAsync() => _app.DisposeAsync();
}
