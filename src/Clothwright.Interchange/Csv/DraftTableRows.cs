using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Csv;

/// <summary>The rows of a draft's table.</summary>
internal static class DraftTableRows
{
    public static IEnumerable<IEnumerable<string>> Of(WovenDraft woven)
    {
        Draft draft = woven.Draft;
        bool treadled = !draft.Treadling.IsEmpty;
        woven.Warp.RequireFor(draft.Ends);
        woven.Weft.RequireFor(draft.Picks);
        IEnumerable<IEnumerable<string>> head =
        [
            ["name", "", draft.Name, "", "", ""],
            ["shafts", "", CsvText.Number(draft.Shafts), "", "", ""],
            ["shed", "", draft.RisingShed ? "rising" : "sinking", "", "", ""],
        ];
        return
        [
            .. head,
            .. Rows("end", draft.Threading, woven.Warp),
            .. Rows("treadle", draft.TieUp, WovenThreads.Plain),
            .. Rows("pick", draft.Treadling, woven.Weft),
            .. Rows("lift", draft.LiftPlan, treadled ? WovenThreads.Plain : woven.Weft),
        ];
    }

    private static IEnumerable<IEnumerable<string>> Rows(string part, ImmutableArray<ShaftSet> sets, WovenThreads threads)
    {
        for (int i = 0; i < sets.Length; i++)
        {
            yield return
            [
                part,
                CsvText.Number(i + 1),
                string.Join(' ', sets[i].Members()),
                threads.Colours.IsEmpty ? "" : threads.Colours[i].ToString(),
                Millimetres(threads.Spacings, i),
                Millimetres(threads.Thicknesses, i),
            ];
        }
    }

    private static string Millimetres(ImmutableArray<Length> lengths, int i) => lengths.IsEmpty ? "" : CsvText.Measure(lengths[i].Millimetres);
}
