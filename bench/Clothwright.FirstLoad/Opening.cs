using System.Diagnostics;
using System.Text.Json;
using Microsoft.Playwright;

namespace Clothwright.FirstLoad;

/// <summary>Times one opening of the page.</summary>
internal static class Opening
{
    /// <summary>Milliseconds from asking for the address until a decision can be written and the plan stands.</summary>
    public static async Task<double> TimeAsync(IPage page, string address)
    {
        long begun = Stopwatch.GetTimestamp();
        await page.GotoAsync(address, new PageGotoOptions { WaitUntil = WaitUntilState.Commit });
        await page.Locator("#piece-0-width").WaitForAsync();
        await page.Locator("#tally-ends").WaitForAsync();
        return Stopwatch.GetElapsedTime(begun).TotalMilliseconds;
    }

    /// <summary>Milliseconds of processor time that all processes of the browser have used so far: what an opening costs, however busy the machine is.</summary>
    public static async Task<double> WorkAsync(ICDPSession browser)
    {
        JsonElement? information = await browser.SendAsync("SystemInfo.getProcessInfo");
        return information!.Value.GetProperty("processInfo").EnumerateArray().Sum(process => process.GetProperty("cpuTime").GetDouble()) * 1000;
    }

    public static double Median(IReadOnlyCollection<double> times) => times.Order().ElementAt(times.Count / 2);
}
