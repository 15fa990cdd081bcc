using System.Collections.Immutable;
using System.Numerics;

namespace Clothwright.Core.Weaves.Analysis;

/// <summary>A cloth reduced to lines that differ: what is found on one end or pick holds for all that weave alike.</summary>
internal sealed partial class ClothLines
{
    public ClothLines(Drawdown cloth)
    {
        Cloth = cloth;
        Picks = LineClasses.OfPicks(cloth);
        PickRows = cloth.Picked(Picks.First);
        Drawdown columns = PickRows.Transposed();
        Ends = LineClasses.OfPicks(columns);
        EndRows = ReferenceEquals(PickRows, cloth) ? columns.Picked(Ends.First) : cloth.EndsAsRows(Ends.First);
        PickSums = Sums(PickRows);
    }

    private ClothLines(Drawdown cloth, LineClasses picks, LineClasses ends, Drawdown endRows, ImmutableArray<int> pickSums)
    {
        Cloth = cloth;
        Picks = picks;
        Ends = ends;
        PickRows = cloth.Picked(picks.First);
        EndRows = endRows;
        PickSums = pickSums;
    }

    public Drawdown Cloth { get; }

    /// <summary>Picks that weave alike.</summary>
    public LineClasses Picks { get; }

    /// <summary>Ends that weave alike.</summary>
    public LineClasses Ends { get; }

    /// <summary>One row of all ends for each class of picks.</summary>
    public Drawdown PickRows { get; }

    /// <summary>One row of all picks for each class of ends.</summary>
    public Drawdown EndRows { get; }

    /// <summary>Each class of ends against each class of picks: a row for each class of ends.</summary>
    public Drawdown ClassTable => Picks.Count == Cloth.Picks ? EndRows : EndRows.Transposed().Picked(Picks.First).Transposed();

    /// <summary>Ends on top, for each class of picks.</summary>
    public ImmutableArray<int> PickSums { get; }

    /// <summary>Picks below, for each class of ends.</summary>
    public ImmutableArray<int> EndSums => Sums(EndRows);

    private static ImmutableArray<int> Sums(Drawdown rows)
    {
        var sums = new int[rows.Picks];
        for (int row = 0; row < sums.Length; row++)
        {
            int sum = 0;
            foreach (ulong word in rows.Row(row)) sum += BitOperations.PopCount(word);
            sums[row] = sum;
        }

        return ImmutableArray.Create(sums);
    }
}
