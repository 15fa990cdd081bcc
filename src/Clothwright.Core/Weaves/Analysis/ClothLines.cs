namespace Clothwright.Core.Weaves.Analysis;

/// <summary>A cloth reduced to lines that differ: what is found on one end or pick holds for all that weave alike.</summary>
internal sealed class ClothLines
{
    public ClothLines(Drawdown cloth)
    {
        Cloth = cloth;
        Picks = LineClasses.OfPicks(cloth);
        PickRows = cloth.Picked(Picks.First);
        Drawdown columns = PickRows.Transposed();
        Ends = LineClasses.OfPicks(columns);
        EndRows = ReferenceEquals(PickRows, cloth) ? columns.Picked(Ends.First) : cloth.EndsAsRows(Ends.First);
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
}
