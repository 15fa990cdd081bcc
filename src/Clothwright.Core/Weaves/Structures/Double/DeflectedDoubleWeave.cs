using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Deflected double weave: two systems of threads, each plain within itself, floating where they cross, so that washing bends them round each other.</summary>
public static class DeflectedDoubleWeave
{
    /// <summary>Two plain systems in groups; one must not lie wholly above the other.</summary>
    public static Rule Rule { get; } = new(
        "deflected double weave",
        "groups of both systems by turns, each plain within itself; holds if both wefts pass over the other's ends, or both under; one over and one under leaves two cloths",
        Source.Derivation);

    /// <summary>One repeat: a group of each system both ways.</summary>
    /// <param name="group">Threads in a group, an even number from 2 to 12.</param>
    /// <param name="firstWeftOver">Whether the first system's weft passes over the second's ends.</param>
    /// <param name="secondWeftOver">Whether the second system's weft passes over the first's ends.</param>
    /// <exception cref="InputProblemException">The group is odd or out of range.</exception>
    public static Weave Of(int group = 4, bool firstWeftOver = true, bool secondWeftOver = true)
    {
        if (group is < 2 or > 12 || group % 2 != 0)
        {
            throw new InputProblemException(new InputProblem($"Groups of {group} threads cannot be deflected.", "group", "Give an even number from 2 to 12, for example 4."));
        }

        ShaftSet first = firstWeftOver ? ShaftSet.None : ShaftSet.Of(3, 4);
        ShaftSet second = secondWeftOver ? ShaftSet.None : ShaftSet.Of(1, 2);
        int[] order = [.. Enumerable.Range(0, group).Select(i => i % 2 + 1), .. Enumerable.Range(0, group).Select(i => i % 2 + 3)];
        Weave weave = Weave.FromTreadles(
            "deflected double weave", Rule, order, [ShaftSet.Of(1) | first, ShaftSet.Of(2) | first, ShaftSet.Of(3) | second, ShaftSet.Of(4) | second], order);
        int[] yarns = [.. order.Select(s => s <= 2 ? 0 : 1)];
        bool holds = firstWeftOver == secondWeftOver;
        return weave with
        {
            Draft = weave.Draft with { WarpOrder = ThreadOrder.Of(yarns), WeftOrder = ThreadOrder.Of(yarns) },
            YarnNames = ["first system", "second system"],
            Layers = holds ? 1 : 2,
            Notes = holds
                ? [$"Floats of {group + 1}; two shuttles, one a system.", "Open sett and a good wash: only then do the threads bend round each other."]
                : ["One system lies wholly above the other: two cloths, not one. Let both wefts pass over, or both under."],
        };
    }
}
