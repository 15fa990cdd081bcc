using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>A profile draft: which block stands in each unit of the warp, and which blocks show on each line of the weft.</summary>
/// <param name="Ends">Block of each unit across the warp, 1 for A.</param>
/// <param name="Picks">Blocks that show on each line; may be none or all.</param>
public sealed record Profile(ImmutableArray<int> Ends, ImmutableArray<ShaftSet> Picks)
{
    /// <summary>The most units across and lines up.</summary>
    public const int MostUnits = 2000;

    private const int MostBlocks = 26;

    /// <summary>Different blocks.</summary>
    public int Blocks => Math.Max(Ends.Max(), Picks.Max(p => p.Max));

    /// <summary>Whether a unit shows on a line.</summary>
    /// <param name="pick">0-based line.</param>
    /// <param name="end">0-based unit.</param>
    public bool Shows(int pick, int end) => Picks[pick].Contains(Ends[end]);

    /// <summary>The profile that a small draft draws: each shaft a block, each pick a line that shows the blocks it lifts.</summary>
    /// <param name="draft">A draft with each end on one shaft, 26 shafts in use at most; warp on top where a block shows.</param>
    public static Parsed<Profile> Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        int odd = draft.Threading.ToList().FindIndex(e => e.Count != 1);
        if (odd >= 0)
        {
            return new InputProblem($"Unit {odd + 1} of the profile stands on {draft.Threading[odd].Count} shafts.", $"threading, end {odd + 1}", "In a profile draft each end is one unit of one block: put it on one shaft.");
        }

        if (draft.Ends > MostUnits || draft.Picks > MostUnits)
        {
            return new InputProblem($"The profile has {draft.Ends} units by {draft.Picks} lines.", "profile", $"Keep to {MostUnits} both ways.");
        }

        // Blocks are lettered by first appearance.
        ShaftSet[] blocks = [.. draft.Threading.Distinct()];
        if (blocks.Length > MostBlocks) return new InputProblem($"The profile has {blocks.Length} blocks.", "profile", $"Keep to {MostBlocks}, A to Z.");
        return new Profile(
            [.. draft.Threading.Select(e => Array.IndexOf(blocks, e) + 1)],
            [.. Enumerable.Range(0, draft.Picks).Select(p => ShaftSet.Of([.. Enumerable.Range(1, blocks.Length).Where(b => draft.Lift(p).Overlaps(blocks[b - 1]) == draft.RisingShed)]))]);
    }

    /// <summary>Blocks across by letters, as <see cref="Parse"/> reads them.</summary>
    public string BlocksText => string.Concat(Ends.Select(b => Letter(b)));

    /// <summary>Blocks that show, line by line, as <see cref="Parse"/> reads them.</summary>
    public string ShownText => string.Join(' ', Picks.Select(p => p.Count == 0 ? "-" : string.Concat(p.Members().Select(Letter))));

    /// <summary>Reads a profile.</summary>
    /// <param name="blocks">Blocks across, for example <c>ABBA</c> or <c>A2 B3</c>.</param>
    /// <param name="shown">Blocks that show, line by line with blanks between, <c>-</c> for none, for example <c>A B AB -</c>; empty to weave as drawn in.</param>
    /// <param name="most">The most different blocks, 1 to 26.</param>
    public static Parsed<Profile> Parse(string blocks, string shown = "", int most = MostBlocks)
    {
        Parsed<ImmutableArray<BlockRun>> runs = BlockRun.Parse(blocks, most);
        if (!runs.TryGet(out ImmutableArray<BlockRun> across)) return runs.Problem!;
        if (across.Sum(r => r.Length) > MostUnits)
        {
            return new InputProblem($"The profile has {across.Sum(r => r.Length)} units.", "blocks", $"Keep to {MostUnits}.") { Text = blocks, Position = 0 };
        }

        ImmutableArray<int> ends = [.. across.SelectMany(r => Enumerable.Repeat(r.Block, r.Length))];
        if (string.IsNullOrWhiteSpace(shown)) return new Profile(ends, [.. ends.Select(b => ShaftSet.Of(b))]);
        var picks = ImmutableArray.CreateBuilder<ShaftSet>();
        foreach (string line in shown.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
        {
            if (picks.Count == MostUnits || !(line == "-" || line.All(c => char.ToUpperInvariant(c) >= 'A' && char.ToUpperInvariant(c) < 'A' + most)))
            {
                return new InputProblem($"\"{line}\" does not name the blocks that show on a line.", "shown", "Write letters line by line with blanks between, - for none, for example A B AB -.")
                { Text = shown, Position = shown.IndexOf(line, StringComparison.Ordinal) };
            }

            picks.Add(line == "-" ? ShaftSet.None : ShaftSet.Of([.. line.Select(c => char.ToUpperInvariant(c) - 'A' + 1)]));
        }

        return new Profile(ends, picks.ToImmutable());
    }

    private static char Letter(int block) => (char)('A' + block - 1);
}
