using System.Text.Json;
using Clothwright.Core.Cloths.Look.Pictures;
using Clothwright.TestKit;
using Microsoft.Playwright;

namespace Clothwright.Browser.Tests.Cloths;

/// <summary>A browser that paints cloths with the page's own script, on a graphics card that it imitates.</summary>
public sealed class CardPainter : IAsyncLifetime
{
    private const string Chromium = "/usr/bin/chromium";
    private const string Address = "http://cloth.invalid/";

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>A page that has the painter ready.</summary>
    public async Task<IPage> OpenAsync()
    {
        IPage page = await _browser!.NewPageAsync();
        await page.RouteAsync("**/*", async route =>
        {
            string path = new Uri(route.Request.Url).AbsolutePath;
            if (path == "/") await route.FulfillAsync(new RouteFulfillOptions { ContentType = "text/html", Body = "<!doctype html><title>cloth</title>" });
            else await route.FulfillAsync(new RouteFulfillOptions { ContentType = "text/javascript", Path = Repository.PathOf("src", "Clothwright.Client", "wwwroot", "js", Path.GetFileName(path)) });
        });
        await page.GotoAsync(Address);
        await page.EvaluateAsync("async () => { const [gl, cloth] = await Promise.all([import('/cloth-gl.js'), import('/cloth.js')]); window.painter = gl.Painter.open(); window.clothOf = cloth.clothOf; }");
        return page;
    }

    /// <summary>Paints a view of a cloth on the card.</summary>
    /// <param name="page">A page from <see cref="OpenAsync"/>.</param>
    /// <param name="numbers">The cloth.</param>
    /// <param name="view">The view.</param>
    /// <returns>Red, green, blue and opacity of each pixel, from the upper left.</returns>
    public static async Task<byte[]> PaintAsync(IPage page, LookNumbers numbers, ClothView view)
    {
        string made = await page.EvaluateAsync<string>(
            """
            text => {
              const [n, v] = JSON.parse(text);
              const f = values => Float64Array.from(values);
              const cloth = clothOf(Uint8Array.from(n.rows), n.ends, n.picks, f(n.looks), f(n.lustres), f(n.lights), f(n.stretches), f(n.endRound), f(n.pickRound),
                Uint8Array.from(n.sharedEnds), Uint8Array.from(n.sharedPicks), f(n.measures), false);
              painter.paint(cloth, v);
              let made = '';
              for (const byte of painter.pixels(v.width, v.height)) made += String.fromCharCode(byte);
              return btoa(made);
            }
            """,
            JsonSerializer.Serialize(new[] { Numbers(numbers), View(view) }));
        return Convert.FromBase64String(made);
    }

    /// <inheritdoc />
    public async Task InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") ?? Chromium,
            Args = ["--no-sandbox", "--disable-gpu", "--enable-unsafe-swiftshader", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <inheritdoc />
    public async Task DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
        _playwright?.Dispose();
    }

    private static object Numbers(LookNumbers numbers)
    {
        var arrays = LookArrays.Of(numbers);
        var weave = numbers.Description.Weave;
        var rows = new List<int>();
        for (int pick = 0; pick < weave.Picks; pick++)
        {
            foreach (ulong word in weave.Row(pick)) rows.AddRange(BitConverter.GetBytes(word).Select(b => (int)b));
        }

        return new
        {
            rows,
            ends = weave.Ends,
            picks = weave.Picks,
            looks = arrays.Looks,
            lustres = arrays.Lustres,
            lights = arrays.Lights,
            stretches = arrays.Stretches,
            endRound = arrays.Ends,
            pickRound = arrays.Picks,
            sharedEnds = arrays.SharedEnds.Select(b => (int)b),
            sharedPicks = arrays.SharedPicks.Select(b => (int)b),
            measures = arrays.Measures,
        };
    }

    private static object View(ClothView view) => new
    {
        back = view.Face == Core.Cloths.Look.Face.Back,
        left = view.Left,
        low = view.Low,
        perPixel = view.PerPixel,
        width = view.Width,
        height = view.Height,
        lighting = new
        {
            lamp = new[] { view.Lighting.Lamp.X, view.Lighting.Lamp.Y, view.Lighting.Lamp.Z },
            eye = new[] { view.Lighting.Eye.X, view.Lighting.Eye.Y, view.Lighting.Eye.Z },
        },
        behind = new[] { view.Behind.Red, view.Behind.Green, view.Behind.Blue },
    };
}
