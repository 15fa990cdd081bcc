using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Herringbone with a clean break (dornik): a run up, then a run down that starts on the opposite shaft.</summary>
public static class Herringbone
{
    /// <summary>Threads on either side of the break oppose each other, so no float grows there.</summary>
    public static Rule Rule { get; } = new(
        "herringbone", "a run up, then a run down started on the opposite shaft (k + n/2): 1 2 3 4 2 1 4 3; tie-up and treadling of the straight twill", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="figures">Ends up and down, on an even number of shafts; half-and-half figures (2/2, 3/3) cut cleanly.</param>
    /// <param name="runs">Runs of all shafts on each side, 1 to 16.</param>
    /// <exception cref="InputProblemException">The number of shafts is odd, or the runs are out of range.</exception>
    public static Weave Of(TwillBase figures, int runs = 1)
    {
        int n = figures.Shafts;
        if (n % 2 != 0)
        {
            throw new InputProblemException(new InputProblem(
                $"A {figures} twill has {n} shafts, so no shaft is opposite another.", "base", "Take figures that sum to an even number, for example 2/2."));
        }

        if (runs is < 1 or > 16)
        {
            throw new InputProblemException(new InputProblem($"{runs} runs on each side cannot be drawn.", "runs", "Give 1 to 16 runs."));
        }

        int side = runs * n;
        int[] threading =
        [
            .. Enumerable.Range(1, side).Select(i => DrawOrder.Wrap(i, n)),
            .. Enumerable.Range(0, side).Select(i => DrawOrder.Wrap(n / 2 - i, n)),
        ];
        Weave weave = Weave.FromTreadles($"{figures} herringbone", Rule, threading, figures.TieUp, DrawOrder.Straight(n));
        return weave.Noting(
            figures.IsHalfAndHalf
                ? $"The break is clean: no float is longer than {figures.LongestFloat}."
                : $"{figures} is not half up and half down, so threads do not oppose at the break and the cut is soft.",
            "There is no tabby on this threading.");
    }
}
