using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Fitting;

/// <content>What is said about a fit.</content>
public static partial class LoomFit
{
    private static string Ends(int[] ends) => ends.Length == 1
        ? $"End {ends[0] + 1}"
        : $"Each of ends {string.Join(", ", ends.Take(12).Select(e => e + 1))}{(ends.Length > 12 ? " …" : "")}";

    private static string CannotShafts(int needed, LoomLimits limits) => limits.RigidHeddles > 0
        ? $"Cannot be woven on {limits.InWords}, because it has {needed} different ends and they carry {limits.Shafts} groups: the eyes of each heddle, and the slots."
        : $"Cannot be woven on {limits.InWords}, because it needs {needed}: {limits.ShaftsPerEnd switch { 1 => "one for each different end", _ => $"even with ends on up to {limits.ShaftsPerEnd} shafts" }}.";

    private static string TreadleSentence(int direct, TieUpAnswer answer, LoomLimits limits)
    {
        int found = answer.Chosen.Length;
        string feet = limits.Feet == 1 ? "one treadle a pick" : $"up to {limits.Feet} treadles a pick";
        string proof = answer.Proved ? "proved the fewest" : $"not proved: the best found, and at least {answer.AtLeast} are needed";
        string head = found > limits.Treadles
            ? $"Cannot be treadled on {limits.Treadles} treadles, because it needs {found} with {feet} ({proof})."
            : $"{found} treadles with {feet} ({proof}).";
        if (found >= direct) return head;
        return $"{head} One treadle a pick takes {direct}{(direct <= limits.Treadles ? ", which the loom has too" : "")}.";
    }

    private static string WalkSentence(TreadleWalk walk)
    {
        if (walk.Steps == 0 && walk.Doubles == 0) return "One treadle throughout: there is nothing to walk.";
        string steps = walk.Steps == 0 ? "" : $"the feet take turns on {walk.Alternating} of {walk.Steps} steps";
        string doubles = walk.Doubles == 0 ? "" : $"{walk.Split} of {walk.Doubles} double presses take one treadle with each foot";
        return $"Treadles 1 to {walk.Left} are for the left foot: {string.Join(", and ", new[] { steps, doubles }.Where(s => s.Length > 0))}.";
    }

    private static bool CheckSheds(ShaftLayout layout, ClothKinds lines, LoomLimits limits, List<string> reasons)
    {
        bool clear = true;
        ulong all = ShaftSet.FirstOf(layout.Shafts).Bits;
        for (int kind = 0; kind < layout.Moved.Length; kind++)
        {
            ulong up = layout.Up(kind).Bits;
            int pick = lines.FirstPick[kind] + 1;
            if (up == 0 || up == all)
            {
                reasons.Add($"Pick {pick} lies wholly {(up == 0 ? "above" : "below")} the warp: there is no shed, and nothing holds it.");
                if (limits.RigidHeddles > 0 || limits.Shed == ShedAction.Counterbalance) clear = false;
            }
            else if (limits.Shed == ShedAction.Counterbalance && 2 * layout.Up(kind).Count != layout.Shafts && clear)
            {
                int rise = layout.Up(kind).Count;
                reasons.Add($"Cannot be woven on a counterbalance loom, because pick {pick} raises {rise} shafts against {layout.Shafts - rise}: "
                    + "shafts that hang in pairs open a clear shed only when as many sink as rise (common practice, no source). Levers, a rising or sinking shed or a countermarche would do.");
                clear = false;
            }
        }

        return clear;
    }

    private static LoomFitResult TooMany(ClothKinds lines, LoomLimits limits, List<string> reasons)
    {
        reasons.Add(CannotShafts(lines.EndKinds, limits));
        var empty = new LoomFitResult
        {
            Feasible = false,
            Shafts = Derived.Given("shafts", Whole.FromCount(lines.EndKinds), Source.Derivation, formula: ShaftRule.Formula),
            Treadles = Derived.Given("treadles", Whole.FromCount(lines.PickKinds), Source.Derivation, formula: DirectRule.Formula),
            DirectTreadles = lines.PickKinds,
            TreadlesAtLeast = 0,
            Optimal = true,
            Reasons = [],
        };
        DraftReduction? change = Change(lines, limits, empty, reasons);
        return empty with { SmallestChange = change, Reasons = [.. reasons] };
    }

    // Shafts first; then the picks, if one treadle a pick would still be too many.
    private static DraftReduction? Change(ClothKinds lines, LoomLimits limits, LoomFitResult fit, List<string> said)
    {
        bool shafts = fit.Shafts.Value.Count > limits.Shafts;
        bool treadles = limits.Shed != ShedAction.Levers && fit.Treadles.Value.Count > limits.Treadles;
        if (!shafts && !treadles) return null;
        int lifts = limits.Shed == ShedAction.Levers ? int.MaxValue : limits.Treadles;
        DraftReduction change = DraftReduction.Sound(lines.Cloth, shafts ? limits.Shafts : int.MaxValue, lifts);
        said.Add(change.InWords);
        var layers = ClothLayers.Of(change.Cloth);
        if (!layers.HangsTogether && ClothLayers.Of(lines.Cloth).HangsTogether)
        {
            said.Add(layers.LoosePicks.IsEmpty && layers.LooseEnds.IsEmpty
                ? $"After that change the cloth falls into {layers.Layers.Length} layers: choose other ends to keep."
                : "After that change some threads lie loose over the whole cloth: choose other ends to keep.");
        }

        return change;
    }
}
