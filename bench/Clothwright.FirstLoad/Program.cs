using System.Globalization;
using Clothwright.FirstLoad;
using Microsoft.Playwright;

// Opens the page of a published server in a browser without a past (cold), then again in the same browser (warm).
// Usage: dotnet run -c Release --project bench/Clothwright.FirstLoad -- PUBLISHED-SERVER-FOLDER [TIMES]
string folder = Path.GetFullPath(args.Length > 0 ? args[0] : "artifacts/bench-studio");
int times = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 5;
await using PublishedServer server = await PublishedServer.StartAsync(folder);
using IPlaywright playwright = await Playwright.CreateAsync();
await using IBrowser browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
{
    ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") ?? "/usr/bin/chromium",
    Args = ["--no-sandbox", "--disable-gpu"],
});

ICDPSession processes = await browser.NewBrowserCDPSessionAsync();
List<double> cold = [];
List<double> warm = [];
List<double> coldWork = [];
List<double> warmWork = [];
Payload payload = new(0, 0, 0);
for (int i = 0; i < times; i++)
{
    await using IBrowserContext context = await browser.NewContextAsync();
    context.SetDefaultTimeout(120_000);
    IPage page = await context.NewPageAsync();
    double begun = await Opening.WorkAsync(processes);
    cold.Add(await Opening.TimeAsync(page, server.Address));
    coldWork.Add(await Opening.WorkAsync(processes) - begun);
    payload = await Payload.OfAsync(page, folder);
    // The browser has taken the page into its keeping by then.
    await page.WaitForFunctionAsync("() => navigator.serviceWorker.controller?.state === 'activated'");
    begun = await Opening.WorkAsync(processes);
    warm.Add(await Opening.TimeAsync(page, server.Address));
    warmWork.Add(await Opening.WorkAsync(processes) - begun);
}

Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"cold, from the address to a usable worksheet: median {Opening.Median(cold):0} ms ({cold.Min():0} to {cold.Max():0})"));
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"warm, the same browser again: median {Opening.Median(warm):0} ms ({warm.Min():0} to {warm.Max():0})"));
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"processor time of the browser: cold median {Opening.Median(coldWork):0} ms (from {coldWork.Min():0}), warm median {Opening.Median(warmWork):0} ms (from {warmWork.Min():0})"));
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"loaded: {payload.Files} files, {payload.Brotli / 1024.0:0} KiB as brotli; {payload.Transferred / 1024.0:0} KiB went over the wire"));
await using IBrowserContext measuring = await browser.NewContextAsync();
IPage measure = await measuring.NewPageAsync();
await measure.GotoAsync($"{server.Address}/measure");
await measure.Locator("#measure-state").GetByText("done").WaitForAsync(new LocatorWaitForOptions { Timeout = 600_000 });
foreach (ILocator row in await measure.Locator("tbody tr").AllAsync()) Console.WriteLine(string.Join(": ", await row.Locator("td").AllInnerTextsAsync()));
