using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Plans.Wefts;

/// <summary>An order of wefts, ready to be counted and to be set.</summary>
internal sealed class WeftSystem
{
    private readonly ImmutableArray<WeftThread> _threads;

    private WeftSystem(ImmutableArray<WeftThread> threads) => _threads = threads;

    /// <summary>The order as decided.</summary>
    /// <param name="request">The decisions.</param>
    /// <param name="runs">Runs of the order; at least one.</param>
    /// <param name="where">Field path for a problem.</param>
    public static WeftSystem Of(PlanRequest request, ImmutableArray<WeftRun> runs, string where) =>
        new([.. runs.Select((r, i) => WeftThread.Of(request, r, $"{where}[{i}]"))]);

    /// <summary>Picks of the whole order.</summary>
    public int Repeat => _threads.Sum(t => t.Run.Picks);

    /// <summary>The threads as they follow each other, for sett and geometry.</summary>
    public ThreadSystem Threads => new(
        [.. _threads.Select(t => t.Lying)],
        ThreadOrder.Of([.. _threads.SelectMany((t, i) => Enumerable.Repeat(i, t.Run.Picks))]));

    /// <summary>How often each yarn crosses the cloth, and in how many picks it lies.</summary>
    /// <param name="picks">Picks thrown.</param>
    public IEnumerable<(string YarnId, int Picks, double Crossings)> Count(int picks)
    {
        int whole = picks / Repeat;
        int rest = picks % Repeat;
        var byYarn = new Dictionary<string, (int Picks, double Crossings)>(StringComparer.Ordinal);
        foreach (WeftThread thread in _threads)
        {
            int thrown = whole * thread.Run.Picks + Math.Clamp(rest, 0, thread.Run.Picks);
            rest -= thread.Run.Picks;
            foreach ((string yarn, double times) in thread.Yarns())
            {
                (int p, double c) = byYarn.GetValueOrDefault(yarn);
                byYarn[yarn] = (p + thrown, c + thrown * times);
            }
        }

        return byYarn.Select(y => (y.Key, y.Value.Picks, y.Value.Crossings));
    }

    /// <summary>How often a weft is cut off because the next run is too long for it to be carried up the selvedge.</summary>
    /// <param name="picks">Picks thrown.</param>
    /// <param name="longestCarried">Picks over which a weft may be carried.</param>
    /// <returns>Cuts by yarn; each leaves two tails.</returns>
    public IEnumerable<(string YarnId, int Cuts)> Cuts(int picks, double longestCarried)
    {
        if (_threads.Length < 2) return [];
        double rounds = (double)picks / Repeat;
        return _threads
            .Where(t => Repeat - t.Run.Picks > longestCarried)
            .SelectMany(t => t.Yarns().Select(y => (y.YarnId, (int)Math.Ceiling(rounds))));
    }
}
