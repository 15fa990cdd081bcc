using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

[Collection(StudioTests.Name)]
public class DraftingTests(Studio studio)
{
    [Fact]
    public async Task An_end_drawn_elsewhere_changes_the_cloth_and_the_worksheet_keeps_the_draft()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        (float x, float y) = await visit.CellAsync(DraftVisit.Cloth, 1, 0);
        string before = await visit.ColourAsync("draft-canvas", x, y);
        byte[] cloth = await visit.Page.Locator("#cloth-canvas").ScreenshotAsync();

        // 2/2 twill: pick 1 lifts shafts 1 and 2. End 2, moved from shaft 2 to shaft 4, stays down on it.
        await visit.ClickAsync(DraftVisit.Threading, 1, 4);
        await Expect(visit.Page.Locator("#draft-said")).ToHaveTextAsync("End 2 on shaft 4");
        await Expect(visit.Page.Locator("#draft-name")).ToHaveValueAsync("own draft");
        Assert.NotEqual(before, await visit.ColourAsync("draft-canvas", x, y));
        await Expect(visit.Page.Locator("#weave .sentence").First).ToContainTextAsync("drawn by hand");
        Assert.NotEqual(cloth, await visit.Page.Locator("#cloth-canvas").ScreenshotAsync());
        await visit.ExpectToldAsync("1, 4, 3, 4");

