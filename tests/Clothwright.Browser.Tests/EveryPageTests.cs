using Microsoft.Playwright;

namespace Clothwright.Browser.Tests;

/// <summary>Every page of the studio in both languages, by day and by night, on a desk, a tablet and a phone: one load for each language.</summary>
[Collection(StudioTests.Name)]
public class EveryPageTests(Studio studio)
{
    private static readonly (string Address, string Shows)[] Pages =
    [
        ("", ".tally"), ("sheets", "main h1"), ("begin", "main h1"), ("shelf", "main h1"), ("bench", "main h1"), ("count", "main h1"), ("measure", "main h1"),
        ("sheets/reedbed-scarves", ".tally"),
    ];

    private static readonly (int Width, int Height)[] Sizes = [(1440, 900), (820, 1180), (390, 844)];

    private static readonly ColorScheme[] Lights = [ColorScheme.Light, ColorScheme.Dark];

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public async Task No_page_holds_a_hindrance(string language)
    {
        await using Visit visit = await studio.OpenAsync(language: language);
        Assert.Equal(language, await visit.Page.EvaluateAsync<string>("document.documentElement.lang"));
        var hindrances = new List<string>();
        foreach ((string address, string shows) in Pages)
        {
            await visit.Page.EvaluateAsync("address => Blazor.navigateTo('/' + address)", address);
            await visit.Page.WaitForURLAsync($"**/{address}");
            await visit.Page.WaitForSelectorAsync(shows);
            if (address.StartsWith("sheets/", StringComparison.Ordinal)) await OpenDraftDeskAsync(visit);
            foreach ((int width, int height) in Sizes)
            {
                await visit.Page.SetViewportSizeAsync(width, height);
                foreach (ColorScheme light in Lights)
                {
                    await visit.Page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = light, ReducedMotion = ReducedMotion.Reduce });
                    string found = await visit.HindrancesAsync();
                    if (found.Length > 0) hindrances.Add($"/{address}, {width} × {height}, {light}:\n{found}");
                }

                int excess = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
                if (excess > 0) hindrances.Add($"/{address} runs off the side by {excess} at {width}.");
            }
        }

        Assert.True(hindrances.Count == 0, string.Join('\n', hindrances));
        Assert.Empty(visit.Complaints);
    }

    private static async Task OpenDraftDeskAsync(Visit visit)
    {
        await visit.Page.WaitForSelectorAsync("#draft-sheet");
        foreach (ILocator more in await visit.Page.Locator(".more > summary").AllAsync()) await more.ClickAsync();
    }
}
