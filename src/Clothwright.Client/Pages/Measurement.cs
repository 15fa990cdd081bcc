using System.Collections.Immutable;
using Clothwright.Client.Cloths;
using Clothwright.Client.Sheet;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Plans;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Pages;

/// <summary>Times the heavy work of the page as it runs in this browser.</summary>
internal static class Measurement
{
    private const int WarmUp = 3;

    /// <summary>Runs every timing, one after the other.</summary>
    /// <param name="desk">The worksheet to edit.</param>
    /// <param name="canvas">A canvas to draw on.</param>
    public static async IAsyncEnumerable<Timing> RunAsync(Desk desk, string canvas)
    {
        foreach ((string size, Draft draft) in Drafts())
        {
            yield return Time($"{size}: drawdown", 9, () => draft.Drawdown());
            Drawdown cloth = draft.Drawdown();
            yield return Time($"{size}: floats and layers", 9, () => ClothOutline.Of(cloth));
            yield return Time($"{size}: drawdown, floats and layers", 15, () => ClothOutline.Of(draft, out _));
            yield return Time($"{size}: draft to cloth on the canvas", 15, () => ClothSheet.Show(canvas, LargeLook(draft.Drawdown()), UnitStyle.Metric));
        }

        Worksheet sheet = DemoSheet.Read();
        yield return Time("plan of the demonstration worksheet", 25, () => sheet.Plan());
        desk.TryOut(sheet);
        int step = 0;
        yield return Time("edit to plan and cloth on the canvas, demonstration worksheet", 25, () =>
        {
            Worksheet edited = sheet with { Sample = Length.FromCentimetres(10 + step++ % 7) };
            PlanResult plan = edited.Plan().Value;
            ClothSheet.Show(canvas, Core.Publishing.Composing.ClothLooks.Of(plan, plan.Pieces[0]), UnitStyle.Metric);
        });
    }

    private static Timing Time(string what, int runs, Action work)
    {
        for (int i = 0; i < WarmUp; i++) work();
        var times = new double[runs];
        for (int i = 0; i < runs; i++)
        {
            double start = PageScript.Now();
            work();
            times[i] = PageScript.Now() - start;
        }

        Array.Sort(times);
        return new Timing(what, times[runs / 2]);
    }

    private static IEnumerable<(string Size, Draft Draft)> Drafts()
    {
        foreach ((int ends, int picks, int shafts) in new[] { (1200, 2400, 16), (2400, 4800, 24) })
        {
            var treadled = new Draft { Shafts = shafts, Threading = Straight(ends, shafts), TieUp = ByChance(shafts, shafts), Treadling = Straight(picks, shafts) };
            yield return ($"{ends} × {picks} on {shafts} shafts, treadled", treadled);
            var lifted = new Draft { Shafts = shafts, Threading = Straight(ends, shafts), LiftPlan = ByChance(picks, shafts) };
            yield return ($"{ends} × {picks} on {shafts} shafts, another lift on each pick", lifted);
            yield return ($"{ends} × {picks} on {shafts} shafts, nothing repeats", lifted with { Threading = [.. Chances(ends).Select(c => ShaftSet.Of((int)(c % (ulong)shafts) + 1))] });
        }
    }

    private static LookDescription LargeLook(Drawdown cloth) => new(
        cloth,
        [new ThreadLook(new Core.Colours.SrgbColour(0x2f, 0x5f, 0x77), Length.FromMillimetres(0.5))],
        [new ThreadLook(new Core.Colours.SrgbColour(0x7a, 0x8f, 0x4e), Length.FromMillimetres(0.5))],
        Sett.FromPerCentimetre(16),
        Sett.FromPerCentimetre(16));

    private static ImmutableArray<ShaftSet> Straight(int threads, int shafts) => [.. Enumerable.Range(0, threads).Select(t => ShaftSet.Of(t % shafts + 1))];

    private static ImmutableArray<ShaftSet> ByChance(int count, int shafts) => [.. Chances(count).Select(c => new ShaftSet(c) & ShaftSet.FirstOf(shafts))];

    // A fixed run of numbers (a linear congruence), so that every run times the same work.
    private static IEnumerable<ulong> Chances(int count)
    {
        ulong state = 20261;
        for (int i = 0; i < count; i++)
        {
            state = unchecked((state * 6364136223846793005UL) + 1442695040888963407UL);
            yield return state >> 20;
        }
    }
}
