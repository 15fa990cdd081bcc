using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Monk's belt: two blocks on opposite pairs of shafts, pattern weft floating over one or the other.</summary>
public static class MonksBelt
{
    /// <summary>Blocks on opposites with tabby between.</summary>
    public static Rule Rule { get; } = new(
        "monk's belt", "blocks (1 2)… and (3 4)… by turns; pattern lift 34 floats over A, 12 over B; tabby 13 / 24 after each pattern pick; float = ends in the block", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="ends">Ends in block A, B, A, B …, each an even number from 2 to 200.</param>
    /// <param name="picks">Pattern picks for each block, 1 to 64.</param>
    /// <exception cref="InputProblemException">A block is odd or out of range.</exception>
    public static Weave Of(IReadOnlyList<int> ends, int picks = 2)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(picks, 1);
        if (ends.Count is 0 or > 200 || ends.Any(e => e is < 2 or > 200 || e % 2 != 0))
        {
            throw new InputProblemException(new InputProblem(
                $"\"{string.Join(' ', ends)}\" are not the ends of the blocks.", "ends", "Give an even number from 2 to 200 for each block, for example 6 6."));
        }

        int[] sizes = ends.Count % 2 == 0 ? [.. ends] : [.. ends, .. ends];
        int[] threading = [.. sizes.SelectMany((size, block) => Enumerable.Range(0, size).Select(i => 1 + 2 * (block % 2) + i % 2))];
        ShaftSet[] pattern = [.. sizes.SelectMany((_, block) => Enumerable.Repeat(block % 2 == 0 ? ShaftSet.Of(3, 4) : ShaftSet.Of(1, 2), picks))];
        return NeighbouringPairs.WithTabby("monk's belt", Rule, threading, pattern)
            .Noting($"Pattern floats pass over up to {sizes.Max()} ends.", "Two wefts: ground in tabby 13 / 24, pattern between.");
    }
}
