using System.Collections.Immutable;

namespace Clothwright.Core.Plans.Briefs;

/// <summary>The order of yarns across the warp, from the left edge.</summary>
/// <param name="Runs">The order; at least one run.</param>
public sealed record WarpOrder(ImmutableArray<ThreadRun> Runs)
{
    /// <summary>True: the order is repeated until the warp is full. False: it is used once, in the middle, and its outer yarns fill the sides.</summary>
    public bool Repeats { get; init; } = true;

    /// <summary>Threads of the whole order.</summary>
    public int Threads => Runs.Sum(r => r.Threads);

    /// <summary>A warp of one yarn.</summary>
    /// <param name="yarnId">The yarn, by its id on the shelf.</param>
    public static WarpOrder Of(string yarnId) => new([new ThreadRun(yarnId, 1)]);
}
