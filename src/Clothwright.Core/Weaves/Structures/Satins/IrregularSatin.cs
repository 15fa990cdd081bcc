using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Irregular satin: binding points scattered by hand where no even step exists, above all on 6 ends.</summary>
public static class IrregularSatin
{
    /// <summary>Each end binds once, no two successive picks on neighbouring ends.</summary>
    public static Rule Rule { get; } = new(
        "irregular satin", "pick p binds the end of the order; each end once; successive picks, also from the last to the first, never on neighbouring ends", Source.Derivation);

    /// <summary>One repeat in a chosen order.</summary>
    /// <param name="order">The end that binds on each pick, from 1, each once; 5 to 64 of them.</param>
    /// <param name="face">Which threads cover the face.</param>
    /// <exception cref="InputProblemException">The order leaves an end out, or binds neighbouring ends on successive picks.</exception>
    public static Weave Of(IReadOnlyList<int> order, SatinFace face = SatinFace.Warp)
    {
        int n = order.Count;
        string written = string.Join(' ', order);
        if (n is < 5 or > ShaftSet.Highest || !order.Order().SequenceEqual(Enumerable.Range(1, n)))
        {
            throw new InputProblemException(new InputProblem(
                $"The order {written} does not bind each end once.", "order", "Name each end once, 5 to 64 of them, for example 1 3 5 2 6 4."));
        }

        for (int p = 0; p < n; p++)
        {
            if (AreNeighbours(order[p], order[(p + 1) % n], n))
            {
                throw new InputProblemException(new InputProblem(
                    $"In the order {written} ends {order[p]} and {order[(p + 1) % n]} are neighbours and bind on successive picks.",
                    "order",
                    "Keep successive binding points apart, for example 1 3 5 2 6 4."));
            }
        }

        return Satin.FromOrder($"{n}-end irregular satin, order {written}", Rule, order, face);
    }

    /// <summary>One repeat in the first order there is.</summary>
    /// <param name="ends">Ends in the repeat, 5 to 64.</param>
    /// <param name="face">Which threads cover the face.</param>
    public static Weave On(int ends, SatinFace face = SatinFace.Warp) => ends is >= 5 and <= ShaftSet.Highest
        ? Of(Orders(ends).First(), face)
        : throw new InputProblemException(new InputProblem($"There is no irregular satin on {ends} ends.", "ends", "Give 5 to 64 ends, for example 6."));

    /// <summary>Every order that starts on end 1, one after the other; many beyond 10 ends.</summary>
    /// <param name="ends">Ends in the repeat, 5 to 64.</param>
    public static IEnumerable<ImmutableArray<int>> Orders(int ends) => Continued([1], ends);

    private static IEnumerable<ImmutableArray<int>> Continued(ImmutableArray<int> start, int ends)
    {
        if (start.Length == ends)
        {
            if (!AreNeighbours(start[^1], start[0], ends)) yield return start;
            yield break;
        }

        for (int next = 1; next <= ends; next++)
        {
            if (start.Contains(next) || AreNeighbours(start[^1], next, ends)) continue;
            foreach (ImmutableArray<int> order in Continued(start.Add(next), ends)) yield return order;
        }
    }

    private static bool AreNeighbours(int a, int b, int ends) => Math.Abs(a - b) is int gap && (gap == 1 || gap == ends - 1);
}
