using System.Collections.Immutable;
using Clothwright.Core.Setts.Reeds;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Neighbouring dents that are sleyed in one way.</summary>
/// <param name="FirstDent">First dent in use, from 1 at the left.</param>
/// <param name="LastDent">Last dent.</param>
/// <param name="FirstEnd">First end, from 1 at the left.</param>
/// <param name="LastEnd">Last end.</param>
/// <param name="EndsInDents">How many ends a dent takes, in words.</param>
internal sealed record SleyRun(int FirstDent, int LastDent, int FirstEnd, int LastEnd, string EndsInDents)
{
    /// <summary>The dents across the whole warp; each floating selvedge has a dent of its own.</summary>
    /// <param name="ends">Ends of the warp, floating selvedges included; more than <paramref name="floating"/>.</param>
    /// <param name="floating">Floating selvedges: 0 or 2.</param>
    /// <param name="sley">Ends in each dent, over and over.</param>
    public static ImmutableArray<SleyRun> Across(int ends, int floating, Sley sley)
    {
        var runs = ImmutableArray.CreateBuilder<SleyRun>();
        if (floating > 0) runs.Add(new SleyRun(1, 1, 1, 1, "1, the floating selvedge"));
        int inner = ends - floating;
        int rounds = inner / sley.Ends;
        if (rounds > 0)
        {
            string order = sley.IsEven
                ? Words.Count(sley.EndsPerDent[0])
                : $"{Words.List(sley.EndsPerDent.Select(Words.Count))} in turn, {Words.Times(rounds)}";
            Add(rounds * sley.Dents, rounds * sley.Ends, order);
        }

        AddRest(inner - rounds * sley.Ends);
        if (floating > 0) Add(1, 1, "1, the floating selvedge");
        return runs.ToImmutable();

        // Ends left of a last turn: dent by dent, the last perhaps not full.
        void AddRest(int rest)
        {
            var last = new List<int>();
            for (int dent = 0; rest > 0; dent++)
            {
                last.Add(Math.Min(rest, sley[dent]));
                rest -= last[^1];
            }

            if (last.Count > 0) Add(last.Count, last.Sum(), Words.List(last.Select(Words.Count)));
        }

        void Add(int dents, int count, string order)
        {
            int dent = runs.Count == 0 ? 1 : runs[^1].LastDent + 1;
            int end = runs.Count == 0 ? 1 : runs[^1].LastEnd + 1;
            runs.Add(new SleyRun(dent, dent + dents - 1, end, end + count - 1, order));
        }
    }
}
