using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class SavingTests(Studio studio)
{
    [Fact]
    public async Task A_step_is_saved_in_the_studio_and_another_device_opens_it()
    {
        await using Visit desk = await studio.OpenAsync();
        await desk.WriteAsync("piece-0-width", "30 cm");
        await desk.KeptAsync();
        await using Visit tablet = await studio.OpenAsync(820, 1180, with: desk);
        Assert.Equal("30 cm", await tablet.BlankAsync("piece-0-width"));
    }

    [Fact]
    public async Task Steps_made_while_the_studio_is_away_are_kept_and_sent_when_it_answers()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.KeptAsync();
        await visit.Server.KillAsync();
        await visit.WriteAsync("piece-0-width", "30 cm");
        await visit.StandsAsync("Away");
        await Expect(visit.Page.Locator("#state")).ToHaveTextAsync("kept here; sent when the studio answers");
        await visit.WriteAsync("title", "Ebb scarves");
        await Expect(visit.Page.Locator(".take-away")).ToContainTextAsync("when the studio answers");
        await visit.Server.ReviveAsync();
        await visit.KeptAsync();
        await using Visit other = await studio.OpenAsync(with: visit);
        Assert.Equal("30 cm", await other.BlankAsync("piece-0-width"));
        Assert.Equal("Ebb scarves", await other.BlankAsync("title"));
    }

    [Fact]
    public async Task What_was_left_unsent_is_sent_at_the_next_visit()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.KeptAsync();
        await visit.Server.KillAsync();
        await visit.WriteAsync("title", "Ebb scarves");
        await visit.StandsAsync("Away");
        await visit.Page.GotoAsync("about:blank");
        await visit.Server.ReviveAsync();
        await visit.GoAsync("sheets/heron-shawl");
        await Expect(visit.Page.Locator("#title")).Not.ToHaveValueAsync("Ebb scarves");
        await using Visit other = await studio.OpenAsync(with: visit, address: "sheets");
        await other.WaitForAsync(async () =>
        {
            await other.GoAsync("sheets");
            return await other.Page.GetByText("Ebb scarves").CountAsync() == 1;
        });
    }

    [Fact]
    public async Task Another_part_changed_on_another_device_is_joined_and_undo_takes_back_her_own_steps_only()
    {
        await using Visit desk = await studio.OpenAsync();
        await using Visit tablet = await studio.OpenAsync(820, 1180, with: desk);
        await tablet.KeptAsync();
        await desk.WriteAsync("title", "Ebb scarves");
        await desk.KeptAsync();
        await tablet.WriteAsync("piece-0-width", "30 cm");
        await Expect(tablet.Page.Locator("#title")).ToHaveValueAsync("Ebb scarves");
        await Expect(tablet.Page.Locator("#came-in")).ToContainTextAsync("Name and note");
        await tablet.KeptAsync();
        await tablet.Page.Locator("#undo").ClickAsync();
        await Expect(tablet.Page.Locator("#piece-0-width")).ToHaveValueAsync("21 cm");
        await Expect(tablet.Page.Locator("#title")).ToHaveValueAsync("Ebb scarves");
        await tablet.ReloadAsync();
        Assert.Equal("Ebb scarves", await tablet.BlankAsync("title"));
    }

    [Theory]
    [InlineData("mine", "Flood scarves")]
    [InlineData("theirs", "Ebb scarves")]
    public async Task The_same_part_changed_on_two_devices_is_asked_about_and_never_overwritten(string answer, string outcome)
    {
        await using Visit desk = await studio.OpenAsync();
        await using Visit tablet = await studio.OpenAsync(820, 1180, with: desk);
        await tablet.KeptAsync();
        await desk.WriteAsync("title", "Ebb scarves");
        await desk.KeptAsync();
        await tablet.WriteAsync("title", "Flood scarves");
        await tablet.WriteAsync("piece-0-width", "30 cm");
        await tablet.StandsAsync("Asking");
        ILocator question = tablet.Page.Locator("#question");
        await Expect(question).ToBeFocusedAsync();
        await Expect(question).ToContainTextAsync("Ebb scarves");
        await Expect(question).ToContainTextAsync("Flood scarves");
        Assert.Equal("", await tablet.HindrancesAsync());
        await desk.ReloadAsync();
        Assert.Equal("Ebb scarves", await desk.BlankAsync("title"));

        await tablet.Page.Locator($"#{answer}-Title").CheckAsync();
        await tablet.Page.Locator("#answer").ClickAsync();
        await tablet.KeptAsync();
        Assert.Equal(outcome, await tablet.BlankAsync("title"));
        Assert.Equal("30 cm", await tablet.BlankAsync("piece-0-width"));
        await desk.ReloadAsync();
        await Expect(desk.Page.Locator("#title")).ToHaveValueAsync(outcome);
        await Expect(desk.Page.Locator("#piece-0-width")).ToHaveValueAsync("30 cm");
    }

    [Fact]
    public async Task Two_tabs_of_one_browser_show_the_same_worksheet()
    {
        await using Visit first = await studio.OpenAsync();
        await using Visit second = await first.TabAsync();
        await first.WriteAsync("piece-0-width", "30 cm");
        await Expect(second.Page.Locator("#piece-0-width")).ToHaveValueAsync("30 cm");
        await second.WriteAsync("title", "Ebb scarves");
        await Expect(first.Page.Locator("#title")).ToHaveValueAsync("Ebb scarves");
        await first.Page.Locator("#undo").ClickAsync();
        await Expect(second.Page.Locator("#title")).ToHaveValueAsync("Two reedbed scarves");
        await first.KeptAsync();
        await second.KeptAsync();
    }

    [Fact]
    public async Task Two_tabs_that_did_not_hear_each_other_are_joined_or_asked()
    {
        await using Visit first = await studio.OpenAsync();
        await first.KeptAsync();
        await using Visit second = await first.TabAsync();
        // A tab that was asleep hears nothing.
        await second.Page.AddInitScriptAsync("window.BroadcastChannel = class { constructor() { throw new Error('asleep'); } };");
        await second.ReloadAsync();
        await first.WriteAsync("title", "Ebb scarves");
        await first.KeptAsync();
        await second.WriteAsync("title", "Flood scarves");
        await second.StandsAsync("Asking");
        await Expect(first.Page.Locator("#title")).ToHaveValueAsync("Ebb scarves");
        await second.Page.Locator("#mine-Title").CheckAsync();
        await second.Page.Locator("#answer").ClickAsync();
        await second.KeptAsync();
        await first.ReloadAsync();
        await Expect(first.Page.Locator("#title")).ToHaveValueAsync("Flood scarves");
        await first.Page.Locator("#undo").ClickAsync();
        await Expect(first.Page.Locator("#title")).ToHaveValueAsync("Ebb scarves");
    }

    [Fact]
    public async Task An_earlier_save_is_brought_back_and_that_can_be_undone()
    {
        await using Visit visit = await studio.OpenAsync();
        await visit.WriteAsync("title", "Ebb scarves");
        await visit.KeptAsync();
        await visit.Page.Locator("#saves").ClickAsync();
        await Expect(visit.Page.Locator(".saves li")).ToHaveCountAsync(2);
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Bring back save 1" }).ClickAsync();
        await Expect(visit.Page.Locator("#title")).ToHaveValueAsync("Two reedbed scarves");
        await visit.Page.Locator("#undo").ClickAsync();
        await Expect(visit.Page.Locator("#title")).ToHaveValueAsync("Ebb scarves");
        await visit.KeptAsync();
    }

    [Fact]
    public async Task A_worksheet_is_put_away_and_brought_back()
    {
        await using Visit visit = await studio.OpenAsync(address: "sheets");
        ILocator shawl = visit.Page.Locator(".sheets a[href$='heron-shawl']");
        string title = await shawl.InnerTextAsync();
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = $"Put away: {title}" }).ClickAsync();
        await Expect(shawl).ToHaveCountAsync(0);
        await visit.Page.Locator(".pick label", new PageLocatorOptions { HasText = "put away" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = $"Bring back: {title}" }).ClickAsync();
        await visit.Page.Locator(".pick label", new PageLocatorOptions { HasText = "at hand" }).ClickAsync();
        await shawl.ClickAsync();
        await Expect(visit.Page.Locator("#title")).ToHaveValueAsync(title);
    }
}
