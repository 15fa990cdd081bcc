using Microsoft.Playwright;

namespace Clothwright.Browser.Tests;

/// <summary>One browser for all tests; each visit has an empty store, and a server with a studio of its own unless it shares another's.</summary>
public sealed class Studio : IAsyncLifetime
{
    // Milliseconds: a busy machine is slow, not wrong.
    private const float Patience = 120_000;

    private const string Chromium = "/usr/bin/chromium";

    private string _program = "";
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Opens the page in a browser without a past.</summary>
    /// <param name="width">Width of its window in pixels.</param>
    /// <param name="height">Height of its window in pixels.</param>
    /// <param name="scheme">Whether the device asks for light or dark.</param>
    /// <param name="address">The page that is opened, without the slash at its beginning.</param>
    /// <param name="language">The language that the browser asks for.</param>
    /// <param name="demo">Whether the demo studio is in it.</param>
    /// <param name="keepsPage">Whether the browser keeps the page itself, so that it opens without the server; else every load asks the server.</param>
    /// <param name="through">Puts something between browser and server: from the server's address to the one that is visited.</param>
    /// <param name="with">A visit whose server is visited too, from another device; null for a server of its own.</param>
    public async Task<Visit> OpenAsync(
        int width = 1440,
        int height = 900,
        ColorScheme scheme = ColorScheme.Light,
        string address = "",
        string language = "en",
        bool demo = true,
        bool keepsPage = false,
        Func<string, string>? through = null,
        Visit? with = null)
    {
        StudioProcess server = with?.Server ?? await StudioProcess.StartAsync(_program, demo);
        try
        {
            IBrowserContext context = await _browser!.NewContextAsync(new BrowserNewContextOptions
            {
                ViewportSize = new ViewportSize { Width = width, Height = height },
                ColorScheme = scheme,
                ReducedMotion = ReducedMotion.Reduce,
                BaseURL = through?.Invoke(server.Address) ?? server.Address,
                ServiceWorkers = keepsPage ? ServiceWorkerPolicy.Allow : ServiceWorkerPolicy.Block,
                Locale = language,
            });
            context.SetDefaultTimeout(Patience);
            return await Visit.BeginAsync(context, server, owns: with is null, address);
        }
        catch when (with is null)
        {
            // Nobody else would end it.
            await server.DisposeAsync();
            throw;
        }
    }

    /// <inheritdoc />
    public async Task InitializeAsync()
    {
        Assertions.SetDefaultExpectTimeout(Patience / 4);
        _program = await PublishedStudio.MakeAsync();
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
    }
}
