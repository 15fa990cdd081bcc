using System.Globalization;
using Microsoft.Playwright;

namespace Clothwright.Browser.Tests;

/// <summary>A visit to the draft: where its cells lie in the window, and what is done there.</summary>
internal static class DraftVisit
{
    public const int Threading = 0;
    public const int TieUp = 1;
    public const int Treads = 2;
    public const int Cloth = 3;
    public const int WarpColours = 4;

    /// <summary>Opens the page with the draft in sight.</summary>
    public static async Task<Visit> OpenDraftAsync(this Studio studio, int width = 1440, int height = 1000, ColorScheme scheme = ColorScheme.Light)
    {
        Visit visit = await studio.OpenAsync(width, height, scheme);
        await visit.Page.Locator("#draft-sheet").EvaluateAsync("e => e.scrollIntoView({ block: 'center', behavior: 'instant' })");
        await visit.Page.WaitForFunctionAsync("() => import('/js/draft.js').then(m => m.paintTimes().length > 0)");
        return visit;
    }

    /// <summary>The middle of a cell in the window, with the draft brought into sight.</summary>
    public static async Task<(float X, float Y)> CellAsync(this Visit visit, int part, int thread, int number)
    {
        await visit.Page.Locator("#draft-sheet").EvaluateAsync("e => e.scrollIntoView({ block: 'center', behavior: 'instant' })");
        double[] at = await visit.Page.EvaluateAsync<double[]>($"() => import('/js/draft.js').then(m => m.middleOf('draft-canvas', {part}, {thread}, {number}))");
        return ((float)at[0], (float)at[1]);
    }

    /// <summary>Clicks on a cell.</summary>
    public static async Task ClickAsync(this Visit visit, int part, int thread, int number)
    {
        (float x, float y) = await visit.CellAsync(part, thread, number);
        await visit.Page.Mouse.ClickAsync(x, y);
    }

    /// <summary>Drags from one cell to another.</summary>
    public static async Task DragAsync(this Visit visit, int part, (int Thread, int Number) from, (int Thread, int Number) to)
    {
        // What stands above may still be growing: both places are right once the first has stayed where it was.
        (float X, float Y) start, end, before;
        do
        {
            before = await visit.CellAsync(part, from.Thread, from.Number);
            end = await visit.CellAsync(part, to.Thread, to.Number);
            start = await visit.CellAsync(part, from.Thread, from.Number);
        }
        while (start != before);
        await visit.Page.Mouse.MoveAsync(start.X, start.Y);
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(end.X, end.Y, new MouseMoveOptions { Steps = 3 });
        await visit.Page.Mouse.UpAsync();
    }

    /// <summary>Has the draft read aloud and waits until it says something.</summary>
    public static async Task ExpectToldAsync(this Visit visit, string said)
    {
        ILocator aloud = visit.Page.Locator("#draft-aloud");
        if (await aloud.GetAttributeAsync("open") is null) await aloud.Locator("summary").ClickAsync();
        await Assertions.Expect(aloud).ToContainTextAsync(said);
    }

    /// <summary>The colour of a pixel of a canvas, in the middle of a cell of the draft or where it is said.</summary>
    public static async Task<string> ColourAsync(this Visit visit, string canvas, float x, float y) =>
        await visit.Page.EvaluateAsync<string>(
            "([id, x, y]) => { const c = document.getElementById(id), b = c.getBoundingClientRect(), r = c.width / b.width; return [...c.getContext('2d').getImageData((x - b.left) * r, (y - b.top) * r, 1, 1).data].join(' '); }",
            new object[] { canvas, (double)x, (double)y });

    /// <summary>A whole number for a script.</summary>
    public static string Written(this int number) => number.ToString(CultureInfo.InvariantCulture);
}
