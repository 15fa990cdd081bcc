namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>A turn at which the shuttle does not catch the edge end.</summary>
/// <param name="Turn">Shuttle, side and picks.</param>
/// <param name="EndsMissed">Ends from the edge inward that both picks pass on the same side.</param>
/// <param name="PullsOut">Both picks lie in one shed, with no pick of another shuttle between that holds them: all ends are missed and the pick pulls out.</param>
/// <param name="FloatRoundEdge">Ends the weft passes without being held, from the last crossing before the edge to the first after it.</param>
public readonly record struct MissedTurn(ShuttleTurn Turn, int EndsMissed, bool PullsOut, int FloatRoundEdge);
