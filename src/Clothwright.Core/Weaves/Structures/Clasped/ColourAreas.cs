using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Where two clasped yarns meet on each thread of a cloth: the plan of its two colour areas.</summary>
/// <param name="AlongPicks">True: each pick is left yarn up to the join and right yarn beyond. False: each end is front yarn up to the join and back yarn beyond.</param>
/// <param name="Joins">For each thread, how many of the threads it crosses lie in the first area; first thread first.</param>
/// <param name="Crossed">Threads that each thread crosses: ends for picks, picks for ends.</param>
public sealed record ColourAreas(bool AlongPicks, ImmutableArray<int> Joins, int Crossed)
{
    /// <summary>Whether a crossing lies in the first area: left yarn, or front yarn.</summary>
    /// <param name="pick">0-based pick.</param>
    /// <param name="end">0-based end.</param>
    public bool IsFirst(int pick, int end) => AlongPicks ? end < Joins[pick] : pick < Joins[end];

    /// <summary>Share of the cloth in the first area, 0 to 1; each of its yarns is laid double.</summary>
    public double FirstShare => Joins.Sum(j => (double)j) / ((double)Joins.Length * Crossed);

    /// <summary>Neighbouring threads whose joins lie at one place, where the loops would crowd: 0-based second thread of each pair.</summary>
    public ImmutableArray<int> Crowded => [.. Enumerable.Range(1, Math.Max(0, Joins.Length - 1)).Where(t => Joins[t] == Joins[t - 1] && Joins[t] > 0 && Joins[t] < Crossed)];

    /// <summary>A boundary that runs in straight lines through places at even steps along the cloth.</summary>
    /// <param name="alongPicks">Whether the picks are clasped, or the ends.</param>
    /// <param name="threads">Threads that are clasped, above 0.</param>
    /// <param name="crossed">Threads each of them crosses, above 0.</param>
    /// <param name="percent">Places of the join at even steps from the first thread to the last, as per cent of the width (or of the length); one or more.</param>
    /// <param name="stagger">Threads by which every second join is moved on, so that loops do not crowd.</param>
    public static ColourAreas Along(bool alongPicks, int threads, int crossed, IReadOnlyList<int> percent, int stagger = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(crossed, 1);
        ArgumentNullException.ThrowIfNull(percent);
        ArgumentOutOfRangeException.ThrowIfZero(percent.Count, nameof(percent));
        return new ColourAreas(alongPicks, [.. Enumerable.Range(0, threads).Select(JoinOf)], crossed);

        int JoinOf(int thread)
        {
            double at = threads == 1 ? 0 : (double)thread / (threads - 1) * (percent.Count - 1);
            int from = Math.Min((int)at, percent.Count - 1), to = Math.Min(from + 1, percent.Count - 1);
            double share = (percent[from] + ((percent[to] - percent[from]) * (at - from))) / 100;
            int join = (int)Math.Round(share * crossed, MidpointRounding.AwayFromZero);
            return join > 0 && join < crossed ? Math.Clamp(join + (thread % 2 * stagger), 0, crossed) : join;
        }
    }

    /// <summary>The plan in words, threads counted from 1, neighbours alike together, for example <c>picks 1 to 4: 6 ends</c>.</summary>
    /// <param name="most">The most stretches that are told.</param>
    public IEnumerable<string> InWords(int most)
    {
        string thread = AlongPicks ? "pick" : "end", crossed = AlongPicks ? "end" : "pick", first = AlongPicks ? "from the left" : "from the front";
        int told = 0;
        for (int from = 0; from < Joins.Length;)
        {
            int to = from;
            while (to + 1 < Joins.Length && Joins[to + 1] == Joins[from]) to++;
            if (told++ == most)
            {
                yield return $"and so on to {thread} {Joins.Length}";
                yield break;
            }

            string threads = to == from ? $"{thread} {from + 1}" : $"{thread}s {from + 1} to {to + 1}";
            yield return Joins[from] switch
            {
                0 => $"{threads}: the second yarn alone",
                var all when all == Crossed => $"{threads}: the first yarn alone",
                var join => $"{threads}: first yarn over {join} {crossed}{(join == 1 ? "" : "s")} {first}, second over {Crossed - join}",
            };
            from = to + 1;
        }
    }
}
