using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class WorksheetTests(Studio studio)
{
    [Fact]
    public async Task The_page_opens_on_two_scarves_and_the_browser_has_nothing_to_complain_of()
    {
        await using Visit visit = await studio.OpenAsync();
        Assert.Equal("Two reedbed scarves", await visit.BlankAsync("title"));
        await Expect(visit.Page.Locator(".tally")).ToContainTextAsync("2 scarves");
        await Expect(visit.Page).ToHaveTitleAsync("Two reedbed scarves · Clothwright");
        await visit.KeptAsync();
        Assert.Empty(visit.Complaints);
    }

    [Fact]
    public async Task A_wider_scarf_takes_ends_in_proportion_at_once()
    {
        await using Visit visit = await studio.OpenAsync();
        int before = await visit.EndsAsync();
        await visit.Page.Locator("#piece-0-width").FillAsync("42");
        int after = await visit.EndsAsync();

        // Twice the width in the reed at one sett: twice the ends, but for whole repeats of four, their balance and two floating selvedges at either size.
        Assert.InRange(after, 2 * before - 12, 2 * before + 12);
    }

    [Fact]
    public async Task Undo_and_redo_go_on_after_a_reload()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.WriteAsync("piece-0-width", "30 cm");
        await visit.WriteAsync("piece-0-length", "150 cm");
        await visit.ReloadAsync();
        Assert.Equal("150 cm", await visit.BlankAsync("piece-0-length"));

        await visit.Page.Locator("#undo").ClickAsync();
        await Expect(visit.Page.Locator("#piece-0-length")).ToHaveValueAsync("180 cm");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Expect(visit.Page.Locator("#piece-0-width")).ToHaveValueAsync("21 cm");
        await visit.ReloadAsync();
        Assert.Equal("21 cm", await visit.BlankAsync("piece-0-width"));

        await visit.Page.Locator("#redo").ClickAsync();
        await visit.Page.Locator("#redo").ClickAsync();
        await Expect(visit.Page.Locator("#piece-0-length")).ToHaveValueAsync("150 cm");
        await Expect(visit.Page.Locator("#redo")).ToHaveAttributeAsync("aria-disabled", "true");
    }

    [Fact]
    public async Task What_cannot_be_read_decides_nothing_and_says_how_to_mend_it()
    {
        await using Visit visit = await studio.OpenAsync();
        int before = await visit.EndsAsync();
        ILocator width = visit.Page.Locator("#piece-0-width");
        await width.FillAsync("");
        await width.PressSequentiallyAsync("30 herons");
        await width.PressAsync("Tab");
        await Expect(visit.Page.Locator("#piece-0-width-mend")).ToContainTextAsync("\"herons\" is not a unit of length");
        Assert.Equal(before, await visit.EndsAsync());
        await Expect(visit.Page.Locator("#undo")).ToHaveAttributeAsync("aria-disabled", "true");
    }

    [Fact]
    public async Task A_warp_wider_than_the_loom_is_said_and_the_last_plan_stays()
    {
        await using Visit visit = await studio.OpenAsync();
        int before = await visit.EndsAsync();
        await visit.Page.Locator("#piece-0-width").FillAsync("90");
        await Expect(visit.Page.Locator("#stop")).ToContainTextAsync("60");
        await Expect(visit.Page.Locator(".settle")).ToContainTextAsync("cannot be planned yet");
        Assert.Equal(before, await visit.EndsAsync());
    }

    [Fact]
    public async Task Customary_units_are_exact()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.Page.Locator("label", new PageLocatorOptions { HasText = "in, oz" }).ClickAsync();

        // 180 cm ÷ 2.54 = 70.87 in (international inch, 1959).
        await Expect(visit.Page.Locator("#piece-0-length")).ToHaveValueAsync("70.87 in");
    }
}
