using System.Globalization;
using System.Text;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace Clothwright.Browser.Tests;

/// <summary>Works on a draft of 1,200 ends and 2,400 picks and prints how long it takes; machines differ, so that no time is asserted.</summary>
[Collection(StudioTests.Name)]
public class DraftTimesTests(Studio studio, ITestOutputHelper output)
{
    private const int Ends = 1200;
    private const int Picks = 2400;
    private const int Shafts = 8;

    // From the key to the cloth: what is reckoned and handed to the canvases at once, then the painting of the draft in the next frame.
    private const string Edits = """
        async times => {
          const script = await import('/js/draft.js');
          const sheet = document.getElementById('draft-sheet');
          const median = list => [...list].sort((a, b) => a - b)[list.length >> 1];
          const key = name => sheet.dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true }));
          const told = [], painted = [], all = [];
          for (let i = 0; i < times; i++) {
            key('ArrowUp');
            await new Promise(done => requestAnimationFrame(() => setTimeout(done, 700)));
            const start = performance.now();
            key(' ');
            const reckoned = performance.now() - start;
            await new Promise(done => requestAnimationFrame(() => setTimeout(done, 0)));
            const paint = script.paintTimes().at(-1);
            told.push(reckoned); painted.push(paint); all.push(reckoned + paint);
          }
          return [median(told), median(painted), median(all)];
        }
        """;

    [Theory]
    [InlineData("treadled")]
    [InlineData("another lift on each pick")]
    public async Task A_large_draft_is_worked_on_as_a_small_one(string kind)
    {
        await using Visit visit = await studio.OpenDraftAsync();
        await visit.Page.Locator("#draft-files summary").ClickAsync();
        await visit.Page.Locator("#draft-file").SetInputFilesAsync(new FilePayload { Name = "estuary.wif", MimeType = "text/plain", Buffer = Encoding.UTF8.GetBytes(Wif(kind == "treadled")) });
        await Expect(visit.Page.Locator("#file-taken")).ToContainTextAsync($"{Ends} ends, {Picks} picks", new LocatorAssertionsToContainTextOptions { Timeout = 30_000 });
        await visit.Page.WaitForTimeoutAsync(1500);
        (float x, float y) = await visit.CellAsync(DraftVisit.Threading, 0, 1);
        await visit.Page.Locator("#draft-sheet").FocusAsync();
        string before = await visit.Page.EvaluateAsync<string>("() => document.getElementById('draft-canvas').toDataURL()");
        double[] edits = await visit.Page.EvaluateAsync<double[]>(Edits, 21);
        Assert.NotEqual(before, await visit.Page.EvaluateAsync<string>("() => document.getElementById('draft-canvas').toDataURL()"));
        string[] paint = (await visit.Page.EvaluateAsync<string>("() => import('/js/draft.js').then(m => m.timePainting('draft-canvas', 61))")).Split(' ');
        Assert.Equal(3, paint.Length);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {kind} | {edits[0]:0.0} | {edits[1]:0.0} | {edits[2]:0.0} | {paint[0]} | {paint[1]} | {paint[2]} |"));
        _ = (x, y);
        // The studio takes a draft of this size, too.
        await visit.KeptAsync();
    }

    private static string Wif(bool treadled)
    {
        var wif = new StringBuilder("[WIF]\nVersion=1.1\nDate=April 20, 1997\nDevelopers=\nSource Program=\n[CONTENTS]\nWEAVING=true\nWARP=true\nWEFT=true\nTHREADING=true\n");
        wif.Append(treadled ? "TIEUP=true\nTREADLING=true\n" : "LIFTPLAN=true\n");
        wif.Append(CultureInfo.InvariantCulture, $"[WEAVING]\nShafts={Shafts}\nTreadles={Shafts}\nRising Shed=true\n[WARP]\nThreads={Ends}\n[WEFT]\nThreads={Picks}\n[THREADING]\n");
        for (int end = 1; end <= Ends; end++) wif.Append(CultureInfo.InvariantCulture, $"{end}={1 + (end - 1) % Shafts}\n");
        if (treadled)
        {
            wif.Append("[TIEUP]\n");
            for (int treadle = 0; treadle < Shafts; treadle++) wif.Append(CultureInfo.InvariantCulture, $"{treadle + 1}={1 + treadle},{1 + (treadle + 1) % Shafts},{1 + (treadle + 4) % Shafts}\n");
            wif.Append("[TREADLING]\n");
        }
        else
        {
            wif.Append("[LIFTPLAN]\n");
        }

        for (int pick = 1; pick <= Picks; pick++) wif.Append(CultureInfo.InvariantCulture, $"{pick}={(treadled ? $"{1 + (pick - 1) % Shafts}" : $"{1 + pick % 4},{5 + pick / 4 % 4},{1 + pick / 16 % Shafts},{1 + pick / 128 % Shafts}")}\n");
        return wif.ToString();
    }
}
