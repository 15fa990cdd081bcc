using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Crackle (jeans weave): short points on three shafts, so that no float passes over more than three ends.</summary>
public static class Crackle
{
    private const int LongestJoin = 3;

    /// <summary>Units of four on three shafts, joined by incidental ends.</summary>
    public static Rule Rule { get; } = new(
        "crackle",
        "units A 1232, B 2343, C 3414, D 4121; neighbouring ends differ by 1, any 4 ends use 3 shafts or more; to the next block one incidental end (the first of the block left), past a block two",
        Source.Published("teaching pages that quote two manuals of the weave"));

    /// <summary>Whether a threading keeps both laws of crackle, read round the repeat.</summary>
    /// <param name="threading">Shafts 1 to 4.</param>
    public static bool IsValid(IReadOnlyList<int> threading) =>
        NeighbouringPairs.KeepsParity(threading)
        && Enumerable.Range(0, threading.Count).All(i => Enumerable.Range(i, 4).Select(k => threading[k % threading.Count]).Distinct().Count() >= 3);

    /// <summary>The threading of a row of blocks, with the incidental ends they need.</summary>
    /// <param name="blocks">Blocks, 1 for A to 4 for D, with the units of each.</param>
    /// <param name="incidentals">0-based places of the incidental ends.</param>
    public static ImmutableArray<int> Threading(IReadOnlyList<BlockRun> blocks, out ImmutableArray<int> incidentals)
    {
        var threading = new List<int>();
        var added = ImmutableArray.CreateBuilder<int>();
        for (int b = 0; b < blocks.Count; b++)
        {
            int block = blocks[b].Block;
            for (int unit = 0; unit < blocks[b].Length; unit++) threading.AddRange(Unit(block));
            int next = blocks[(b + 1) % blocks.Count].Block;
            if (next == block) continue;
            foreach (int shaft in Join(block, next))
            {
                added.Add(threading.Count);
                threading.Add(shaft);
            }
        }

        incidentals = added.ToImmutable();
        return [.. threading];
    }

    /// <summary>One repeat with tabby.</summary>
    /// <param name="blocks">Blocks, 1 for A to 4 for D, with the units of each.</param>
    /// <param name="picks">Pattern picks for each unit, 1 to 16.</param>
    public static Weave Of(IReadOnlyList<BlockRun> blocks, int picks = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(picks, 1);
        ImmutableArray<int> threading = Threading(blocks, out ImmutableArray<int> incidentals);
        ShaftSet[] pattern = [.. blocks.SelectMany(b => Enumerable.Repeat(NeighbouringPairs.LiftOf(b.Block), b.Length * picks))];
        return NeighbouringPairs.WithTabby("crackle", Rule, threading, pattern).Noting(
            "No float passes over more than 3 ends.",
            incidentals.IsEmpty ? "No incidental ends." : $"Incidental ends at {string.Join(", ", incidentals.Select(i => i + 1))} of the repeat.",
            "Two wefts: ground in tabby 13 / 24, pattern between.");
    }

    private static int[] Unit(int block) => [block, DrawOrder.Wrap(block + 1, 4), DrawOrder.Wrap(block + 2, 4), DrawOrder.Wrap(block + 1, 4)];

    // The shortest row of incidentals that keeps both laws; among equals the one that runs on from the block's first shaft.
    private static int[] Join(int block, int next)
    {
        for (int length = 0; length <= LongestJoin; length++)
        {
            foreach (int[] join in Rows(block, length))
            {
                if (Holds([.. Unit(block), .. join, .. Unit(next)])) return join;
            }
        }

        throw new InputProblemException(new InputProblem($"Blocks {block} and {next} cannot be joined.", "blocks", "Use blocks A to D."));
    }

    private static IEnumerable<int[]> Rows(int block, int length) => length == 0
        ? [[]]
        : Rows(block, length - 1).SelectMany(_ => Enumerable.Range(0, 4), (row, step) => (int[])[.. row, DrawOrder.Wrap(block + step, 4)]);

    private static bool Holds(int[] ends) =>
        Enumerable.Range(0, ends.Length - 1).All(i => NeighbouringPairs.AreNext(ends[i], ends[i + 1]))
        && Enumerable.Range(0, ends.Length - 3).All(i => ends[i..(i + 4)].Distinct().Count() >= 3);
}
