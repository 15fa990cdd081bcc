using System.Text;
using Clothwright.TestKit;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class OpeningTests(Studio studio)
{
    private const string Twill = "1100\n0110\n0011\n1001\n";

    [Theory]
    [InlineData(1440, 900)]
    [InlineData(820, 1180)]
    [InlineData(390, 844)]
    public async Task From_an_empty_studio_a_piece_that_is_wanted_leads_to_a_handout(int width, int height)
    {
        await using Visit visit = await studio.OpenAsync(width, height, address: "begin?from=piece", demo: false);
        await visit.Page.Locator("#begin-kind").SelectOptionAsync("towel");
        await visit.WriteAsync("begin-width", "40");
        await Expect(visit.Page.Locator("#preview")).ToContainTextAsync("ends at");
        await visit.Page.Locator("#begin").ClickAsync();
        await Expect(visit.Page.Locator("#piece-0-width")).ToHaveValueAsync("40 cm");
        await Expect(visit.Page.Locator(".settle")).ToContainTextAsync("nothing to settle");
        await visit.WriteAsync("piece-0-count", "2");
        await visit.KeptAsync();
        Assert.Equal(0, await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));

        // The tally stays in sight wherever she reads.
        await visit.Page.Locator("#money").ScrollIntoViewIfNeededAsync();
        await Expect(visit.Page.Locator("#tally-ends")).ToBeInViewportAsync();
        await Expect(visit.Page.Locator("#tally-hours")).ToBeInViewportAsync();

        byte[] pdf = await HandoutAsync(visit);
        Assert.Equal("%PDF", Encoding.Latin1.GetString(pdf, 0, 4));
    }

    [Fact]
    public async Task An_empty_studio_opens_on_the_three_ways_in()
    {
        await using Visit visit = await studio.OpenAsync(address: "begin", demo: false);
        await visit.Page.GotoAsync("/");
        await Expect(visit.Page.Locator(".ways a")).ToHaveCountAsync(3);
        await Expect(visit.Page).ToHaveTitleAsync("Begin a worksheet · Clothwright");
    }

    [Fact]
    public async Task A_label_in_the_hand_is_enough_to_begin()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.Page.Locator("#begin-yarns").ClickAsync();
        await visit.Page.Locator("#quick-words").FillAsync("400 m / 100 g alpaca, foam, 2 skeins");
        string name = await visit.BlankAsync("quick-name");
        await Expect(visit.Page.Locator("#begin-warp")).ToHaveValueAsync(name);
        await Expect(visit.Page.Locator("#preview")).ToContainTextAsync("ends at");
        await visit.Page.Locator("#begin").ClickAsync();
        await Expect(visit.Page.Locator("#yarns")).ToContainTextAsync(name);
        // 100 g ÷ 400 m = 250 g/km = 250 tex, by the definition of tex (ISO 1144).
        await Expect(visit.Page.Locator("[id^='yarn-'][id$='-tex']").First).ToContainTextAsync("250 tex");
        await visit.KeptAsync();
        await Expect(visit.Page.Locator(".welcome")).ToHaveCountAsync(0);

        // What was told once lies on the shelf from then on.
        await visit.GoAsync("shelf");
        await Expect(visit.Page.Locator(".shelf-yarns")).ToContainTextAsync(name);
    }

    [Fact]
    public async Task Two_yarns_told_in_words_are_warp_and_weft_and_the_weft_can_be_let_go_again()
    {
        await using Visit visit = await studio.OpenAsync(address: "begin?from=yarns", demo: false);
        await visit.Page.Locator("#quick-words").FillAsync("8/2 cotton, 500 g cone, ebb grey");
        await visit.Page.Locator("#begin-keep").UncheckAsync();
        await visit.Page.Locator("#begin-add").ClickAsync();
        await visit.Page.Locator("#quick-words").FillAsync("8/2 cotton, 250 g cone, buoy red");
        await Expect(visit.Page.Locator("#begin-warp")).ToHaveValueAsync("8/2 cotton, ebb grey");
        await Expect(visit.Page.Locator("#begin-weft")).ToHaveValueAsync("8/2 cotton, buoy red");
        await visit.Page.Locator("#quick-words").FillAsync("");
        await Expect(visit.Page.Locator("#begin-weft")).ToHaveValueAsync("8/2 cotton, ebb grey");
        await visit.Page.Locator("#begin").ClickAsync();
        await Expect(visit.Page.Locator("#warp-yarn")).ToHaveValueAsync("8/2 cotton, ebb grey");
        await visit.KeptAsync();
        await visit.GoAsync("shelf");
        await Expect(visit.Page.Locator("#search-found")).ToContainTextAsync("0 of 0");
    }

    [Fact]
    public async Task A_draft_file_is_enough_to_begin()
    {
        await using Visit visit = await studio.OpenAsync(address: "begin?from=draft");
        await visit.Page.WaitForSelectorAsync("#draft-file");
        await visit.DropAsync("tide-twill.txt", Twill);
        await Expect(visit.Page.Locator("#begin-draft-read")).ToContainTextAsync("4 shafts, 4 ends by 4 picks");
        await visit.Page.Locator("#begin").ClickAsync();
        await Expect(visit.Page.Locator("#draft-name")).ToHaveValueAsync("tide-twill");
        await visit.KeptAsync();
    }

    [Fact]
    public async Task A_WIF_file_dropped_on_the_worksheet_becomes_its_weave_and_undo_brings_the_old_one_back()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.KeptAsync();
        string wif = Directory.EnumerateFiles(Repository.PathOf("samples"), "*.wif").Select(File.ReadAllText).FirstOrDefault() ?? await visit.Page.EvaluateAsync<string>("fetch('/api/worksheets/heron-shawl/draft.wif').then(r => r.text())");
        await visit.DropAsync("heron.wif", wif);
        await Expect(visit.Page.Locator("#dropped")).ToContainTextAsync("heron.wif gives the weave now");
        // A draft of her own stands in place of the name of a weave, under the title that the file gives it.
        await Expect(visit.Page.Locator("#draft-name")).ToHaveValueAsync("2/1 twill");
        await visit.KeptAsync();
        await visit.Page.Locator("#undo").ClickAsync();
        await Expect(visit.Page.Locator("#weave-name")).ToHaveValueAsync("2/2 twill");
    }

    [Fact]
    public async Task A_file_that_is_no_draft_is_refused_in_words_and_changes_nothing()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.DropAsync("letter.txt", "the tide is out");
        await Expect(visit.Page.Locator("#dropped")).ToHaveAttributeAsync("role", "alert");
        await Expect(visit.Page.Locator("#weave-name")).ToHaveValueAsync("2/2 twill");
        await Expect(visit.Page.Locator("#undo")).ToHaveAttributeAsync("aria-disabled", "true");
    }

    [Fact]
    public async Task The_whole_way_from_a_first_visit_to_the_handout_goes_by_keyboard_alone()
    {
        await using Visit visit = await studio.OpenAsync();
        IKeyboard keys = visit.Page.Keyboard;
        await visit.TabToAsync("begin-piece");
        await keys.PressAsync("Enter");
        await visit.TabToAsync("begin-width");
        await keys.PressAsync("Control+a");
        await keys.TypeAsync("25");
        await visit.TabToAsync("begin");
        await keys.PressAsync("Enter");
        await visit.TabToAsync("piece-0-length");
        await keys.PressAsync("Control+a");
        await keys.TypeAsync("150");
        await keys.PressAsync("Control+z");
        await Expect(visit.Page.Locator("#piece-0-length")).ToHaveValueAsync("180 cm");
        await visit.KeptAsync();
        await visit.TabToAsync("sett-scale");
        await keys.PressAsync("ArrowRight");
        await visit.KeptAsync();
        await visit.TabToAsync("handout");
        Assert.Equal("%PDF", Encoding.Latin1.GetString(await HandoutAsync(visit), 0, 4));
    }

    [Fact]
    public async Task Markup_in_names_is_shown_as_text()
    {
        const string Markup = "<img src=x onerror=\"document.title='taken'\"><b>ebb</b>";
        await using Visit visit = await studio.OpenAsync();
        await visit.WriteAsync("title", Markup);
        await visit.WriteAsync("piece-0-name", Markup);
        await visit.KeptAsync();
        await Expect(visit.Page.Locator("#yarns")).ToContainTextAsync("<b>ebb</b>");
        Assert.Equal(0, await visit.Page.Locator("img, #yarns b").CountAsync());
        await visit.GoAsync("sheets");
        await Expect(visit.Page.Locator(".sheets")).ToContainTextAsync("<b>ebb</b>");
        Assert.NotEqual("taken", await visit.Page.TitleAsync());
        Assert.Equal(0, await visit.Page.Locator("img").CountAsync());
    }

    private static async Task<byte[]> HandoutAsync(Visit visit)
    {
        string address = (await visit.Page.Locator("#handout").GetAttributeAsync("href"))!;
        IAPIResponse answer = await visit.Page.APIRequest.GetAsync($"{visit.Server.Address}/{address}");
        Assert.True(answer.Ok, answer.StatusText);
        return await answer.BodyAsync();
    }
}
