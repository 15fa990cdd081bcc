using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>M's and O's: blocks of cords beside blocks of plain weave, exchanging places.</summary>
public static class MsAndOs
{
    /// <summary>Two threadings of the same four shafts: what is cord in one is plain in the other.</summary>
    public static Rule Rule { get; } = new(
        "M's and O's", "block A 1212 3434, B 1313 2424; lifts 12, 34 make cords in A and plain in B, lifts 13, 24 the reverse", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="blocks">Blocks, 1 for A and 2 for B, with the units of each.</param>
    /// <param name="cord">Ends in a cord, an even number from 4 to 12.</param>
    /// <exception cref="InputProblemException">The cord is odd or out of range.</exception>
    public static Weave Of(IReadOnlyList<BlockRun> blocks, int cord = 4)
    {
        if (cord is < 4 or > 12 || cord % 2 != 0)
        {
            throw new InputProblemException(new InputProblem($"A cord of {cord} ends cannot be woven.", "cord", "Give an even number from 4 to 12, for example 4."));
        }

        ImmutableArray<BlockRun> all = [.. blocks];
        int[] threading = [.. all.SelectMany(b => Enumerable.Repeat(b.Block == 1 ? Pair(1, 2, 3, 4, cord) : Pair(1, 3, 2, 4, cord), b.Length)).SelectMany(u => u)];
        ShaftSet[] lifts =
        [
            .. all.SelectMany(b => Enumerable.Range(0, 2 * cord * b.Length).Select(p => b.Block == 1
                ? (p % 2 == 0 ? ShaftSet.Of(1, 2) : ShaftSet.Of(3, 4))
                : (p % 2 == 0 ? ShaftSet.Of(1, 3) : ShaftSet.Of(2, 4)))),
        ];
        return Weave.FromLifts("M's and O's", Rule, threading, lifts).Noting($"Weft floats of {cord} on the cords; there is no true tabby.");
    }

    private static IEnumerable<int> Pair(int a, int b, int c, int d, int cord) =>
        Enumerable.Range(0, 2 * cord).Select(i => i < cord ? (i % 2 == 0 ? a : b) : (i % 2 == 0 ? c : d));
}
