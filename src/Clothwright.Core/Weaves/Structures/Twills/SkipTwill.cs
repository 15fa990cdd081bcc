using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Skip twill: draw some ends, miss some shafts, draw again, so that each restart opposes its neighbour.</summary>
public static class SkipTwill
{
    /// <summary>Draw d, miss k, round the shafts until it closes.</summary>
    public static Rule Rule { get; } = new(
        "skip twill",
        "draw d ends, miss k shafts, draw again; closes after n ÷ gcd(d + k, n) runs; with k = n/2 − 1 each restart opposes its neighbour",
        Source.Published("textile-school article on skip draws (draw 3, miss 2 on six shafts)"));

    /// <summary>One repeat.</summary>
    /// <param name="figures">Ends up and down; their sum is the number of shafts.</param>
    /// <param name="draw">Ends drawn in turn, 1 to 64.</param>
    /// <param name="miss">Shafts missed; half the shafts less one if left out.</param>
    /// <exception cref="InputProblemException">A number is out of range.</exception>
    public static Weave Of(TwillBase figures, int draw = 3, int? miss = null)
    {
        int n = figures.Shafts;
        int k = miss ?? Math.Max(1, n / 2 - 1);
        if (draw is < 1 or > ShaftSet.Highest || k is < 1 or > ShaftSet.Highest)
        {
            throw new InputProblemException(new InputProblem(
                $"Draw {draw}, miss {k} is no skip draw.", "draw", "Give 1 to 64 for each, for example draw 3, miss 2 on six shafts."));
        }

        int[] threading =
        [
            .. Enumerable.Range(0, n / Divisors.Greatest(draw + k, n))
                .SelectMany(r => Enumerable.Range(0, draw).Select(i => DrawOrder.Wrap(1 + r * (draw + k) + i, n))),
        ];
        return Weave.FromTreadles($"skip {figures} twill, draw {draw}, miss {k}", Rule, threading, figures.TieUp, DrawOrder.Straight(n));
    }
}
