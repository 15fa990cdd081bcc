using Clothwright.Core.Weaves;

namespace Clothwright.Core.Cloths.Look.Places;

/// <summary>One side of a cloth place by place: which of the threads that share a place is seen, and whether warp or weft is on top.</summary>
/// <remarks>A cell: bit 0 warp on top, bits 1 and 2 which end of its place, bits 3 and 4 which pick.</remarks>
public sealed class FaceCells
{
    private const int Window = 2;
    private readonly byte[]? _cells;
    private readonly Drawdown _weave;
    private readonly bool _back;

    private FaceCells(Drawdown weave, bool back, int columns, int rows, byte[]? cells)
    {
        _weave = weave;
        _back = back;
        _cells = cells;
        Columns = columns;
        Rows = rows;
    }

    /// <summary>Places across after which the cells repeat.</summary>
    public int Columns { get; }

    /// <summary>Places along after which the cells repeat.</summary>
    public int Rows { get; }

    /// <summary>The cells row by row; null where every thread has a place of its own, and the packed drawdown tells all.</summary>
    public byte[]? Packed => _cells;

    /// <summary>Whether to read the drawdown the other way.</summary>
    public bool IsBack => _back;

    /// <summary>A cell.</summary>
    /// <param name="column">Place across, any.</param>
    /// <param name="row">Place along, any.</param>
    public int this[int column, int row]
    {
        get
        {
            int c = column % Columns;
            int r = row % Rows;
            if (c < 0) c += Columns;
            if (r < 0) r += Rows;
            if (_cells is not null) return _cells[r * Columns + c];
            bool warp = ((_weave.Row(r)[c >> 6] >> (c & 63)) & 1) != 0;
            return warp != _back ? 1 : 0;
        }
    }

    /// <summary>The cells of a side.</summary>
    /// <param name="look">The cloth.</param>
    /// <param name="face">The side.</param>
    public static FaceCells Of(LookDescription look, Face face)
    {
        ArgumentNullException.ThrowIfNull(look);
        bool back = face == Face.Back;
        Drawdown weave = look.Weave;
        if (look.SharedEnds.IsDefaultOrEmpty && look.SharedPicks.IsDefaultOrEmpty) return new FaceCells(weave, back, weave.Ends, weave.Picks, null);
        int[][] columns = Stacks(look.SharedEnds, weave.Ends);
        int[][] rows = Stacks(look.SharedPicks, weave.Picks);
        var cells = new byte[columns.Length * rows.Length];
        for (int r = 0; r < rows.Length; r++)
        {
            for (int c = 0; c < columns.Length; c++)
            {
                int end = Topmost(columns[c], rows, r, (e, p) => Up(p, e));
                int pick = Topmost(rows[r], columns, c, (p, e) => !Up(p, e));
                bool warp = Up(rows[r][pick], columns[c][end]);
                cells[r * columns.Length + c] = (byte)((warp ? 1 : 0) | end << 1 | pick << 3);
            }
        }

        return new FaceCells(weave, back, columns.Length, rows.Length, cells);

        bool Up(int pick, int end) => weave[pick % weave.Picks, end % weave.Ends] != back;
    }

    // The thread that lies over most of the threads crossing here; between equals the one that lies over more of those around; then the later, which floats.
    private static int Topmost(int[] stack, int[][] crossing, int here, Func<int, int, bool> over)
    {
        if (stack.Length == 1) return 0;
        int best = 0;
        (int Here, int Around) bestOver = (-1, -1);
        for (int i = 0; i < stack.Length; i++)
        {
            int own = crossing[here].Count(t => over(stack[i], t));
            int around = 0;
            for (int d = -Window; d <= Window; d++)
            {
                foreach (int thread in crossing[(here + d + Window * crossing.Length) % crossing.Length]) around += over(stack[i], thread) ? 1 : 0;
            }

            (int Own, int Around) score = own == 0 ? (0, -i) : (own, around);
            if (score.CompareTo(bestOver) >= 0) (best, bestOver) = (i, score);
        }

        return best;
    }

    // Threads at each place, over as many threads as weave and sharing take to begin again together.
    private static int[][] Stacks(System.Collections.Immutable.ImmutableArray<bool> shared, int threads)
    {
        int round = shared.IsDefaultOrEmpty ? threads : (int)CommonRepeat.Of(threads, shared.Length);
        var stacks = new List<List<int>>();
        for (int thread = 0; thread < round; thread++)
        {
            if (ThreadPlaces.IsShared(shared, thread)) stacks[^1].Add(thread);
            else stacks.Add([thread]);
        }

        return [.. stacks.Select(s => s.ToArray())];
    }
}
