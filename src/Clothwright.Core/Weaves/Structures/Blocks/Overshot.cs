using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Overshot: pattern weft floating over four blocks on a plain ground, with half-tones beside each float.</summary>
public static class Overshot
{
    /// <summary>Blocks on neighbouring shafts, woven as drawn in with tabby between.</summary>
    public static Rule Rule { get; } = new(
        "overshot",
        "blocks A 12, B 23, C 34, D 41, neighbours share an end, odd and even shafts by turns; pattern lift = the two shafts not in the block, picks = ends in the block − 1; tabby 13 / 24 after each",
        Source.FromMemoryOf("20th-century handweaving manuals, which differ in detail on rose fashion"));

    /// <summary>The threading of a row of blocks.</summary>
    /// <param name="blocks">Blocks, 1 for A to 4 for D, with the ends of each (shared ends counted in both), 2 or more.</param>
    /// <returns>Shafts 1 to 4; odd and even by turns, round the repeat too.</returns>
    public static ImmutableArray<int> Threading(IReadOnlyList<BlockRun> blocks)
    {
        if (blocks.Count == 0) throw new ArgumentException("Overshot has at least one block.", nameof(blocks));
        var threading = new List<int>();
        foreach (BlockRun run in blocks)
        {
            int low = run.Block;
            int high = DrawOrder.Wrap(low + 1, 4);
            if (threading.Count == 0) threading.Add(low);
            else if (!NeighbouringPairs.IsIn(low, threading[^1])) threading.Add(NeighbouringPairs.AreNext(threading[^1], low) ? low : high);
            for (int i = 1; i < run.Length; i++) threading.Add(threading[^1] == low ? high : low);
        }

        // Round the repeat the last block shares its last end with the first block's first.
        if (threading.Count > 2 && threading[^1] == threading[0]) threading.RemoveAt(threading.Count - 1);
        if (!NeighbouringPairs.AreNext(threading[^1], threading[0]))
        {
            int last = blocks[^1].Block;
            threading.Add(threading[^1] == last ? DrawOrder.Wrap(last + 1, 4) : last);
        }

        return [.. threading];
    }

    /// <summary>One repeat, woven as drawn in.</summary>
    /// <param name="blocks">Blocks, 1 for A to 4 for D, with the ends of each (shared ends counted in both), 2 or more.</param>
    /// <param name="fashion">Order of the blocks in the weft.</param>
    /// <exception cref="InputProblemException">There is one block only, so that a float never ends.</exception>
    public static Weave Of(IReadOnlyList<BlockRun> blocks, OvershotFashion fashion = OvershotFashion.Star)
    {
        ImmutableArray<int> threading = Threading(blocks);
        if (NeighbouringPairs.LongestFloat(threading) is null)
        {
            throw new InputProblemException(new InputProblem(
                $"With block {blocks[0].Letter} alone the pattern float never ends.", "blocks", "Bring in another block, for example ABCD."));
        }

        string name = fashion == OvershotFashion.Rose ? "overshot, rose fashion" : "overshot, as drawn in";
        Weave weave = AsDrawnIn(name, Rule, threading, fashion);
        bool jumps = Enumerable.Range(0, blocks.Count).Any(i => Math.Abs(blocks[i].Block - blocks[(i + 1) % blocks.Count].Block) == 2);
        return jumps ? weave.Noting("Between opposite blocks (A and C, B and D) one incidental pair of the block between keeps odd and even by turns.") : weave;
    }

    /// <summary>Pattern picks in the order of a threading: one for each step from end to end, in the block of both.</summary>
    internal static Weave AsDrawnIn(string name, Rule rule, IReadOnlyList<int> threading, OvershotFashion fashion)
    {
        ShaftSet[] pattern =
        [
            .. Enumerable.Range(0, threading.Count)
                .Select(i => NeighbouringPairs.BlockOf(threading[i], threading[(i + 1) % threading.Count]))
                .Select(b => fashion == OvershotFashion.Rose ? ((b - 1) ^ 1) + 1 : b)
                .Select(NeighbouringPairs.LiftOf),
        ];
        string longest = NeighbouringPairs.LongestFloat(threading) is int ends
            ? $"The longest pattern float passes over {ends} ends."
            : "All ends lie on two neighbouring shafts: one pattern float never ends. Bring a third shaft in.";
        return NeighbouringPairs.WithTabby(name, rule, threading, pattern)
            .Noting("Two wefts: ground like the warp in tabby 13 / 24, pattern thicker and softer between.", longest);
    }
}
