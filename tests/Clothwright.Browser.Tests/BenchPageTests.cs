using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class BenchPageTests(Studio studio)
{
    [Fact]
    public async Task A_loom_is_added_altered_kept_and_chosen_on_a_worksheet()
    {
        await using Visit visit = await OpenAsync();
        int looms = await visit.Page.Locator("#looms .tools > li").CountAsync();
        await visit.Page.Locator("#add-loom").ClickAsync();
        await visit.Page.Locator($"#loom-{looms}-name").FillAsync("estuary loom");
        await visit.Page.Locator($"#loom-{looms}-kind").SelectOptionAsync("a floor loom");
        await visit.Page.Locator($"#loom-{looms}-shafts").FillAsync("8");
        await visit.Page.Locator($"#loom-{looms}-width").FillAsync("110 cm");
        await Expect(visit.Page.Locator("#bench-said")).ToContainTextAsync("not kept yet");
        await visit.Page.Locator("#bench-keep").ClickAsync();
        await Expect(visit.Page.Locator("#bench-said")).ToContainTextAsync("is kept");

        await visit.Server.KillAsync();
        await visit.Server.ReviveAsync();
        await visit.Page.ReloadAsync();
        await Expect(visit.Page.Locator($"#loom-{looms}-name")).ToHaveValueAsync("estuary loom");
        await Expect(visit.Page.Locator($"#loom-{looms}-width")).ToHaveValueAsync("110 cm");

        await visit.Page.GotoAsync(".");
        await visit.Page.Locator("#loom").SelectOptionAsync("estuary loom (from the bench)");
        await Expect(visit.Page.Locator("#loom")).ToHaveValueAsync("estuary loom");
    }

    [Fact]
    public async Task A_reed_is_altered_and_removed()
    {
        await using Visit visit = await OpenAsync();
        int reeds = await visit.Page.Locator("#reeds .tools > li").CountAsync();
        await visit.Page.Locator("#add-reed").ClickAsync();
        await visit.Page.Locator($"#reed-{reeds}-dents").FillAsync("12/in");
        await visit.Page.Locator("#bench-keep").ClickAsync();
        await Expect(visit.Page.Locator("#bench-said")).ToContainTextAsync("is kept");
        await visit.Page.Locator($"#reed-{reeds}-remove").ClickAsync();
        await visit.Page.Locator("#bench-keep").ClickAsync();
        await Expect(visit.Page.Locator("#reeds .tools > li")).ToHaveCountAsync(reeds);
    }

    [Fact]
    public async Task A_bench_that_was_changed_elsewhere_is_asked_about()
    {
        await using Visit visit = await OpenAsync();
        await using Visit other = await studio.OpenAsync(address: "bench", with: visit);
        await visit.Page.Locator("#loom-0-name").FillAsync("mine");
        await other.Page.Locator("#loom-0-name").FillAsync("theirs");
        await other.Page.Locator("#bench-keep").ClickAsync();
        await Expect(other.Page.Locator("#bench-said")).ToContainTextAsync("is kept");
        await visit.Page.Locator("#bench-keep").ClickAsync();
        await visit.Page.Locator("#bench-theirs").ClickAsync();
        await Expect(visit.Page.Locator("#loom-0-name")).ToHaveValueAsync("theirs");
    }

    [Fact]
    public async Task Units_chosen_on_the_bench_hold_on_the_shelf_and_after_the_page_was_left()
    {
        // 1 in = 2.54 cm exactly (international yard and pound agreement, 1959): the 40 cm table loom is 15.748 in wide.
        await using Visit visit = await OpenAsync();
        await Expect(visit.Page.Locator("#loom-0-width")).ToHaveValueAsync("40 cm");
        await visit.Page.Locator("#studio-units").SelectOptionAsync("in, oz");
        await Expect(visit.Page.Locator("#loom-0-width")).ToHaveValueAsync("15.75 in");
        await visit.GoAsync("shelf");
        await Expect(visit.Page.Locator("#studio-units")).ToHaveValueAsync("in, oz");
        // 1 oz = 28.349523125 g and 1 yd = 0.9144 m exactly (the same agreement).
        await Expect(visit.Page.Locator("#tide-blue-mass")).ToContainTextAsync("oz");
        await Expect(visit.Page.Locator("#tide-blue-length")).ToContainTextAsync("yd");
    }

    [Theory]
    [InlineData("shelf", 1440, 900, ColorScheme.Light)]
    [InlineData("shelf", 820, 1180, ColorScheme.Dark)]
    [InlineData("shelf", 390, 844, ColorScheme.Light)]
    [InlineData("shelf", 390, 844, ColorScheme.Dark)]
    [InlineData("bench", 1440, 900, ColorScheme.Dark)]
    [InlineData("bench", 820, 1180, ColorScheme.Light)]
    [InlineData("bench", 390, 844, ColorScheme.Dark)]
    public async Task Shelf_and_bench_hold_no_hindrance(string address, int width, int height, ColorScheme scheme)
    {
        await using Visit visit = await studio.OpenAsync(width, height, scheme, address);
        if (address == "shelf")
        {
            await visit.Page.Locator("#quick-words").FillAsync("2/8 wool, 250 g skein, moss");
            await visit.Page.Locator("#tide-blue-open").ClickAsync();
            await visit.Page.Locator("#unknown-length").FillAsync("10 m");
            await visit.Page.Locator("#unknown-mass").FillAsync("1.48 g");
            await Expect(visit.Page.Locator(".readings li").First).ToBeVisibleAsync();
            await visit.Page.Locator("[id$='-add-package']").ClickAsync();
            await visit.Page.Locator("#table-file").SetInputFilesAsync(new FilePayload { Name = "t.csv", MimeType = "text/csv", Buffer = "Garn;Nummer\nPriel;8/2"u8.ToArray() });
            await Expect(visit.Page.Locator("#table-problems")).ToBeVisibleAsync();
        }

        else
        {
            await visit.Page.WaitForSelectorAsync("#bench-keep");
        }

        AxeResult result = await visit.Page.RunAxe();
        Assert.Equal("", string.Join('\n', result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {v.Help} {n.Html}"))));
        Assert.Equal(0, await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));
    }

    private async Task<Visit> OpenAsync()
    {
        Visit visit = await studio.OpenAsync(address: "bench");
        await visit.Page.WaitForSelectorAsync("#bench-keep");
        return visit;
    }
}
