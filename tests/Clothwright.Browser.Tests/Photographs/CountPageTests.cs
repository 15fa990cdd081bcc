using System.Globalization;
using System.Text.RegularExpressions;
using Clothwright.TestKit.Photographs;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests.Photographs;

/// <summary>Threads counted in a photograph, in the page.</summary>
[Collection(StudioTests.Name)]
public sealed partial class CountPageTests(Studio studio, ITestOutputHelper output)
{
    // Painted with 8 ends and 7 picks to the centimetre; the marks of the page lie 480 pixels apart, which are 60 mm.
    private static readonly SyntheticSwatch Swatch = new()
    {
        Name = "for the page",
        EndsPerCentimetre = 8,
        PicksPerCentimetre = 7,
        PixelsPerMillimetre = 8,
        Jitter = 0.03,
        Hairs = 0.2,
        Blur = 0.6,
        Noise = 0.01,
        Seed = 11,
    };

    private const string Apart = "60 mm";

    [Fact]
    public async Task Ends_and_picks_are_counted_and_the_answer_holds_no_hindrance_in_either_light()
    {
        await using Visit visit = await studio.OpenAsync(address: "count");
        await OpenPhotographAsync(visit);
        await visit.Page.Locator("#apart").FillAsync(Apart);
        await visit.Page.Locator("#apart").PressAsync("Tab");
        double milliseconds = await visit.Page.EvaluateAsync<double>(
            """
            () => new Promise(done => {
              const state = document.getElementById('count-state');
              const start = performance.now();
              new MutationObserver((_, watch) => {
                if (!document.querySelector('.counted')) return;
                watch.disconnect();
                done(performance.now() - start);
              }).observe(state.parentElement, { childList: true, subtree: true, characterData: true });
              document.getElementById('count-cloth').click();
            })
            """);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"From the button to the answer, {Swatch.Side} × {Swatch.Side} pixels: {milliseconds:0} ms"));
        await AssertCountedAsync(visit);
        foreach (ILocator more in await visit.Page.Locator(".more > summary").AllAsync()) await more.ClickAsync();
        foreach (ColorScheme scheme in (ColorScheme[])[ColorScheme.Light, ColorScheme.Dark])
        {
            await visit.Page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
            Assert.Equal("", await visit.HindrancesAsync());
        }

        Assert.Empty(visit.Complaints);
    }

    [Fact]
    public async Task A_photograph_is_chosen_marked_and_counted_by_keyboard_alone()
    {
        await using Visit visit = await studio.OpenAsync(390, 844, address: "count");
        await visit.TabToAsync("photo-file");
        IFileChooser chooser = await visit.Page.RunAndWaitForFileChooserAsync(() => visit.Page.Keyboard.PressAsync("Enter"));
        await chooser.SetFilesAsync(Payload());
        await Expect(visit.Page.Locator("#photo")).ToBeVisibleAsync();
        await visit.TabToAsync("apart");
        await visit.Page.Keyboard.PressAsync("Control+A");
        await visit.Page.Keyboard.TypeAsync(Apart);
        await visit.TabToAsync("square");
        await visit.Page.Keyboard.PressAsync("ArrowRight");
        await visit.TabToAsync("count-cloth");
        await visit.Page.Keyboard.PressAsync("Enter");
        await AssertCountedAsync(visit);
        string before = await visit.Page.Locator(".counted strong").First.InnerTextAsync();
        await visit.Page.Locator(".counted .controls button").First.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        await Expect(visit.Page.Locator(".counted strong").First).Not.ToHaveTextAsync(before);
    }

    [Fact]
    public async Task A_file_that_is_no_picture_is_refused_in_words()
    {
        await using Visit visit = await studio.OpenAsync(address: "count", language: "de");
        await visit.Page.Locator("#photo-file").SetInputFilesAsync(new FilePayload { Name = "tide.jpg", MimeType = "image/jpeg", Buffer = [1, 2, 3] });
        await Expect(visit.Page.Locator(".mend")).ToContainTextAsync("kein Bild");
    }

    private static FilePayload Payload() => new() { Name = "swatch.bmp", MimeType = "image/bmp", Buffer = PaintedPhotograph.Bmp(Swatch) };

    private static async Task OpenPhotographAsync(Visit visit)
    {
        await visit.Page.Locator("#photo-file").SetInputFilesAsync(Payload());
        await Expect(visit.Page.Locator("#photo")).ToBeVisibleAsync();
    }

    // Within 2 %: what the counter promises of a clear photograph.
    private static async Task AssertCountedAsync(Visit visit)
    {
        await Expect(visit.Page.Locator(".counted")).ToHaveCountAsync(2);
        IReadOnlyList<string> shown = await visit.Page.Locator(".counted strong").AllInnerTextsAsync();
        double[] counts = [.. shown.Select(s => double.Parse(Number().Match(s).Value, CultureInfo.InvariantCulture))];
        Assert.InRange(counts[0], Swatch.EndsPerCentimetre * 0.98, Swatch.EndsPerCentimetre * 1.02);
        Assert.InRange(counts[1], Swatch.PicksPerCentimetre * 0.98, Swatch.PicksPerCentimetre * 1.02);
    }

    [GeneratedRegex(@"[\d.]+")]
    private static partial Regex Number();
}
