using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>What the loom and the weaver's feet allow.</summary>
/// <param name="Shafts">Shafts, 1 to 64; for rigid heddles the heddles plus one.</param>
/// <param name="Treadles">Treadles, 0 to 64; not used with levers.</param>
/// <param name="Feet">Treadles that may be pressed at once, 1 to 3.</param>
/// <param name="Shed">How the shed opens.</param>
public sealed record LoomLimits(int Shafts, int Treadles, int Feet = 1, ShedAction Shed = ShedAction.Rising)
{
    /// <summary>The most treadles one pick may press.</summary>
    public const int MostFeet = 3;

    /// <summary>Shafts one end may hang on, 1 to 3; more than 1 takes long-eyed heddles on the inner shafts.</summary>
    public int ShaftsPerEnd { get; init; } = 1;

    /// <summary>Rigid heddles; 0 for shafts.</summary>
    public int RigidHeddles { get; init; }

    /// <summary>The limits of a loom on the bench.</summary>
    /// <param name="loom">The loom.</param>
    /// <param name="feet">Treadles that may be pressed at once, 1 to 3.</param>
    public static LoomLimits For(Loom loom, int feet = 1) => loom.Kind == LoomKind.RigidHeddle
        ? ForRigidHeddles(Math.Max(1, loom.RigidHeddles))
        : new LoomLimits(loom.Shafts, loom.Treadles, feet, loom.Kind == LoomKind.Table ? ShedAction.Levers : loom.Shed);

    /// <summary>Rigid heddles: each carries a group of ends in its eyes, and one more group lies in slots throughout.</summary>
    /// <param name="heddles">Heddles, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no heddle.</exception>
    public static LoomLimits ForRigidHeddles(int heddles)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(heddles, 1);
        return new LoomLimits(heddles + 1, 0, 1, ShedAction.Levers) { RigidHeddles = heddles };
    }

    /// <summary>The first limit that no loom has, or null if all can be used.</summary>
    public InputProblem? Problem() => this switch
    {
        { Shafts: < 1 or > ShaftSet.Highest } => new InputProblem(
            $"A loom with {Shafts} shafts is not known here.", "shafts", $"Give 1 to {ShaftSet.Highest} shafts, for example 4."),
        { Shed: not ShedAction.Levers, Treadles: < 1 or > ShaftSet.Highest } => new InputProblem(
            $"A loom with {Treadles} treadles cannot be treadled.", "treadles", $"Give 1 to {ShaftSet.Highest} treadles, for example 6, or levers."),
        { Feet: < 1 or > MostFeet } => new InputProblem(
            $"{Feet} treadles pressed at once are not searched.", "feet", $"Give 1 to {MostFeet}, for example 2."),
        { ShaftsPerEnd: < 1 or > MostFeet } => new InputProblem(
            $"An end on {ShaftsPerEnd} shafts is not searched.", "shaftsPerEnd", $"Give 1 to {MostFeet}, for example 2."),
        _ => null,
    };

    /// <summary>The loom in words, for example <c>4 shafts</c> or <c>2 rigid heddles</c>.</summary>
    public string InWords => RigidHeddles switch
    {
        0 => Shafts == 1 ? "1 shaft" : $"{Shafts} shafts",
        1 => "1 rigid heddle",
        _ => $"{RigidHeddles} rigid heddles",
    };
}
