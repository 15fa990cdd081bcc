using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Network drafting: a curve is drawn on many shafts, yet each thread stays on a net that keeps the weave of a small threading.</summary>
public static class NetworkThreading
{
    /// <summary>The threading along a line.</summary>
    /// <remarks>
    /// In column j shaft s (from 0) is allowed if s ≡ initial[j mod k] (mod r); the thread takes the lowest allowed shaft not below the line, counted round.
    /// Idea from a 1994 book on the subject, from memory.
    /// </remarks>
    /// <param name="initial">The small threading, one row a column, rows from 1.</param>
    /// <param name="shafts">Shafts, a multiple of the initial's rows, up to 64.</param>
    /// <param name="line">Height of the line in each column, from 1; may pass beyond the last shaft.</param>
    /// <returns>The shaft of each end, from 1.</returns>
    /// <exception cref="InputProblemException">Initial, shafts or line do not fit each other.</exception>
    public static ImmutableArray<int> Along(IReadOnlyList<int> initial, int shafts, IReadOnlyList<int> line)
    {
        if (initial.Count == 0 || initial.Any(r => r is < 1 or > ShaftSet.Highest))
        {
            throw new InputProblemException(new InputProblem(
                $"\"{string.Join(' ', initial)}\" is no initial.", "initial", "Give the rows of a small threading from 1, for example 1 2 3 4."));
        }

        int rows = initial.Max();
        if (shafts is < 1 or > ShaftSet.Highest || shafts % rows != 0)
        {
            throw new InputProblemException(new InputProblem(
                $"An initial of {rows} rows makes no net on {shafts} shafts.", "shafts", $"Give a multiple of {rows} up to {ShaftSet.Highest}, for example {Math.Min(2 * rows, ShaftSet.Highest / rows * rows)}."));
        }

        if (line.Count is 0 or > DraftLimits.Ends || line.Any(l => l is < 1 or > 1000))
        {
            throw new InputProblemException(new InputProblem(
                "The line has no columns, too many, or a height that is out of range.", "line", "Give heights from 1 to 1000, one an end, for example 1 1 2 3 5 6 7 8 8 7 6 5 3 2 1 1."));
        }

        return [.. line.Select((height, column) => Lowest(height - 1, initial[column % initial.Count] - 1, rows) % shafts + 1)];
    }

    private static int Lowest(int height, int row, int rows) => height + (((row - height) % rows) + rows) % rows;
}
