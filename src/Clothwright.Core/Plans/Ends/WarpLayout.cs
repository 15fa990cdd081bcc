using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;

namespace Clothwright.Core.Plans.Ends;

/// <summary>Lays the order of yarns across a number of ends.</summary>
public static class WarpLayout
{
    /// <summary>The yarn of every end, as runs from the left.</summary>
    /// <param name="order">The order.</param>
    /// <param name="ends">Ends of the whole warp; above 0.</param>
    /// <param name="outside">Ends at each side (selvedges) that take the yarn of the edge and do not move the order; at most half of the ends.</param>
    public static ImmutableArray<ThreadRun> Lay(WarpOrder order, int ends, int outside)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ends);
        ArgumentOutOfRangeException.ThrowIfNegative(outside);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(outside, ends / 2);
        var runs = new RunList();
        int inner = ends - 2 * outside;
        if (order.Repeats) Repeat(runs, order, inner);
        else Centre(runs, order, inner);
        return runs.WithEdges(outside, order.Runs[0].YarnId, order.Runs[^1].YarnId);
    }

    private static void Repeat(RunList runs, WarpOrder order, int ends)
    {
        while (ends > 0)
        {
            foreach (ThreadRun run in order.Runs)
            {
                int taken = Math.Min(run.Threads, ends);
                runs.Add(run.YarnId, taken);
                ends -= taken;
            }
        }
    }

    // Once, in the middle: what is missing is filled by the outer yarns, what is too much is cut at both sides.
    private static void Centre(RunList runs, WarpOrder order, int ends)
    {
        int spare = ends - order.Threads;
        int left = (int)Math.Floor(spare / 2.0);
        if (left > 0) runs.Add(order.Runs[0].YarnId, left);
        int skip = Math.Max(0, -left);
        int room = Math.Min(ends, order.Threads);
        foreach (ThreadRun run in order.Runs)
        {
            int skipped = Math.Min(skip, run.Threads);
            skip -= skipped;
            int taken = Math.Min(run.Threads - skipped, room);
            runs.Add(run.YarnId, taken);
            room -= taken;
        }

        if (spare > 0) runs.Add(order.Runs[^1].YarnId, spare - left);
    }

    // Runs grow together when neighbours are of one yarn.
    private sealed class RunList
    {
        private readonly List<ThreadRun> _runs = [];

        public void Add(string yarnId, int threads)
        {
            if (threads == 0) return;
            if (_runs.Count > 0 && _runs[^1].YarnId == yarnId) _runs[^1] = new ThreadRun(yarnId, _runs[^1].Threads + threads);
            else _runs.Add(new ThreadRun(yarnId, threads));
        }

        public ImmutableArray<ThreadRun> WithEdges(int outside, string firstYarn, string lastYarn)
        {
            if (outside == 0) return [.. _runs];
            var widened = new RunList();
            widened.Add(_runs.Count > 0 ? _runs[0].YarnId : firstYarn, outside);
            foreach (ThreadRun run in _runs) widened.Add(run.YarnId, run.Threads);
            widened.Add(_runs.Count > 0 ? _runs[^1].YarnId : lastYarn, outside);
            return [.. widened._runs];
        }
    }
}
