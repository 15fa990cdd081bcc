using System.Data.Common;
using System.Net;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.Http;
using Clothwright.Server.Demo;
using Clothwright.Server.Endpoints;
using Clothwright.Server.Guarding;
using Clothwright.Server.Problems;
using Clothwright.Storage;
using Clothwright.Storage.PostgreSql;
using Clothwright.Storage.Sqlite;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Clothwright.Server;

/// <summary>Starts the studio's server. It listens on this machine only, unless it is told otherwise, and reads no settings but those it is given.</summary>
public static class ServerHost
{
    private const string ServerVersion = "1";

    /// <summary>Runs the server until it is told to stop.</summary>
    /// <param name="arguments">The words after the command, as <see cref="ServerOptions.Parse"/> reads them.</param>
    /// <returns>The exit code: 0 done, 2 bad input.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> arguments)
    {
        Parsed<ServerOptions> options = ServerOptions.Parse(arguments);
        if (options.TryGet(out ServerOptions? given)) return await RunAsync(given);
        await Console.Error.WriteLineAsync(options.Problem!.ToString());
        return 2;
    }

    /// <summary>Runs the server until it is told to stop.</summary>
    /// <param name="options">Where it listens and where it keeps the studio.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The exit code: 0 done, 2 where the port or the folder cannot be used.</returns>
    public static async Task<int> RunAsync(ServerOptions options, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(options);
        try
        {
            await using WebApplication server = await BuildAsync(options, cancel);
            await server.StartAsync(cancel);
            await Console.Out.WriteLineAsync($"Clothwright is open at {AddressOf(server)} and keeps its studio in {options.Place}. Stop it with Ctrl+C.");
            if (options.Lan) await WarnOfNetworkAsync(AddressOf(server).Port);
            await server.WaitForShutdownAsync(cancel);
            return 0;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or DbException)
        {
            string mend = options.Database is null ? "Choose another port with --port, or another folder with --data." : $"See that {options.Place} is there and lets its user in, or choose another port with --port.";
            await Console.Error.WriteLineAsync($"The server cannot start: {fault.Message} {mend}");
            return 2;
        }
        finally
        {
            if (options.Database is { } database) PostgreSqlStudio.Close(database);
            else SqliteStudio.Close(options.DataFolder);
        }
    }

    /// <summary>Opens the studio and makes the server, ready to be started.</summary>
    /// <param name="options">Where it listens and where it keeps the studio.</param>
    /// <param name="cancel">Calls it off.</param>
    public static async Task<WebApplication> BuildAsync(ServerOptions options, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(options);
        Directory.CreateDirectory(options.DataFolder);
        Studio studio = options.Database is { } database
            ? await PostgreSqlStudio.OpenAsync(database, TimeProvider.System, cancel)
            : await SqliteStudio.OpenAsync(options.DataFolder, TimeProvider.System, cancel);
        if (options.Demo && await studio.IsBareAsync(cancel)) await DemoStudio.SeedAsync(studio, cancel);

        // An empty builder: no environment variable or settings file can make the server listen elsewhere.
        WebApplicationBuilder builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(ServerHost).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = UploadLimits.RecordBytes;
            if (options.Lan) kestrel.ListenAnyIP(options.Port);
            else if (options.Port == 0) kestrel.Listen(IPAddress.Loopback, 0);
            else kestrel.ListenLocalhost(options.Port);
        });
        // A built (not yet published) server takes the page's files from where the build left them.
        builder.WebHost.UseStaticWebAssets();
        // Why it cannot start is said once, in words, by RunAsync.
        builder.Logging.AddSimpleConsole(console => console.SingleLine = true).SetMinimumLevel(LogLevel.Warning).AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);
        builder.Services.AddRouting();
        builder.Services.AddSingleton(studio);
        builder.Services.AddSingleton(options);
        builder.Services.AddSingleton(HostNames.Of(options.Lan));
        builder.Services.ConfigureHttpJsonOptions(json => json.SerializerOptions.TypeInfoResolverChain.Insert(0, StudioJson.Default));
        builder.Services.AddOpenApi(description => description.AddDocumentTransformer((document, _, _) =>
        {
            document.Info.Title = "Clothwright studio";
            document.Info.Version = ServerVersion;
            // The same wherever it listens.
            document.Servers = [];
            return Task.CompletedTask;
        }));
        WebApplication server = builder.Build();
        server.UseMiddleware<GuardHeaders>();
        server.UseMiddleware<ProblemCatcher>();
        server.UseMiddleware<HostGuard>();
        server.UseMiddleware<CrossSiteGuard>();
        server.UseRouting();
        server.MapStudioApi();
        server.MapPage();
        return server;
    }

    // It listens on every address; in its own window it is best opened by the name that never changes.
    private static Uri Shown(Uri address) => address.Host is "[::]" or "0.0.0.0" ? new UriBuilder(address) { Host = "localhost" }.Uri : address;

    private static async Task WarnOfNetworkAsync(int port)
    {
        await Console.Out.WriteLineAsync("It is open to the network: whoever is in it can read and change everything, and what is sent can be listened to. Use it in a house or class that you trust, never in a public place.");
        foreach (IPAddress address in HostNames.Addresses().Where(a => a.AddressFamily == System.Net.Sockets.AddressFamily.InterNetwork))
        {
            await Console.Out.WriteLineAsync($"Other devices open it at http://{address}:{port.ToString(System.Globalization.CultureInfo.InvariantCulture)}");
        }
    }

    /// <summary>The address at which a started server listens.</summary>
    /// <param name="server">The server.</param>
    public static Uri AddressOf(WebApplication server)
    {
        ArgumentNullException.ThrowIfNull(server);
        string address = server.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses.FirstOrDefault()
            ?? throw new InvalidOperationException("The server was not started.");
        return Shown(new Uri(address));
    }
}