        await visit.ReloadAsync();
        await visit.ExpectToldAsync("1, 4, 3, 4");
    }

    [Fact]
    public async Task More_ends_in_the_repeat_change_the_tally()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        int before = await visit.EndsAsync();
        await visit.ClickAsync(DraftVisit.Threading, 0, 2);
        await visit.Page.Locator("#draft-verbs summary").ClickAsync();
        await visit.Page.Locator("#verbs-all").ClickAsync();
        await visit.Page.Locator("#blank-times").FillAsync("28");
        await visit.Page.Locator("#verb-repeat").ClickAsync();

        // A repeat of 116 ends: the warp is made of whole ones.
        await Expect(visit.Page.Locator("#weave .drafting")).ToContainTextAsync("116 ends");
        await Expect(visit.Page.Locator("#tally-ends")).Not.ToHaveTextAsync(before.Written());
    }

    [Fact]
    public async Task A_stroke_quicker_than_the_page_paints_leaves_no_cell_out()
    {
        await using Visit visit = await studio.OpenDraftAsync();

        // Pressed, moved once and lifted before the page comes to paint: the first cell makes the draft another one, which lies otherwise on the paper.
        await visit.Page.EvaluateAsync(
            """
            async () => {
              const { middleOf } = await import('/js/draft.js');
              const canvas = document.getElementById('draft-canvas');
              const [[x, y], [x2, y2]] = [middleOf('draft-canvas', 0, 0, 2), middleOf('draft-canvas', 0, 2, 2)];
              canvas.setPointerCapture = () => {};
              const send = (kind, clientX, clientY) => canvas.dispatchEvent(new PointerEvent(kind, { clientX, clientY, pointerId: 7, button: 0, bubbles: true }));
              send('pointerdown', x, y);
              send('pointermove', (x + x2) / 2, y2);
              send('pointerup', x2, y2);
            }
            """);
        await visit.ExpectToldAsync("2, 2, 2, 4");
    }

    [Fact]
    public async Task A_draft_that_holds_nothing_together_is_told_as_drawn_with_why()
    {
        await using Visit visit = await studio.OpenDraftAsync();

        // Every end on one shaft: no end ever differs from its neighbour, and each pick lies before or behind all of them.
        await visit.DragAsync(DraftVisit.Threading, (0, 4), (2, 4));
        await visit.ExpectToldAsync("4, 4, 4, 4");
        await Expect(visit.Page.Locator("#weave")).ToContainTextAsync("do not interlace");
    }

    [Fact]
    public async Task A_stroke_is_one_step_and_is_undone_as_one()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        await visit.DragAsync(DraftVisit.Threading, (0, 2), (2, 2));
        await Expect(visit.Page.Locator("#draft-name")).ToBeVisibleAsync();
        await visit.ExpectToldAsync("2, 2, 2, 4");
        await visit.Page.Locator("#undo").ClickAsync();
        await Expect(visit.Page.Locator("#weave-name")).ToHaveValueAsync("2/2 twill");
        await Expect(visit.Page.Locator("#undo")).ToHaveAttributeAsync("aria-disabled", "true");
        await visit.Page.Locator("#redo").ClickAsync();
        await Expect(visit.Page.Locator("#draft-name")).ToBeVisibleAsync();
        await visit.ExpectToldAsync("2, 2, 2, 4");
    }

    [Fact]
    public async Task Everything_goes_by_keyboard_and_is_said()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        ILocator said = visit.Page.Locator("#draft-said");
        await visit.Page.Locator("#draft-sheet").FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(said).ToHaveTextAsync("End 2, shaft 1 empty; it is on 2");
        await visit.Page.Keyboard.PressAsync("Space");
        await Expect(said).ToHaveTextAsync("End 2 on shaft 1");
        foreach (string key in new[] { "Home", "4", "3", "2", "1" }) await visit.Page.Keyboard.PressAsync(key);
        await visit.ExpectToldAsync("4, 3, 2, 1");
        await visit.Page.Locator("#draft-sheet").FocusAsync();
        await visit.Page.Keyboard.PressAsync("Home");
        await visit.Page.Keyboard.PressAsync("Shift+ArrowRight");
        await visit.Page.Keyboard.PressAsync("Shift+ArrowRight");
        await Expect(said).ToContainTextAsync("3 marked");
        await visit.Page.Keyboard.PressAsync("Delete");
        await Expect(visit.Page.Locator("#weave .drafting")).ToContainTextAsync("1 end and 4 picks");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Expect(visit.Page.Locator("#weave .drafting")).ToContainTextAsync("4 ends and 4 picks");
        await visit.Page.Keyboard.PressAsync("Control+ArrowDown");
        await Expect(said).ToContainTextAsync("on top");
        await visit.Page.Keyboard.PressAsync("Control+ArrowRight");
        await Expect(said).ToContainTextAsync("Pick 1");
    }

    [Fact]
    public async Task Verbs_mirror_copy_and_put_elsewhere()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        await visit.Page.Locator("#draft-verbs summary").ClickAsync();
        await visit.Page.Locator("#draft-sheet").FocusAsync();
        await visit.Page.Keyboard.PressAsync("Control+a");
        await visit.Page.Locator("#verb-mirror").ClickAsync();
        await Expect(visit.Page.Locator("#weave .drafting")).ToContainTextAsync("7 ends");
        await visit.ExpectToldAsync("1, 2, 3, 4, 3, 2, 1");
        await visit.Page.Locator("#verbs-unmark").ClickAsync();
        await visit.Page.Locator("#draft-sheet").FocusAsync();
        foreach (string key in new[] { "Home", "Shift+ArrowRight", "Control+c", "Escape", "End", "Control+v" }) await visit.Page.Keyboard.PressAsync(key);
        await visit.ExpectToldAsync("1, 2, 3, 4, 3, 2, 1");
        await visit.Page.Locator("#verb-between").ClickAsync();
        await Expect(visit.Page.Locator("#weave .drafting")).ToContainTextAsync("9 ends");
        await visit.ExpectToldAsync("1, 2, 3, 4, 3, 2, 1, 2, 1");
    }

    [Fact]
    public async Task Painting_the_cloth_finds_the_draft_and_what_the_loom_cannot_weave_is_said()
    {
        await using Visit visit = await studio.OpenDraftAsync();

        // A crossing of the twill repeat: one lift more on the same threading.
        await visit.ClickAsync(DraftVisit.Cloth, 2, 0);
        await Expect(visit.Page.Locator("#draft-name")).ToBeVisibleAsync();
        await visit.ExpectToldAsync("1 2 3");

        // Three repeats, then painted until no two of the twelve ends are alike: that takes twelve shafts, and the table loom has eight.
        await visit.Page.Locator("#draft-verbs summary").ClickAsync();
        await visit.Page.Locator("#draft-sheet").FocusAsync();
        await visit.Page.Keyboard.PressAsync("Control+ArrowUp");
        await visit.Page.Keyboard.PressAsync("Control+a");
        await visit.Page.Locator("#blank-times").FillAsync("2");
        await visit.Page.Locator("#verb-repeat").ClickAsync();
        await Expect(visit.Page.Locator("#weave .drafting")).ToContainTextAsync("12 ends");
        await visit.DragAsync(DraftVisit.Cloth, (4, 0), (6, 0));
        foreach ((int end, int pick) in new[] { (7, 1), (8, 2), (9, 1), (10, 3), (11, 3) }) await visit.ClickAsync(DraftVisit.Cloth, end, pick);
        ILocator sketch = visit.Page.Locator("#draft-sketch");
        await Expect(sketch).ToContainTextAsync("Cannot be woven on 8 shafts");
        await visit.Page.Locator("#sketch-change").ClickAsync();
        await Expect(sketch).ToHaveCountAsync(0);
        await Expect(visit.Page.Locator(".draft-size")).ToContainTextAsync("on 8 shafts");
    }

    [Fact]
    public async Task Yarns_are_laid_in_the_colours()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        await visit.Page.Locator("#draft-shape summary").ClickAsync();
        await visit.Page.Locator("#draft-yarn").SelectOptionAsync("8/2 bamboo, saltmarsh");
        await visit.ClickAsync(DraftVisit.WarpColours, 1, 0);
        await Expect(visit.Page.Locator("#run-1-yarn")).ToHaveValueAsync("8/2 bamboo, saltmarsh");
        Assert.Equal("1", await visit.BlankAsync("run-1-ends"));
        Assert.Equal("2", await visit.BlankAsync("run-2-ends"));
    }

    [Fact]
    public async Task A_weave_is_chosen_by_its_sentence_and_seen_before_it_is_taken()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        ILocator maker = visit.Page.Locator("#weave-maker");
        await maker.Locator("summary").ClickAsync();
        await visit.Page.Locator("#making-weave").SelectOptionAsync("advancing twill");
        await visit.Page.Locator("#making-run").FillAsync("5");
        await Expect(visit.Page.Locator("#making-outcome")).ToHaveTextAsync("One repeat: 20 ends and 4 picks on 4 shafts.");
        string seen = await visit.Page.EvaluateAsync<string>("() => document.getElementById('making-canvas').toDataURL()");
        await visit.Page.Locator("#making-advance").FillAsync("2");
        await Expect(visit.Page.Locator("#making-outcome")).ToHaveTextAsync("One repeat: 10 ends and 4 picks on 4 shafts.");
        await visit.Page.WaitForTimeoutAsync(200);
        Assert.NotEqual(seen, await visit.Page.EvaluateAsync<string>("() => document.getElementById('making-canvas').toDataURL()"));
        await visit.Page.Locator("#making-take").ClickAsync();
        await Expect(visit.Page.Locator("#weave-name")).ToHaveValueAsync("advancing twill run=5 advance=2");
        await Expect(visit.Page.Locator("#weave .sentence").First).ToContainTextAsync("10 ends and 4 picks");
    }

    [Fact]
    public async Task What_is_the_matter_is_numbered_in_place_and_mended()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        await Expect(visit.Page.Locator("#draft-sound")).ToBeVisibleAsync();

        // End 2 on no shaft: nothing holds it.
        await visit.ClickAsync(DraftVisit.Threading, 1, 2);
        ILocator unthreaded = visit.Page.Locator("#trouble-Unthreaded");
        await Expect(unthreaded).ToContainTextAsync("1");
        await Expect(unthreaded).ToContainTextAsync("One end is on no shaft.");
        await Expect(visit.Page.Locator("#trouble-NeverHeld")).ToContainTextAsync("it can be lifted off");
        (float x, float y) = await visit.CellAsync(DraftVisit.Cloth, 1, 3);
        Assert.NotEqual(await visit.ColourAsync("draft-canvas", x - 4, y + 4), await visit.ColourAsync("draft-canvas", x + 9, y + 4));
        await unthreaded.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "take these ends out" }).ClickAsync();
        await Expect(visit.Page.Locator("#weave .drafting")).ToContainTextAsync("3 ends");
        await Expect(unthreaded).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Drafts_come_in_as_files_and_go_out()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        await visit.Page.Locator("#draft-files summary").ClickAsync();
        await visit.Page.Locator("#draft-file").SetInputFilesAsync(new FilePayload { Name = "ebb.txt", MimeType = "text/plain", Buffer = "110100\n011010\n001101\n100110\n010011\n101001\n"u8.ToArray() });
        await Expect(visit.Page.Locator("#file-taken")).ToContainTextAsync("ebb.txt is on the worksheet now: 6 ends, 6 picks, 6 shafts.");
        await Expect(visit.Page.Locator("#draft-name")).ToHaveValueAsync("ebb");
        IDownload saved = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.Locator("#save-wif").ClickAsync());
        Assert.Equal("ebb.wif", saved.SuggestedFilename);
        string wif = await File.ReadAllTextAsync(await saved.PathAsync());
        Assert.Contains("[LIFTPLAN]", wif, StringComparison.Ordinal);
        Assert.Contains("Threads=6", wif, StringComparison.Ordinal);
        IDownload picture = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.Locator("#save-svg").ClickAsync());
        Assert.StartsWith("<svg", await File.ReadAllTextAsync(await picture.PathAsync()), StringComparison.Ordinal);

        await visit.Page.Locator("#draft-file").SetInputFilesAsync(new FilePayload { Name = "back.wif", MimeType = "text/plain", Buffer = System.Text.Encoding.UTF8.GetBytes(wif) });
        await Expect(visit.Page.Locator("#file-taken")).ToContainTextAsync("back.wif");
        await visit.Page.Locator("#draft-file").SetInputFilesAsync(new FilePayload { Name = "torn.txt", MimeType = "text/plain", Buffer = "11\n1\n"u8.ToArray() });
        await Expect(visit.Page.Locator("#file-problem")).ToContainTextAsync("Give every pick the same number of marks.");
    }

    [Fact]
    public async Task A_picture_of_a_drawdown_is_read_in_the_page()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        await visit.Page.Locator("#draft-files summary").ClickAsync();

        // Plain weave drawn by the browser, ten pixels a crossing, six by four.
        string png = await visit.Page.EvaluateAsync<string>(
            "() => { const c = document.createElement('canvas'); c.width = 60; c.height = 40; const x = c.getContext('2d'); x.fillStyle = '#fff'; x.fillRect(0, 0, 60, 40); x.fillStyle = '#000'; for (let i = 0; i < 6; i++) for (let j = 0; j < 4; j++) if ((i + j) % 2 === 0) x.fillRect(i * 10, j * 10, 10, 10); return c.toDataURL('image/png').split(',')[1]; }");
        await visit.Page.Locator("#draft-file").SetInputFilesAsync(new FilePayload { Name = "marsh.png", MimeType = "image/png", Buffer = Convert.FromBase64String(png) });
        await Expect(visit.Page.Locator("#file-taken")).ToContainTextAsync("6 ends, 4 picks, 2 shafts");
    }

    [Fact]
    public async Task The_draft_can_be_turned_the_way_books_draw_it()
    {
        await using Visit visit = await studio.OpenDraftAsync();
        (float x, float y) = await visit.CellAsync(DraftVisit.Threading, 0, 1);
        (_, float clothY) = await visit.CellAsync(DraftVisit.Cloth, 0, 0);
        Assert.True(y < clothY);
        await visit.Page.Locator("#draft-shape summary").ClickAsync();
        await visit.Page.Locator("#draft-way").SelectOptionAsync("outward from a tie-up at the lower right");
        await visit.Page.WaitForTimeoutAsync(200);
        (float turnedX, float turnedY) = await visit.CellAsync(DraftVisit.Threading, 0, 1);
        (_, float turnedClothY) = await visit.CellAsync(DraftVisit.Cloth, 0, 0);
        Assert.True(turnedX > x && turnedY > turnedClothY);
        await visit.ClickAsync(DraftVisit.Threading, 0, 3);
        await Expect(visit.Page.Locator("#draft-said")).ToHaveTextAsync("End 1 on shaft 3");
    }
}
