using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>The order in which tie-down shafts are lifted on the pattern picks of a tied weave.</summary>
public static class TieOrder
{
    /// <summary>1 2: the tie-downs by turns (brick).</summary>
    public static ImmutableArray<int> Alternate { get; } = [1, 2];

    /// <summary>1 2 2 1: in pairs (O's).</summary>
    public static ImmutableArray<int> Paired { get; } = [1, 2, 2, 1];

    /// <summary>2 1 1 2: in pairs, begun with the other (X's).</summary>
    public static ImmutableArray<int> PairedOther { get; } = [2, 1, 1, 2];

    /// <summary>One tie-down only (columns).</summary>
    public static ImmutableArray<int> Columns { get; } = [1, 1];

    /// <summary>Checks an order typed by a person.</summary>
    /// <param name="order">Tie-down shafts.</param>
    /// <param name="ties">How many there are.</param>
    /// <exception cref="InputProblemException">It is empty, too long, or names a shaft that is no tie-down.</exception>
    internal static void Check(IReadOnlyList<int> order, int ties)
    {
        if (order.Count is 0 or > 64 || order.Any(t => t < 1 || t > ties))
        {
            throw new InputProblemException(new InputProblem(
                $"\"{string.Join(' ', order)}\" is not an order of {ties} tie-downs.", "tie", $"Name tie-downs from 1 to {ties}, for example 1 2 or 1 2 2 1."));
        }
    }
}
