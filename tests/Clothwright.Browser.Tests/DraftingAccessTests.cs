using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class DraftingAccessTests(Studio studio)
{
    [Theory]
    [InlineData(1440, 900, ColorScheme.Light)]
    [InlineData(1440, 900, ColorScheme.Dark)]
    [InlineData(820, 1180, ColorScheme.Light)]
    [InlineData(390, 844, ColorScheme.Dark)]
    public async Task The_draft_and_all_that_belongs_to_it_hold_no_hindrance(int width, int height, ColorScheme scheme)
    {
        await using Visit visit = await studio.OpenDraftAsync(width, height, scheme);
        await visit.ClickAsync(DraftVisit.Threading, 1, 2);
        await Assertions.Expect(visit.Page.Locator("#trouble-Unthreaded")).ToBeVisibleAsync();
        foreach (ILocator more in await visit.Page.Locator("#weave .more > summary").AllAsync()) await more.ClickAsync();
        await visit.Page.Locator("#making-weave").SelectOptionAsync("overshot");
        AxeResult result = await visit.Page.Locator("#weave").RunAxe();
        Assert.Equal("", string.Join('\n', result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {v.Help} {n.Html}"))));
        int excess = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.Equal(0, excess);
    }

    [Fact]
    public async Task Opened_wide_the_draft_takes_the_width_of_the_page()
    {
        await using Visit visit = await studio.OpenDraftAsync(820, 1180);
        LocatorBoundingBoxResult before = (await visit.Page.Locator("#draft-canvas").BoundingBoxAsync())!;
        await visit.Page.Locator("#draft-wide").ClickAsync();
        LocatorBoundingBoxResult after = (await visit.Page.Locator("#draft-canvas").BoundingBoxAsync())!;
        Assert.True(after.Width > 1.4 * before.Width);
        Assert.True(after.Width > 0.85 * 820);
    }
}
