using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Advancing twill: short runs (or points), each starting a little further on than the one before.</summary>
public static class AdvancingTwill
{
    /// <summary>Runs of r threads from a, then a + g, a + 2g … round the shafts.</summary>
    public static Rule Rule { get; } = new(
        "advancing twill", "runs of r ends starting on shaft a, then a + g, round the s shafts; closes after s ÷ gcd(g, s) runs", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="figures">Ends up and down; their sum is the number of shafts.</param>
    /// <param name="run">Ends in a run, 2 to 64.</param>
    /// <param name="advance">Shafts by which each run starts further on, 1 or more and below the number of shafts.</param>
    /// <param name="pointed">Each run a point (1 2 3 2 1) instead of a line.</param>
    /// <param name="asDrawnIn">Treadled in the order of the threading, instead of straight.</param>
    /// <exception cref="InputProblemException">Run or advance does not fit the shafts.</exception>
    public static Weave Of(TwillBase figures, int run = 4, int advance = 1, bool pointed = false, bool asDrawnIn = false)
    {
        int s = figures.Shafts;
        if (run is < 2 or > ShaftSet.Highest)
        {
            throw new InputProblemException(new InputProblem($"A run of {run} ends does not advance.", "run", "Give 2 to 64 ends, for example 4."));
        }

        if (advance < 1 || advance >= s)
        {
            throw new InputProblemException(new InputProblem(
                $"An advance of {advance} on {s} shafts leads nowhere.", "advance", $"Give 1 to {s - 1}, for example 1."));
        }

        int least = Divisors.Greatest(advance, s);
        if (run < least)
        {
            throw new InputProblemException(new InputProblem(
                $"Runs of {run} with an advance of {advance} leave some of the {s} shafts without ends.", "run", $"Give a run of {least} or more, or another advance."));
        }

        int[] step = pointed ? [.. Enumerable.Range(0, run), .. Enumerable.Range(0, run - 1).Reverse()] : [.. Enumerable.Range(0, run)];
        int[] order = [.. Enumerable.Range(0, s / least).SelectMany(r => step.Select(i => DrawOrder.Wrap(1 + r * advance + i, s)))];
        string name = pointed ? $"advancing points, {figures} twill" : $"advancing {figures} twill";
        return Weave.FromTreadles(name, Rule, order, figures.TieUp, asDrawnIn ? order : DrawOrder.Straight(s));
    }
}
