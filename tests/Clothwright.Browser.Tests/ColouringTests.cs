using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class ColouringTests(Studio studio)
{
    [Fact]
    public async Task A_weft_from_the_shelf_is_seen_in_the_cloth_decided_on_and_taken_back_as_one_step()
    {
        await using Visit visit = await OpenAsync("#weft-finder");
        byte[] before = await visit.Page.Locator("#cloth-canvas").ScreenshotAsync();
        await visit.Page.Locator("#weft-look").ClickAsync();
        // The clearest pattern over a dark blue warp comes of a pale weft, which lies on the studio's shelf alone.
        await visit.Page.Locator("#weft-found label", new() { HasText = "foam" }).ClickAsync();
        await Expect(visit.Page.Locator("#tried")).ToBeVisibleAsync();
        Assert.NotEqual(before, await visit.Page.Locator("#cloth-canvas").ScreenshotAsync());
        await Expect(visit.Page.Locator("#weft-yarn-0")).ToHaveValueAsync("8/2 bamboo, saltmarsh");
        await Expect(visit.Page.Locator("#undo")).ToHaveAttributeAsync("aria-disabled", "true");
        Assert.Equal("", await visit.HindrancesAsync());

        await visit.Page.Locator("#weft-take").ClickAsync();
        await Expect(visit.Page.Locator("#tried")).ToHaveCountAsync(0);
        await Expect(visit.Page.Locator("#weft-yarn-0")).ToHaveValueAsync("alpaca and silk, foam");
        await visit.KeptAsync();
        await visit.Page.Locator("#undo").ClickAsync();
        await Expect(visit.Page.Locator("#weft-yarn-0")).ToHaveValueAsync("8/2 bamboo, saltmarsh");
        await Expect(visit.Page.Locator("#undo")).ToHaveAttributeAsync("aria-disabled", "true");
    }

    [Fact]
    public async Task A_wanted_face_is_told_the_weft_that_it_asks_for()
    {
        await using Visit visit = await OpenAsync("#weft-finder");
        await visit.Page.Locator("#weft-aim").SelectOptionAsync("from afar a face of");
        await visit.Page.Locator("#weft-look").ClickAsync();
        await Expect(visit.Page.Locator("#weft-wanted .swatch")).ToBeVisibleAsync();
        // No weft makes the cloth of a blue warp white.
        await visit.Page.Locator("#weft-colour").FillAsync("#ffffff");
        await visit.Page.Locator("#weft-look").ClickAsync();
        await Expect(visit.Page.Locator("#weft-wanted")).ToContainTextAsync("no weft of any colour");
        await Expect(visit.Page.Locator("#weft-wanted .swatch")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Stripes_are_made_by_keyboard_alone_seen_and_left_again()
    {
        await using Visit visit = await OpenAsync("#stripe-maker");
        IKeyboard keys = visit.Page.Keyboard;
        await visit.TabToAsync("stripes-manner");
        await keys.PressAsync("ArrowDown");
        await visit.TabToAsync("stripes-threads");
        await keys.PressAsync("Control+a");
        await keys.TypeAsync("200");
        // 1, 1, 2, 3, 5 and 8 (Fibonacci's numbers, OEIS A000045) are 20 parts; of 200 ends the yarns by turns have 10 + 20 + 50 and 10 + 30 + 80.
        await Expect(visit.Page.Locator("#stripes-outcome")).ToContainTextAsync("80 ends of 8/2 bamboo, tide blue, 120 ends of");
        await visit.TabToAsync("tried-leave");
        await keys.PressAsync("Enter");
        await Expect(visit.Page.Locator("#tried")).ToHaveCountAsync(0);
        await Expect(visit.Page.Locator("#run-0-ends")).ToHaveValueAsync("1");
    }

    [Fact]
    public async Task A_passage_laid_in_the_warp_is_told_in_short_and_undone_at_once()
    {
        await using Visit visit = await OpenAsync("#stripe-maker");
        await visit.WriteAsync("stripes-threads", "100");
        await visit.Page.Locator("#stripes-take").ClickAsync();
        await Expect(visit.Page.Locator("#colours .sentence").First).ToContainTextAsync("50 ends of 8/2 bamboo, tide blue, 50 ends of 8/2 bamboo, saltmarsh");
        await Expect(visit.Page.Locator("#add-run")).ToHaveCountAsync(0);
        await visit.KeptAsync();
        await visit.Page.Locator("#undo").ClickAsync();
        await Expect(visit.Page.Locator("#run-0-ends")).ToHaveValueAsync("1");
    }

    [Fact]
    public async Task Stripes_follow_a_picture_in_the_weft()
    {
        await using Visit visit = await OpenAsync("#stripe-maker");
        await visit.Page.Locator("#stripes-manner").SelectOptionAsync("stripes from a picture");
        await visit.Page.Locator("#stripes-part").SelectOptionAsync("picks of the reed green scarf");
        await visit.Page.Locator("#stripes-threads").FillAsync("100");
        // Two fifths in the colour of the one yarn, three in that of the other, side by side.
        string picture = await visit.Page.EvaluateAsync<string>(
            "() => { const c = document.createElement('canvas'); c.width = 50; c.height = 10; const x = c.getContext('2d'); x.fillStyle = '#2f5f78'; x.fillRect(0, 0, 20, 10); x.fillStyle = '#7c8f52'; x.fillRect(20, 0, 30, 10); return c.toDataURL('image/png').split(',')[1]; }");
        await visit.Page.Locator("#stripes-picture").SetInputFilesAsync(new FilePayload { Name = "shore.png", MimeType = "image/png", Buffer = Convert.FromBase64String(picture) });
        await Expect(visit.Page.Locator("#stripes-outcome")).ToContainTextAsync("40 picks of 8/2 bamboo, tide blue, 60 picks of 8/2 bamboo, saltmarsh");
        await visit.Page.Locator("#stripes-take").ClickAsync();
        await Expect(visit.Page.Locator("#weft-anew-0")).ToBeVisibleAsync();
        await visit.Page.Locator("#weft-anew-0").ClickAsync();
        await Expect(visit.Page.Locator("#weft-yarn-0")).ToHaveValueAsync("8/2 bamboo, tide blue");
    }

    [Fact]
    public async Task A_weave_is_seen_in_the_cloth_while_it_is_chosen_and_brings_the_pattern_weft_that_it_needs()
    {
        await using Visit visit = await OpenAsync("#weave-maker");
        byte[] before = await visit.Page.Locator("#cloth-canvas").ScreenshotAsync();
        await visit.Page.Locator("#making-weave").SelectOptionAsync("overshot");
        await Expect(visit.Page.Locator("#tried")).ToBeVisibleAsync();
        await Expect(visit.Page.Locator("#weave-name")).ToHaveValueAsync("2/2 twill");
        Assert.NotEqual(before, await visit.Page.Locator("#cloth-canvas").ScreenshotAsync());
        await visit.Page.Locator("#tried-take").ClickAsync();
        await Expect(visit.Page.Locator("#weave-name")).ToHaveValueAsync("overshot");
        await Expect(visit.Page.Locator("#stop")).ToHaveCountAsync(0);
        await Expect(visit.Page.Locator("#pattern-yarn-0")).ToHaveValueAsync("8/2 bamboo, tide blue");
        await visit.WriteAsync("weave-name", "plain");
        await Expect(visit.Page.Locator("#pattern-yarn-0")).ToHaveCountAsync(0);
        await Expect(visit.Page.Locator("#stop")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task On_a_phone_the_cloth_stays_in_sight_and_can_be_unfolded()
    {
        await using Visit visit = await studio.OpenAsync(390, 844);
        ILocator cloth = visit.Page.Locator("#cloth-canvas");
        foreach (string section in (string[])["#brief", "#weave", "#money"])
        {
            await visit.Page.Locator(section).ScrollIntoViewIfNeededAsync();
            await Expect(cloth).ToBeInViewportAsync();
        }

        await Expect(visit.Page.Locator("#cloth-side-1")).ToBeHiddenAsync();
        await visit.Page.Locator("#cloth-fold").ClickAsync();
        await visit.Page.Locator("label:has(#cloth-side-1)").ClickAsync();
        await Expect(visit.Page.Locator("#cloth-side-1")).ToBeCheckedAsync();
        Assert.Equal("", await visit.HindrancesAsync());
    }

    private async Task<Visit> OpenAsync(string part)
    {
        Visit visit = await studio.OpenAsync(address: "sheets/reedbed-scarves");
        await visit.Page.Locator($"{part} > summary").ClickAsync();
        return visit;
    }
}
