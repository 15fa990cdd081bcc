using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>The different picks and the different ends of a cloth, numbered from 0 by first appearance.</summary>
internal sealed class ClothKinds
{
    private readonly LineClasses _picks;
    private readonly LineClasses _ends;

    public ClothKinds(Drawdown cloth)
    {
        Cloth = cloth;
        _picks = LineClasses.OfPicks(cloth);
        _ends = LineClasses.OfEnds(cloth);
    }

    public Drawdown Cloth { get; }

    /// <summary>Kind of each pick.</summary>
    public ImmutableArray<int> PickKind => _picks.ClassOf;

    /// <summary>Kind of each end.</summary>
    public ImmutableArray<int> EndKind => _ends.ClassOf;

    /// <summary>The first pick of each kind.</summary>
    public ImmutableArray<int> FirstPick => _picks.First;

    /// <summary>The first end of each kind.</summary>
    public ImmutableArray<int> FirstEnd => _ends.First;

    /// <summary>Picks of each kind.</summary>
    public ImmutableArray<int> PickTimes => _picks.Times;

    /// <summary>Ends of each kind.</summary>
    public ImmutableArray<int> EndTimes => _ends.Times;

    public int PickKinds => _picks.Count;

    public int EndKinds => _ends.Count;

    /// <summary>Whether the warp is on top where a kind of pick crosses a kind of end.</summary>
    public bool Up(int pickKind, int endKind) => Cloth[FirstPick[pickKind], FirstEnd[endKind]];
}
