namespace Clothwright.Drawing.Drafts;

/// <summary>Finds the repeats in a row of threads.</summary>
internal static class ThreadRepeats
{
    private const int LongestPeriod = 400;

    /// <summary>Cuts a row of threads into groups that are worked once or several times; together they are the whole row, in order.</summary>
    /// <param name="count">Threads in the row.</param>
    /// <param name="same">Whether two 0-based threads are worked alike.</param>
    /// <param name="leastSaving">A repeat is told only if it leaves out this many threads or more.</param>
    public static List<ThreadGroup> Find(int count, Func<int, int, bool> same, int leastSaving = 8)
    {
        var groups = new List<ThreadGroup>();
        int plainFrom = 0;
        int at = 0;
        while (at < count)
        {
            ThreadGroup best = BestAt(at, count, same, leastSaving);
            if (best.Times < 2)
            {
                at++;
                continue;
            }

            if (at > plainFrom) groups.Add(new ThreadGroup(plainFrom, at - plainFrom, 1));
            groups.Add(best);
            at += best.Count;
            plainFrom = at;
        }

        if (count > plainFrom) groups.Add(new ThreadGroup(plainFrom, count - plainFrom, 1));
        return groups;
    }

    // The period that leaves out most threads; of equals the shortest.
    private static ThreadGroup BestAt(int at, int count, Func<int, int, bool> same, int leastSaving)
    {
        var best = new ThreadGroup(at, 1, 1);
        int mostSaved = leastSaving - 1;
        for (int period = 1; period <= Math.Min(LongestPeriod, (count - at) / 2); period++)
        {
            int run = 0;
            while (at + period + run < count && same(at + run, at + period + run)) run++;
            int times = 1 + run / period;
            int saved = period * (times - 1);
            if (saved <= mostSaved) continue;
            mostSaved = saved;
            best = new ThreadGroup(at, period, times);
        }

        return best;
    }
}
