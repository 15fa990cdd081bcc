using System.Collections.Immutable;

namespace Clothwright.Core.Weaves;

public sealed partial record Draft
{
    /// <summary>The draft repeated, from end 1 and pick 1, and cut to a number of ends and picks.</summary>
    /// <param name="ends">Ends, above 0.</param>
    /// <param name="picks">Picks, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no ends or no picks.</exception>
    public Draft Repeated(int ends, int picks) => Piece(0, ends, 0, picks);

    /// <summary>A piece of the draft, or, where it reaches past the edge, the draft repeated and cut. Yarn orders move with their threads.</summary>
    /// <param name="firstEnd">0-based first end of the piece.</param>
    /// <param name="ends">Ends of the piece, above 0.</param>
    /// <param name="firstPick">0-based first pick of the piece.</param>
    /// <param name="picks">Picks of the piece, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A start is below 0, or the piece has no ends or no picks.</exception>
    public Draft Piece(int firstEnd, int ends, int firstPick, int picks)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(firstEnd);
        ArgumentOutOfRangeException.ThrowIfNegative(firstPick);
        ArgumentOutOfRangeException.ThrowIfLessThan(ends, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(picks, 1);
        return this with
        {
            Threading = Taken(Threading, firstEnd, ends),
            Treadling = Taken(Treadling, firstPick, picks),
            LiftPlan = Taken(LiftPlan, firstPick, picks),
            WarpOrder = WarpOrder.From(firstEnd),
            WeftOrder = WeftOrder.From(firstPick),
        };
    }

    private static ImmutableArray<ShaftSet> Taken(ImmutableArray<ShaftSet> list, int first, int count) =>
        list.IsEmpty ? list : [.. Enumerable.Range(0, count).Select(i => list[(first + i) % list.Length])];
}
