using System.Collections.Immutable;
using System.Numerics;

namespace Clothwright.Core.Weaves;

/// <summary>A draft: threading, tie-up with treadling or a lift plan, and which way the shed opens.</summary>
/// <remarks>
/// The cloth is D = R · U · H (Boolean product of treadling, tie-up and threading); with a sinking shed its complement.
/// A lift plan stands in for R · U. Immutable; lists are 0-based, shafts and treadles are numbered from 1.
/// What a person made is checked by <see cref="DraftCheck"/> before it is woven.
/// </remarks>
public sealed partial record Draft
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

    /// <summary>Which yarn each end is.</summary>
    public ThreadOrder WarpOrder { get; init; } = ThreadOrder.OneYarn;

    /// <summary>Which yarn each pick is.</summary>
    public ThreadOrder WeftOrder { get; init; } = ThreadOrder.OneYarn;

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
        for (ulong rest = Treadling[pick].Bits; rest != 0; rest &= rest - 1)
        {
            int treadle = BitOperations.TrailingZeroCount(rest);
            if (treadle < TieUp.Length) lift |= TieUp[treadle];
        }

        return lift;
    }

    /// <summary>The cloth this draft weaves.</summary>
    /// <remarks>One packed row is made for each distinct lift, by joining the ends of the shafts it moves, and copied to its picks.</remarks>
    /// <exception cref="InvalidOperationException">There are no ends or no picks; <see cref="DraftCheck"/> says so beforehand.</exception>
    public Drawdown Drawdown()
    {
        if (Ends == 0 || Picks == 0) throw new InvalidOperationException($"A draft of {Ends} ends and {Picks} picks weaves nothing.");
        int perPick = Weaves.Drawdown.WordsFor(Ends);
        var lifts = new ulong[Picks];
        var firstPick = new Dictionary<ulong, int>();
        for (int pick = 0; pick < lifts.Length; pick++)
        {
            lifts[pick] = Lift(pick).Bits;
            firstPick.TryAdd(lifts[pick], pick);
        }

        ulong inUse = ShaftsInUse.Bits;
        var sheds = new ShedRows(PackedShafts(perPick), perPick, new ShaftSet(inUse).Max, firstPick.Count);
        ulong[] words = GC.AllocateUninitializedArray<ulong>(perPick * Picks);
        for (int pick = 0; pick < lifts.Length; pick++)
        {
            Span<ulong> row = words.AsSpan(pick * perPick, perPick);
            int same = firstPick[lifts[pick]];
            if (same < pick) words.AsSpan(same * perPick, perPick).CopyTo(row);
            else Open(row, sheds, lifts[pick] & inUse);
        }

        return new Drawdown(Ends, Picks, words);
    }

    // The ends on each shaft, as packed rows.
    private ulong[] PackedShafts(int perPick)
    {
        var shafts = new ulong[perPick * ShaftSet.Highest];
        for (int end = 0; end < Threading.Length; end++)
        {
            for (ulong rest = Threading[end].Bits; rest != 0; rest &= rest - 1)
            {
                shafts[BitOperations.TrailingZeroCount(rest) * perPick + (end >> 6)] |= 1UL << (end & 63);
            }
        }

        return shafts;
    }

    private void Open(Span<ulong> row, ShedRows sheds, ulong lift)
    {
        sheds.Open(row, lift);
        if (RisingShed) return;
        for (int i = 0; i < row.Length; i++) row[i] = ~row[i];
        row[^1] &= Weaves.Drawdown.LastMask(Ends);
    }
}
