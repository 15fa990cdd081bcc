using Microsoft.Playwright;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class AccessibilityTests(Studio studio)
{
    [Theory]
    [InlineData(1440, 900, ColorScheme.Light)]
    [InlineData(820, 1180, ColorScheme.Dark)]
    [InlineData(390, 844, ColorScheme.Light)]
    public async Task The_worksheet_holds_no_hindrance(int width, int height, ColorScheme scheme)
    {
        await using Visit visit = await studio.OpenAsync(width, height, scheme);
        await visit.Page.Locator("#warp-length").ClickAsync();
        foreach (ILocator more in await visit.Page.Locator(".more > summary").AllAsync()) await more.ClickAsync();
        Assert.Equal("", await visit.HindrancesAsync());
    }

    [Theory]
    [InlineData(1440, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Light)]
    public async Task The_other_pages_of_the_studio_hold_no_hindrance(int width, ColorScheme scheme)
    {
        await using Visit visit = await studio.OpenAsync(width, 900, scheme, address: "sheets");
        foreach (string address in (string[])["sheets", "begin?from=yarns", "begin?from=piece", "begin?from=draft", "sheets/reedbed-scarves/saves", "sheets/lost-at-sea"])
        {
            await visit.GoAsync(address);
            await visit.Page.WaitForSelectorAsync("main h1");
            Assert.Equal("", await visit.HindrancesAsync());
            Assert.Equal(0, await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));
        }
    }

    [Theory]
    [InlineData(1440)]
    [InlineData(720)]
    [InlineData(390)]
    [InlineData(320)]
    public async Task Nothing_runs_off_the_side(int width)
    {
        // 720 is a desk's window at 200 %; 320 is the narrowest that WCAG 2.2, success criterion 1.4.10, asks for.
        await using Visit visit = await studio.OpenAsync(width, 800);
        int excess = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.Equal(0, excess);
    }
}
