using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Chooses which kinds of lines to keep when only so many may stay; the others become like the nearest kept one.</summary>
/// <param name="Like">For each kind the kind it becomes; itself if kept.</param>
/// <param name="Proved">Whether no choice costs less.</param>
internal sealed record KeptLines(int[] Like, bool Proved)
{
    // Comparisons of two kinds before the search stops proving: a second or so.
    private const long Comparisons = 20_000_000;

    public static KeptLines Choose(ImmutableArray<int> counts, Func<int, int, int> crossings, int most, ReductionAim aim)
    {
        int kinds = counts.Length;
        if (kinds <= most) return new KeptLines([.. Enumerable.Range(0, kinds)], true);
        var cost = new long[kinds, kinds];
        for (int a = 0; a < kinds; a++)
        {
            for (int b = 0; b < kinds; b++)
            {
                if (a == b) continue;
                long changed = (long)counts[a] * crossings(a, b);
                cost[a, b] = aim == ReductionAim.FewestEnds ? ((long)counts[a] << 32) + changed : (changed << 32) + counts[a];
            }
        }

        return new Search(cost, kinds, most).Run();
    }

    // Branch and bound over kinds, dearest to change first; what has to go costs at least its nearest neighbour.
    private sealed class Search(long[,] cost, int kinds, int most)
    {
        private readonly bool[] _out = new bool[kinds];
        private readonly int[] _order = [.. Enumerable.Range(0, kinds).OrderByDescending(k => Enumerable.Range(0, kinds).Where(j => j != k).Min(j => cost[k, j]))];
        private bool[] _bestOut = [];
        private long _best = long.MaxValue;
        private long _left = Comparisons / ((long)kinds * kinds);

        public KeptLines Run()
        {
            Greedy();
            bool proved = Explore(0, 0);
            int[] like = [.. Enumerable.Range(0, kinds).Select(k => _bestOut[k] ? Nearest(k, _bestOut) : k)];
            return new KeptLines(like, proved);
        }

        private int Nearest(int kind, bool[] gone)
        {
            int best = -1;
            for (int j = 0; j < kinds; j++)
            {
                if (j != kind && !gone[j] && (best < 0 || cost[kind, j] < cost[kind, best])) best = j;
            }

            return best;
        }

        private long Total(bool[] gone)
        {
            long sum = 0;
            for (int k = 0; k < kinds; k++)
            {
                if (gone[k]) sum += cost[k, Nearest(k, gone)];
            }

            return sum;
        }

        // Drops one kind at a time, then exchanges while that helps: a good first answer.
        private void Greedy()
        {
            bool[] gone = new bool[kinds];
            for (int dropped = 0; dropped < kinds - most; dropped++)
            {
                int drop = Enumerable.Range(0, kinds).Where(k => !gone[k]).MinBy(k => With(gone, k, -1))!;
                gone[drop] = true;
            }

            for (bool better = kinds <= 128; better;)
            {
                better = false;
                for (int a = 0; a < kinds; a++)
                {
                    for (int b = 0; b < kinds && gone[a]; b++)
                    {
                        if (gone[b] || With(gone, b, a) >= Total(gone)) continue;
                        (gone[a], gone[b], better) = (false, true, true);
                    }
                }
            }

            (_bestOut, _best) = (gone, Total(gone));
        }

        private long With(bool[] gone, int drop, int back)
        {
            gone[drop] = true;
            if (back >= 0) gone[back] = false;
            long total = Total(gone);
            gone[drop] = false;
            if (back >= 0) gone[back] = true;
            return total;
        }

        private bool Explore(int at, int dropped)
        {
            if (_left-- <= 0) return false;
            if (dropped == kinds - most)
            {
                long total = Total(_out);
                if (total < _best) (_best, _bestOut) = (total, [.. _out]);
                return true;
            }

            if (kinds - at < kinds - most - dropped || Bound(at, dropped) >= _best) return true;
            int kind = _order[^(at + 1)];
            _out[kind] = true;
            bool finished = Explore(at + 1, dropped + 1);
            _out[kind] = false;
            return finished && Explore(at + 1, dropped);
        }

        private long Bound(int at, int dropped)
        {
            long sum = 0;
            for (int k = 0; k < kinds; k++)
            {
                if (_out[k]) sum += cost[k, Nearest(k, _out)];
            }

            Span<long> least = new long[kinds - at];
            for (int i = at; i < kinds; i++)
            {
                int k = _order[^(i + 1)];
                least[i - at] = cost[k, Nearest(k, _out)];
            }

            least.Sort();
            foreach (long l in least[..(kinds - most - dropped)]) sum += l;
            return sum;
        }
    }
}
