using System.Collections.Immutable;

namespace Clothwright.Core.Weaves;

/// <summary>A draft: threading, tie-up with treadling or a lift plan, and which way the shed opens.</summary>
/// <remarks>
/// The cloth is D = R · U · H (Boolean product of treadling, tie-up and threading); with a sinking shed its complement.
/// A lift plan stands in for R · U. Immutable; lists are 0-based, shafts and treadles are numbered from 1.
/// </remarks>
public sealed record Draft
{
    /// <summary>Shafts, 1 to 64.</summary>
    public required int Shafts { get; init; }

    /// <summary>Which shafts each end is on; usually one, none or several are allowed.</summary>
    public required ImmutableArray<ShaftSet> Threading { get; init; }

    /// <summary>Which shafts each treadle moves; empty when the draft has a lift plan only.</summary>
    public ImmutableArray<ShaftSet> TieUp { get; init; } = [];

    /// <summary>Which treadles each pick presses; empty when the draft has a lift plan only.</summary>
    public ImmutableArray<ShaftSet> Treadling { get; init; } = [];

    /// <summary>Which shafts each pick moves; empty when the draft has tie-up and treadling.</summary>
    public ImmutableArray<ShaftSet> LiftPlan { get; init; } = [];

    /// <summary>True: moved shafts rise. False: moved shafts sink.</summary>
    public bool RisingShed { get; init; } = true;

    /// <summary>Name of the weave, for people; empty if it has none.</summary>
    public string Name { get; init; } = "";

    /// <summary>Treadles.</summary>
    public int Treadles => TieUp.Length;

    /// <summary>Ends.</summary>
    public int Ends => Threading.Length;

    /// <summary>Picks.</summary>
    public int Picks => LiftPlan.IsEmpty ? Treadling.Length : LiftPlan.Length;

    /// <summary>The shafts a pick moves.</summary>
    /// <param name="pick">0-based pick.</param>
    public ShaftSet Lift(int pick)
    {
        if (!LiftPlan.IsEmpty) return LiftPlan[pick];
        ShaftSet lift = default;
        foreach (int treadle in Treadling[pick].Members())
        {
            if (treadle <= TieUp.Length) lift |= TieUp[treadle - 1];
        }

        return lift;
    }

    /// <summary>The cloth this draft weaves.</summary>
    public Drawdown Drawdown() => Weaves.Drawdown.From(
        Ends, Picks, (pick, end) => Lift(pick).Overlaps(Threading[end]) == RisingShed);
}
