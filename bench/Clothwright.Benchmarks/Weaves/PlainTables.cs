using System.Collections.Immutable;
using Clothwright.Core.Weaves;

namespace Clothwright.Benchmarks.Weaves;

/// <summary>The straightforward way: one truth value a crossing, one loop a question.</summary>
internal static class PlainTables
{
    public static bool[,] Drawdown(Draft draft)
    {
        var cloth = new bool[draft.Picks, draft.Ends];
        ImmutableArray<ShaftSet> threading = draft.Threading;
        for (int pick = 0; pick < draft.Picks; pick++)
        {
            ShaftSet lift = draft.Lift(pick);
            for (int end = 0; end < draft.Ends; end++) cloth[pick, end] = lift.Overlaps(threading[end]);
        }

        return cloth;
    }

    /// <summary>Longest floats as a repeat: warp face, warp back, weft face, weft back; 0 for an endless one.</summary>
    public static (int WarpFace, int WarpBack, int WeftFace, int WeftBack) LongestFloats(bool[,] cloth)
    {
        int picks = cloth.GetLength(0);
        int ends = cloth.GetLength(1);
        (int warpBack, int warpFace) = Longest(ends, picks, (line, thread) => cloth[thread, line]);
        (int weftFace, int weftBack) = Longest(picks, ends, (line, thread) => cloth[line, thread]);
        return (warpFace, warpBack, weftFace, weftBack);
    }

    /// <summary>Whether the cloth hangs together, by sums of its rows and columns.</summary>
    public static bool HangsTogether(bool[,] cloth)
    {
        int picks = cloth.GetLength(0);
        int ends = cloth.GetLength(1);
        var rows = new int[picks];
        var columns = new int[ends];
        for (int pick = 0; pick < picks; pick++)
        {
            for (int end = 0; end < ends; end++)
            {
                if (!cloth[pick, end]) continue;
                rows[pick]++;
                columns[end]++;
            }
        }

        Array.Sort(rows);
        Array.Sort(columns, (a, b) => b.CompareTo(a));
        long rowSum = 0;
        long columnSum = 0;
        int t = 0;
        for (int s = 0; s <= picks; s++)
        {
            if (s > 0) rowSum += rows[s - 1];
            while (t < ends && columns[t] > picks - s) columnSum += columns[t++];
            bool all = (s == 0 && t == 0) || (s == picks && t == ends);
            if (!all && columnSum - rowSum == (long)t * (picks - s)) return false;
        }

        return true;
    }

    private static (int Clear, int Set) Longest(int lines, int threads, Func<int, int, bool> at)
    {
        int clear = 0;
        int set = 0;
        for (int line = 0; line < lines; line++)
        {
            int first = 0;
            while (first < threads && at(line, first) == at(line, (first + threads - 1) % threads)) first++;
            if (first == threads) continue;
            int run = 0;
            for (int i = 0; i < threads; i++)
            {
                bool value = at(line, (first + i) % threads);
                run = i > 0 && value == at(line, (first + i - 1) % threads) ? run + 1 : 1;
                if (value) set = Math.Max(set, run);
                else clear = Math.Max(clear, run);
            }
        }

        return (clear, set);
    }
}
