using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

/// <summary>The page opens while the studio's server is away, and always with the files of one version.</summary>
[Collection(StudioTests.Name)]
public class OfflineTests(Studio studio)
{
    [Fact]
    public async Task Loaded_anew_while_the_studio_is_away_the_page_opens_and_what_is_changed_is_sent_later()
    {
        await using Visit visit = await studio.OpenAsync(keepsPage: true);
        await visit.KeptAsync();
        await visit.PageKeptAsync();
        await visit.Server.KillAsync();
        await visit.Page.ReloadAsync();
        await visit.StandsAsync("Away");
        await visit.WriteAsync("piece-0-width", "30 cm");
        await visit.Page.ReloadAsync();
        await visit.StandsAsync("Away");
        Assert.Equal("30 cm", await visit.BlankAsync("piece-0-width"));
        await visit.WriteAsync("title", "Ebb scarves");
        await visit.Server.ReviveAsync();
        await visit.KeptAsync();
        await using Visit other = await studio.OpenAsync(with: visit);
        Assert.Equal("30 cm", await other.BlankAsync("piece-0-width"));
        Assert.Equal("Ebb scarves", await other.BlankAsync("title"));
    }

    [Fact]
    public async Task Every_page_and_the_draft_open_while_the_studio_is_away()
    {
        await using Visit visit = await studio.OpenAsync(keepsPage: true);
        await visit.KeptAsync();
        await visit.PageKeptAsync();
        await visit.Server.KillAsync();
        foreach (string address in (string[])["sheets", "shelf", "bench", "count", "begin"]) await visit.GoAsync(address);
        await visit.GoAsync("");
        await Expect(visit.Page.Locator("#title")).ToHaveValueAsync("Two reedbed scarves");
        await visit.Page.WaitForFunctionAsync("() => import('/js/draft.js').then(m => m.paintTimes().length > 0)");
    }

    [Fact]
    public async Task A_newer_page_is_taken_at_the_next_load_and_a_window_that_is_open_keeps_its_own()
    {
        await using NewerPage front = await NewerPage.BeginAsync();
        await using Visit first = await studio.OpenAsync(keepsPage: true, through: front.Stand);
        await first.KeptAsync();
        await first.PageKeptAsync();
        string before = Assert.Single(await first.KeptVersionsAsync());
        await front.RenewAsync();
        await using Visit second = await first.TabAsync();
        Assert.Equal(NewerPage.Title, await second.Page.EvaluateAsync<string>("document.documentElement.dataset.version"));

        // The new version is kept whole beside the old one, which goes on serving the window that was there before.
        await second.WaitForAsync(async () => (await second.KeptVersionsAsync()).Length == 2);
        Assert.Null(await first.Page.EvaluateAsync<string?>("document.documentElement.dataset.version ?? null"));
        Assert.Null(await first.Page.EvaluateAsync<string?>("() => fetch('/index.html').then(a => a.text()).then(t => /data-version/.exec(t)?.[0] ?? null)"));
        Assert.Equal("data-version", await second.Page.EvaluateAsync<string?>("() => fetch('/index.html').then(a => a.text()).then(t => /data-version/.exec(t)?.[0] ?? null)"));

        await first.Page.ReloadAsync();
        await first.KeptAsync();
        await first.WaitForAsync(async () => await first.KeptVersionsAsync() is [var one] && one != before);
        front.Leave();
        await first.Page.ReloadAsync();
        await first.StandsAsync("Away");
        Assert.Equal(NewerPage.Title, await first.Page.EvaluateAsync<string>("document.documentElement.dataset.version"));
    }

    [Fact]
    public async Task Another_program_at_the_same_address_is_shown_as_it_is()
    {
        await using NewerPage front = await NewerPage.BeginAsync();
        await using Visit visit = await studio.OpenAsync(keepsPage: true, through: front.Stand);
        await visit.PageKeptAsync();
        front.IsAnother = true;
        await visit.Page.ReloadAsync();
        await Expect(visit.Page.Locator("body")).ToHaveTextAsync(NewerPage.Another);
    }
}
