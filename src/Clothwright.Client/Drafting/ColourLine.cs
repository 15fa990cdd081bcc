using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;

namespace Clothwright.Client.Drafting;

/// <summary>Orders of yarns, thread by thread instead of run by run.</summary>
internal static class ColourLine
{
    /// <summary>Longest order that is worked on thread by thread.</summary>
    public const int Longest = 4000;

    /// <summary>The ends, one by one; empty if there are too many.</summary>
    public static ImmutableArray<ThreadRun> Threads(IReadOnlyList<ThreadRun> runs) => runs.Sum(r => (long)r.Threads) > Longest
        ? []
        : [.. runs.SelectMany(r => Enumerable.Repeat(r with { Threads = 1 }, r.Threads))];

    /// <summary>The picks, one by one; empty if there are too many.</summary>
    public static ImmutableArray<WeftRun> Threads(IReadOnlyList<WeftRun> runs) => runs.Sum(r => (long)r.Picks) > Longest
        ? []
        : [.. runs.SelectMany(r => Enumerable.Repeat(r with { Picks = 1 }, r.Picks))];

    /// <summary>The runs that neighbours of one yarn make.</summary>
    public static ImmutableArray<ThreadRun> Runs(IReadOnlyList<ThreadRun> threads) => [.. Neighbours(threads).Select(n => n.Thread with { Threads = n.Times })];

    /// <summary>The runs that neighbours of one yarn make.</summary>
    public static ImmutableArray<WeftRun> Runs(IReadOnlyList<WeftRun> threads) => [.. Neighbours(threads).Select(n => n.Thread with { Picks = n.Times })];

    /// <summary>The order carried on until a thread is in it and whole repeats of the draft are full.</summary>
    /// <param name="threads">One repeat of the order.</param>
    /// <param name="thread">0-based thread that has to be in it.</param>
    /// <param name="repeat">Threads in a repeat of the draft.</param>
    public static ImmutableArray<T> Reaching<T>(ImmutableArray<T> threads, int thread, int repeat)
    {
        if (threads.IsEmpty || (threads.Length > 1 && thread < threads.Length)) return threads;
        int length = Math.Min(Longest, (thread / repeat + 1) * repeat);
        return [.. Enumerable.Range(0, Math.Max(length, threads.Length)).Select(i => threads[i % threads.Length])];
    }

    private static IEnumerable<(T Thread, int Times)> Neighbours<T>(IReadOnlyList<T> threads)
        where T : class
    {
        for (int first = 0; first < threads.Count;)
        {
            int next = first + 1;
            while (next < threads.Count && threads[next].Equals(threads[first])) next++;
            yield return (threads[first], next - first);
            first = next;
        }
    }
}
