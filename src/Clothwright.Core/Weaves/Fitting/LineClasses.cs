using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>The different picks and the different ends of a cloth, numbered from 0 by first appearance.</summary>
internal sealed class LineClasses
{
    private LineClasses(Drawdown cloth, int[] pickKind, int[] endKind)
    {
        Cloth = cloth;
        PickKind = pickKind;
        EndKind = endKind;
        FirstPick = FirstOf(pickKind);
        FirstEnd = FirstOf(endKind);
    }

    public Drawdown Cloth { get; }

    /// <summary>Kind of each pick.</summary>
    public int[] PickKind { get; }

    /// <summary>Kind of each end.</summary>
    public int[] EndKind { get; }

    /// <summary>The first pick of each kind.</summary>
    public ImmutableArray<int> FirstPick { get; }

    /// <summary>The first end of each kind.</summary>
    public ImmutableArray<int> FirstEnd { get; }

    public int PickKinds => FirstPick.Length;

    public int EndKinds => FirstEnd.Length;

    public static LineClasses Of(Drawdown cloth)
    {
        var kinds = new Dictionary<PackedLine, int>();
        int[] pickKind = new int[cloth.Picks];
        var first = new List<int>();
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            var line = new PackedLine(cloth.Row(pick).ToArray());
            if (!kinds.TryGetValue(line, out int kind))
            {
                kinds[line] = kind = first.Count;
                first.Add(pick);
            }

            pickKind[pick] = kind;
        }

        // Two ends are alike if they are alike on each different pick.
        int words = (first.Count + 63) / 64;
        ulong[][] columns = new ulong[cloth.Ends][];
        for (int end = 0; end < cloth.Ends; end++) columns[end] = new ulong[words];
        for (int kind = 0; kind < first.Count; kind++)
        {
            ReadOnlySpan<ulong> row = cloth.Row(first[kind]);
            for (int end = 0; end < cloth.Ends; end++)
            {
                columns[end][kind >> 6] |= ((row[end >> 6] >> (end & 63)) & 1) << (kind & 63);
            }
        }

        kinds.Clear();
        int[] endKind = new int[cloth.Ends];
        for (int end = 0; end < cloth.Ends; end++)
        {
            var line = new PackedLine(columns[end]);
            if (!kinds.TryGetValue(line, out int kind)) kinds[line] = kind = kinds.Count;
            endKind[end] = kind;
        }

        return new LineClasses(cloth, pickKind, endKind);
    }

    /// <summary>Whether the warp is on top where a kind of pick crosses a kind of end.</summary>
    public bool Up(int pickKind, int endKind) => Cloth[FirstPick[pickKind], FirstEnd[endKind]];

    /// <summary>How many lines are of each kind.</summary>
    public static int[] Counts(int[] kindOf, int kinds)
    {
        int[] counts = new int[kinds];
        foreach (int kind in kindOf) counts[kind]++;
        return counts;
    }

    private static ImmutableArray<int> FirstOf(int[] kindOf)
    {
        var first = ImmutableArray.CreateBuilder<int>();
        for (int i = 0; i < kindOf.Length; i++)
        {
            if (kindOf[i] == first.Count) first.Add(i);
        }

        return first.ToImmutable();
    }
}
