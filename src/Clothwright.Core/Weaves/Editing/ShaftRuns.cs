using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>Threads drawn in by rule, one shaft or treadle each.</summary>
public static class ShaftRuns
{
    /// <summary>One after the other from the first to the last, then from the first again: a straight draw.</summary>
    /// <param name="from">Number of the first thread, 1 to 64.</param>
    /// <param name="to">Number at which it begins again, 1 to 64; below <paramref name="from"/> the run goes down.</param>
    /// <param name="threads">Threads, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside 1 to 64, or there are fewer than no threads.</exception>
    public static ImmutableArray<ShaftSet> Straight(int from, int to, int threads)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        int count = Math.Abs(to - from) + 1;
        int step = to < from ? -1 : 1;
        _ = ShaftSet.Of(from, to);
        return [.. Enumerable.Range(0, threads).Select(t => ShaftSet.Of(from + step * (t % count)))];
    }

    /// <summary>From the first to the last and back, neither point doubled: a pointed draw.</summary>
    /// <param name="from">Number of the first thread, 1 to 64.</param>
    /// <param name="to">Number at the point, 1 to 64.</param>
    /// <param name="threads">Threads, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside 1 to 64, or there are fewer than no threads.</exception>
    public static ImmutableArray<ShaftSet> Pointed(int from, int to, int threads)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        int reach = Math.Abs(to - from);
        int step = to < from ? -1 : 1;
        _ = ShaftSet.Of(from, to);
        int round = Math.Max(1, 2 * reach);
        return [.. Enumerable.Range(0, threads).Select(t => ShaftSet.Of(from + step * Math.Min(t % round, round - t % round) * (reach == 0 ? 0 : 1)))];
    }
}
