using Clothwright.Core.Weaves;

namespace Clothwright.Core.Setts.Limits;

/// <summary>Tells the family of a weave from its drawdown.</summary>
public static class WeaveFamilyFinder
{
    /// <summary>The family, or null for a weave of none of them.</summary>
    /// <param name="weave">One or more whole repeats.</param>
    public static WeaveFamily? Of(Drawdown weave)
    {
        ArgumentNullException.ThrowIfNull(weave);
        return Checkered(weave) ?? Stepped(weave);
    }

    // Plain weave of groups: the face changes for all ends at once from pick to pick, and in runs of one length.
    private static WeaveFamily? Checkered(Drawdown weave)
    {
        int across = RunLength(weave.Ends, i => weave[0, i]);
        int along = RunLength(weave.Picks, i => weave[i, 0]);
        if (across == 0 || along == 0) return null;
        for (int pick = 0; pick < weave.Picks; pick++)
        {
            for (int end = 0; end < weave.Ends; end++)
            {
                if (weave[pick, end] != (weave[0, end] ^ weave[pick, 0] ^ weave[0, 0])) return null;
            }
        }

        return (across, along) switch
        {
            (1, 1) => WeaveFamily.Plain,
            (1, _) => WeaveFamily.WarpRib,
            (_, 1) => WeaveFamily.WeftRib,
            _ => WeaveFamily.Hopsack,
        };
    }

    private static WeaveFamily? Stepped(Drawdown weave)
    {
        int period = Period(weave);
        if (period < 3 || weave.Picks % period != 0) return null;
        for (int step = 1; step < period; step++)
        {
            if (!Moves(weave, step)) continue;
            if (step == 1 || step == period - 1) return WeaveFamily.Twill;
            int up = Enumerable.Range(0, period).Count(e => weave[0, e]);
            return up == 1 || up == period - 1 ? WeaveFamily.Satin : null;
        }

        return null;
    }

    private static bool Moves(Drawdown weave, int step)
    {
        for (int pick = 0; pick < weave.Picks; pick++)
        {
            for (int end = 0; end < weave.Ends; end++)
            {
                if (weave[pick, end] != weave[(pick + 1) % weave.Picks, (end + step) % weave.Ends]) return false;
            }
        }

        return true;
    }

    private static int Period(Drawdown weave)
    {
        for (int period = 1; period < weave.Ends; period++)
        {
            if (weave.Ends % period != 0) continue;
            bool repeats = true;
            for (int end = 0; repeats && end < weave.Ends; end++) repeats = weave[0, end] == weave[0, (end + period) % weave.Ends];
            if (repeats) return period;
        }

        return weave.Ends;
    }

    // Length of the runs when all are equal round the repeat; 0 when they differ or there is only one.
    private static int RunLength(int threads, Func<int, bool> face)
    {
        int first = 0;
        while (first < threads && face(first) == face((first + threads - 1) % threads)) first++;
        if (first == threads) return 0;
        int length = 0;
        while (face((first + length) % threads) == face(first)) length++;
        if (threads % (2 * length) != 0) return 0;
        for (int i = 0; i < threads; i++)
        {
            if (face((first + i) % threads) != (face(first) ^ (i / length % 2 == 1))) return 0;
        }

        return length;
    }
}
