using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class KeyboardTests(Studio studio)
{
    [Fact]
    public async Task The_working_of_a_figure_opens_by_keyboard_and_gives_the_focus_back()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.Page.Locator("#warp-length").FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        await Expect(visit.Page.Locator("#warp-length-working")).ToBeFocusedAsync();
        await Expect(visit.Page.Locator("#warp .working")).ToContainTextAsync("loom waste");
        await visit.Page.Keyboard.PressAsync("Escape");
        await Expect(visit.Page.Locator("#warp .working")).ToHaveCountAsync(0);
        await Expect(visit.Page.Locator("#warp-length")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task The_sett_scale_moves_by_arrow_keys()
    {
        await using Visit visit = await studio.OpenAsync();
        string before = await visit.BlankAsync("sett-value");
        await visit.Page.Locator("#sett-scale").FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(visit.Page.Locator("#sett-value")).Not.ToHaveValueAsync(before);
        await Expect(visit.Page.Locator("#sett")).ToContainTextAsync("is advised");
    }

    [Fact]
    public async Task The_first_stop_of_the_tab_key_leads_to_the_decisions()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.Page.Keyboard.PressAsync("Tab");
        await Expect(visit.Page.Locator(".skip")).ToBeFocusedAsync();
    }
}
