using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>The kinds of ends in a draft: ends that weave alike are one kind.</summary>
internal sealed class EndKinds
{
    private EndKinds(ImmutableArray<int> ofEnd, ImmutableArray<ulong> lifts)
    {
        OfEnd = ofEnd;
        Lifts = lifts;
        Count = ofEnd.Max() + 1;
        All = ShaftSet.FirstOf(Count).Bits;
    }

    /// <summary>How many kinds.</summary>
    public int Count { get; }

    /// <summary>Kind of each end, from 0 by first appearance.</summary>
    public ImmutableArray<int> OfEnd { get; }

    /// <summary>Kinds raised by each pick, one bit a kind.</summary>
    public ImmutableArray<ulong> Lifts { get; }

    /// <summary>Every kind.</summary>
    public ulong All { get; }

    /// <summary>Finds the kinds; at most 64 can be told apart, as a draft has no more shafts.</summary>
    /// <exception cref="Quantities.InputProblemException">Ends lie on several shafts so that there are more than 64 kinds.</exception>
    public static EndKinds Of(Draft draft)
    {
        Drawdown cloth = draft.Drawdown();
        var kindOf = new Dictionary<string, int>(StringComparer.Ordinal);
        var ofEnd = ImmutableArray.CreateBuilder<int>(cloth.Ends);
        int[] different = DifferentPicks(draft);
        for (int end = 0; end < cloth.Ends; end++)
        {
            string column = string.Concat(different.Select(p => cloth[p, end] ? '1' : '0'));
            kindOf.TryAdd(column, kindOf.Count);
            ofEnd.Add(kindOf[column]);
        }

        if (kindOf.Count > ShaftSet.Highest)
        {
            throw new Quantities.InputProblemException(new Quantities.InputProblem(
                $"The draft has {kindOf.Count} kinds of ends.", "draft", $"Rigid heddles are laid out for {ShaftSet.Highest} kinds at most: use fewer shafts."));
        }

        int[] firstEnd = [.. Enumerable.Range(0, kindOf.Count).Select(k => ofEnd.IndexOf(k))];
        return new EndKinds(ofEnd.MoveToImmutable(), [.. Enumerable.Range(0, cloth.Picks).Select(p => Lift(cloth, p, firstEnd))]);
    }

    /// <summary>The selections among slot kinds that a stick has to make: those picks that raise some of them and not all, each once.</summary>
    /// <param name="slots">The kinds in the slots.</param>
    public IReadOnlyList<ulong> Selections(ulong slots) => [.. Lifts.Select(l => l & slots).Where(s => s != 0 && s != slots).Distinct()];

    private static ulong Lift(Drawdown cloth, int pick, int[] firstEnd)
    {
        ulong lift = 0;
        for (int kind = 0; kind < firstEnd.Length; kind++)
        {
            if (cloth[pick, firstEnd[kind]]) lift |= 1UL << kind;
        }

        return lift;
    }

    private static int[] DifferentPicks(Draft draft) => [.. Enumerable.Range(0, draft.Picks).DistinctBy(draft.Lift)];
}
