using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Looms;

/// <summary>Whether a loom is described in a way that can be woven on, and whether a warp fits it.</summary>
public static class LoomChecks
{
    /// <summary>Shafts, and treadles, that a draft can number.</summary>
    public const int MostShafts = 64;

    /// <summary>Rigid heddles that a frame can hold at once, at most.</summary>
    public const int MostRigidHeddles = 3;

    /// <summary>Everything that is wrong with the description of a loom; empty if nothing is.</summary>
    /// <param name="loom">The loom.</param>
    public static ImmutableArray<InputProblem> Problems(Loom loom)
    {
        ArgumentNullException.ThrowIfNull(loom);
        var problems = ImmutableArray.CreateBuilder<InputProblem>();
        if (string.IsNullOrWhiteSpace(loom.Id)) Add("The loom has no short name.", "id", "Give it one, for example \"table-8\".");
        if (loom.WeavingWidth.Metres is <= 0 or > 6) Add($"A weaving width of {loom.WeavingWidth} cannot be used.", "weavingWidth", "Give the greatest width in the reed, above 0 and at most 6 m, for example \"70 cm\".");
        if (loom.Shafts is < 2 or > MostShafts) Add($"{loom.Shafts} shafts cannot open a shed.", "shafts", $"Give 2 to {MostShafts}, for example 4.");
        if (loom.Treadles is < 0 or > MostShafts) Add($"{loom.Treadles} treadles cannot be tied.", "treadles", $"Give 0 to {MostShafts}, for example 6.");
        if (loom.WarpBeams is not (1 or 2)) Add($"{loom.WarpBeams} warp beams cannot be used.", "warpBeams", "Give 1 or 2.");
        if (loom.HeddlesPerShaft < 0) Add($"{loom.HeddlesPerShaft} heddles on a shaft cannot be.", "heddlesPerShaft", "Give their number, or 0 if they are not counted.");
        AddKind(loom, Add);
        return problems.ToImmutable();

        void Add(string what, string where, string mend) => problems.Add(new InputProblem(what, where, mend));
    }

    /// <summary>The problem with a warp wider than the loom; null if it fits.</summary>
    /// <param name="loom">The loom.</param>
    /// <param name="widthInReed">Width of the warp in the reed.</param>
    public static InputProblem? WidthProblem(Loom loom, Length widthInReed)
    {
        ArgumentNullException.ThrowIfNull(loom);
        return widthInReed <= loom.WeavingWidth
            ? null
            : new InputProblem(
                $"The warp is {widthInReed} wide in the reed, {loom.Name} weaves at most {loom.WeavingWidth}.",
                "width in the reed",
                "Make the pieces narrower, weave them in panels or double width, or choose a wider loom.");
    }

    private static void AddKind(Loom loom, Action<string, string, string> add)
    {
        bool rigid = loom.Kind == LoomKind.RigidHeddle;
        if (rigid && loom.RigidHeddles is < 1 or > MostRigidHeddles)
        {
            add($"A rigid heddle loom with {loom.RigidHeddles} heddles cannot be used.", "rigidHeddles", $"Give 1 to {MostRigidHeddles}, for example 2.");
        }
        else if (rigid && loom.Shafts != loom.RigidHeddles + 1)
        {
            add($"{loom.RigidHeddles} rigid heddles do not make {loom.Shafts} shafts.", "shafts", $"Give one more than the heddles: {loom.RigidHeddles + 1}.");
        }
        else if (!rigid && loom.RigidHeddles != 0)
        {
            add($"A shaft loom carries no rigid heddles, and {loom.RigidHeddles} are given.", "rigidHeddles", "Give 0, or make the loom a rigid heddle loom.");
        }

        if (loom.Kind != LoomKind.Floor && loom.Treadles > 0)
        {
            add($"{loom.Treadles} treadles are given for a loom worked by hand.", "treadles", "Give 0, or make the loom a floor loom.");
        }

        if (loom.Shed == ShedAction.Counterbalance && loom.Shafts % 2 != 0)
        {
            add($"{loom.Shafts} shafts cannot hang in pairs.", "shafts", "Give an even number for a counterbalance loom, for example 4.");
        }
    }
}
