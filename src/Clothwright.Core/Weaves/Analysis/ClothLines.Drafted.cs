using System.Collections.Immutable;
using System.Numerics;

namespace Clothwright.Core.Weaves.Analysis;

/// <content>Lines told apart by the draft that wove them, without looking at the cloth.</content>
internal sealed partial class ClothLines
{
    /// <summary>The lines of the cloth of a draft.</summary>
    /// <remarks>Ends on the same shafts weave alike, and so do picks that move the same of those sets: as many bits a pick as there are sets tell all.</remarks>
    /// <param name="draft">The draft.</param>
    /// <param name="cloth">The cloth it weaves.</param>
    public static ClothLines Of(Draft draft, Drawdown cloth)
    {
        List<ulong> sets = [];
        int[] setOf = SetOfEachEnd(draft.Threading, sets);
        if (sets.Count > ShaftSet.Highest) return new ClothLines(cloth);

        LineClasses picks = AlikePicks(draft, sets, out ulong[] moved);

        // As many ends as sets: one word a pick.
        Drawdown columns = new Drawdown(sets.Count, cloth.Picks, moved).Transposed();
        LineClasses alike = LineClasses.OfPicks(columns);
        for (int end = 0; end < setOf.Length; end++) setOf[end] = alike.ClassOf[setOf[end]];
        var ends = LineClasses.OfKinds(setOf, alike.Count);
        return new ClothLines(cloth, picks, ends, columns.Picked(alike.First), EndsOnTop(picks, moved, alike, ends));
    }

    private static int[] SetOfEachEnd(ImmutableArray<ShaftSet> threading, List<ulong> sets)
    {
        var numbers = new Dictionary<ulong, int>();
        var setOf = new int[threading.Length];
        for (int end = 0; end < setOf.Length; end++)
        {
            if (!numbers.TryGetValue(threading[end].Bits, out setOf[end]))
            {
                numbers.Add(threading[end].Bits, setOf[end] = sets.Count);
                sets.Add(threading[end].Bits);
            }
        }

        return setOf;
    }

    // Which sets of ends lie on top, pick by pick, and the picks sorted by that.
    private static LineClasses AlikePicks(Draft draft, List<ulong> sets, out ulong[] moved)
    {
        ulong[] each = [.. sets];
        ulong under = draft.RisingShed ? 0 : ShaftSet.FirstOf(sets.Count).Bits;
        var kindOfLift = new Dictionary<ulong, int>();
        var kindOfMoved = new Dictionary<ulong, int>();
        var ofKind = new List<ulong>();
        moved = new ulong[draft.Picks];
        var kindOf = new int[moved.Length];
        for (int pick = 0; pick < moved.Length; pick++)
        {
            ulong lift = draft.Lift(pick).Bits;
            if (!kindOfLift.TryGetValue(lift, out int kind))
            {
                ulong sheds = 0;
                for (int set = 0; set < each.Length; set++) sheds |= ((each[set] & lift) != 0 ? 1UL : 0UL) << set;

                sheds ^= under;
                if (!kindOfMoved.TryGetValue(sheds, out kind))
                {
                    kindOfMoved.Add(sheds, kind = ofKind.Count);
                    ofKind.Add(sheds);
                }

                kindOfLift.Add(lift, kind);
            }

            kindOf[pick] = kind;
            moved[pick] = ofKind[kind];
        }

        return LineClasses.OfKinds(kindOf, ofKind.Count);
    }

    private static ImmutableArray<int> EndsOnTop(LineClasses picks, ulong[] moved, LineClasses alike, LineClasses ends)
    {
        // Of sets that always move together the first stands for all.
        ulong first = 0;
        foreach (int set in alike.First) first |= 1UL << set;
        var sums = new int[picks.Count];
        for (int kind = 0; kind < sums.Length; kind++)
        {
            for (ulong rest = moved[picks.First[kind]] & first; rest != 0; rest &= rest - 1)
            {
                sums[kind] += ends.Times[alike.ClassOf[BitOperations.TrailingZeroCount(rest)]];
            }
        }

        return ImmutableArray.Create(sums);
    }
}
