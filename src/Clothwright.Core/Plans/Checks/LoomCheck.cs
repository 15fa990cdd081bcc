using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Plans.Checks;

/// <summary>Finds what keeps a warp off the loom chosen.</summary>
internal static class LoomCheck
{
    /// <summary>The problem that the loom has too few shafts, or null.</summary>
    /// <param name="loom">The loom.</param>
    /// <param name="weave">The weave of one layer.</param>
    /// <param name="layers">Layers woven at once.</param>
    public static InputProblem? Shafts(Loom loom, Weave weave, int layers)
    {
        int needed = weave.Draft.Shafts * layers;
        int most = Groups(loom, layers);
        if (needed > ShaftLimit) return new InputProblem($"{weave.Name} in {layers} layers needs {needed} shafts.", "weave", $"No draft here has more than {ShaftLimit}; choose a weave on fewer shafts.");
        if (needed <= most) return null;
        string has = loom.Kind == LoomKind.RigidHeddle
            ? $"{loom.Name} with {loom.RigidHeddles} rigid {(loom.RigidHeddles == 1 ? "heddle" : "heddles")} gives {most} groups of ends"
            : $"{loom.Name} has {loom.Shafts}";
        string what = layers == 1 ? $"{weave.Name} needs {needed} shafts" : $"{weave.Name} in {layers} layers needs {needed} shafts";
        return new InputProblem(
            $"{what}, {has}.",
            "weave",
            $"Choose a weave on {most / layers} {(most / layers == 1 ? "shaft" : "shafts")} or fewer, for example {(most / layers >= 4 ? "2/2 twill" : "plain")}, or a loom with more shafts.");
    }

    /// <summary>The problem that the warp is wider than the loom, or null.</summary>
    /// <param name="loom">The loom.</param>
    /// <param name="width">Width in the reed.</param>
    /// <param name="widest">The piece that asks for the width, 0-based.</param>
    public static InputProblem? Width(Loom loom, Length width, int widest) =>
        LoomChecks.WidthProblem(loom, width) is { } problem ? problem with { Where = $"pieces[{widest}].width" } : null;

    /// <summary>Groups of ends that a loom can lift apart; a pick-up stick behind rigid heddles parts the slot ends once more.</summary>
    public static int Groups(Loom loom, int layers) => loom.Kind == LoomKind.RigidHeddle && layers > 1 ? loom.Shafts + 1 : loom.Shafts;

    private const int ShaftLimit = Weaves.ShaftSet.Highest;
}
