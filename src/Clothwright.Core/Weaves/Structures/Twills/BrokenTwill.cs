using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Broken twill: the second half of each run is drawn backwards, so no line forms (1 2 4 3; with 1/3 or 3/1 also called false satin).</summary>
public static class BrokenTwill
{
    /// <summary>Straight order with the second half reversed.</summary>
    public static Rule Rule { get; } = new("broken twill", "straight order with the second half of each repeat reversed: 1 2 4 3; tie-up and treadling of the straight twill", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="figures">Ends up and down, on 4 shafts or more.</param>
    /// <exception cref="InputProblemException">There are fewer than 4 shafts, so that nothing can be broken.</exception>
    public static Weave Of(TwillBase figures)
    {
        int n = figures.Shafts;
        if (n < 4)
        {
            throw new InputProblemException(new InputProblem(
                $"A {figures} twill has {n} shafts, too few to break.", "base", "Take figures that sum to 4 or more, for example 1/3 or 2/2."));
        }

        int half = (n + 1) / 2;
        int[] threading = [.. Enumerable.Range(1, half), .. Enumerable.Range(half + 1, n - half).Reverse()];
        return Weave.FromTreadles($"broken {figures} twill", Rule, threading, figures.TieUp, DrawOrder.Straight(n));
    }
}
