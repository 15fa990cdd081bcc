using Microsoft.Playwright;

namespace Clothwright.Browser.Tests;

/// <summary>One browser and one served page for all tests; each test opens a fresh visit with an empty store.</summary>
public sealed class Studio : IAsyncLifetime
{
    private const string Chromium = "/usr/bin/chromium";

    private SiteServer? _server;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Opens the page in a browser without a past.</summary>
    /// <param name="width">Width of its window in pixels.</param>
    /// <param name="height">Height of its window in pixels.</param>
    /// <param name="scheme">Whether the device asks for light or dark.</param>
    public async Task<Visit> OpenAsync(int width = 1440, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        IBrowserContext context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
            ReducedMotion = ReducedMotion.Reduce,
            BaseURL = _server!.Address,
        });
        return await Visit.BeginAsync(context);
    }

    /// <inheritdoc />
    public async Task InitializeAsync()
    {
        _server = await SiteServer.StartAsync(await PublishedSite.MakeAsync());
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") ?? Chromium,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <inheritdoc />
    public async Task DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_server is not null) await _server.DisposeAsync();
    }
}
