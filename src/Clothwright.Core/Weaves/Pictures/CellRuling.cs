namespace Clothwright.Core.Weaves.Pictures;

/// <summary>Where the boundaries between cells lie along one side of a picture: at <c>Offset + k · Size</c>.</summary>
/// <param name="Offset">A boundary, in pixels, 0 up to <paramref name="Size"/>.</param>
/// <param name="Size">Size of a cell, in pixels.</param>
internal readonly record struct CellRuling(double Offset, double Size)
{
    // Changes of tone may lie less than this far from a boundary, as a share of the cell: half a grid line, the blur of scaling.
    // At the reach itself, changes a quarter before and a quarter behind would pass cells of half the size for these.
    private const double Reach = 0.25;
    private const double Rounding = 1e-9;

    // This share of all changes may lie elsewhere: specks, noise.
    private const double Strays = 0.02;

    /// <summary>The largest cells that divide the side evenly and have every change of tone at a boundary; null if nothing changes.</summary>
    public static CellRuling? Even(double[] changes)
    {
        int side = changes.Length - 1;
        if (changes.Sum() == 0) return null;
        for (int cells = 2; cells <= side; cells++)
        {
            var ruling = new CellRuling(0, (double)side / cells);
            if (ruling.Holds(changes)) return ruling;
        }

        return new CellRuling(0, 1);
    }

    /// <summary>The largest cells, wherever they begin, that have every change at a boundary and at least three boundaries with changes; null if there are none above three pixels.</summary>
    public static CellRuling? Free(double[] changes)
    {
        const double Smallest = 3;
        int side = changes.Length - 1;
        double all = changes.Sum();
        if (all == 0) return null;

        // An eighth of a turn over the whole side is fine enough for a boundary never to drift out of reach.
        for (int eighths = 16; side * 8.0 / eighths >= Smallest; eighths++)
        {
            double size = side * 8.0 / eighths;
            (double sine, double cosine) = (0, 0);
            for (int x = 1; x < side; x++)
            {
                if (changes[x] == 0) continue;
                (double s, double c) = Math.SinCos(2 * Math.PI * x / size);
                sine += s * changes[x];
                cosine += c * changes[x];
            }

            double offset = Math.Atan2(sine, cosine) / (2 * Math.PI) * size;
            CellRuling ruling = new CellRuling(offset < 0 ? offset + size : offset, size).Settled(changes);
            if (ruling.Holds(changes) && ruling.BoundariesIn(changes) >= 3) return ruling;
        }

        return null;
    }

    /// <summary>The boundaries, first to last, of cells that lie at least three fifths inside the side.</summary>
    /// <param name="side">Length of the side in pixels.</param>
    public double[] Boundaries(int side)
    {
        int first = (int)Math.Ceiling((-Offset - 0.4 * Size) / Size);
        int last = (int)Math.Floor((side - Offset + 0.4 * Size) / Size);
        double[] boundaries = new double[Math.Max(0, last - first + 1)];
        for (int i = 0; i < boundaries.Length; i++) boundaries[i] = Offset + (first + i) * Size;
        return boundaries;
    }

    private bool Holds(double[] changes)
    {
        double strays = 0;
        double allowed = Strays * changes.Sum();
        for (int x = 1; x < changes.Length - 1; x++)
        {
            if (changes[x] == 0) continue;
            double turns = (x - Offset) / Size;
            if (Math.Abs(turns - Math.Round(turns)) > Reach - Rounding && (strays += changes[x]) > allowed) return false;
        }

        return true;
    }

    private int BoundariesIn(double[] changes)
    {
        var met = new HashSet<int>();
        for (int x = 1; x < changes.Length - 1; x++)
        {
            if (changes[x] > 0) met.Add((int)Math.Round((x - Offset) / Size));
        }

        return met.Count;
    }

    // Least squares through the changes, each taken to belong to its nearest boundary.
    private CellRuling Settled(double[] changes)
    {
        (double w, double k, double x2, double kk, double kx) = (0, 0, 0, 0, 0);
        for (int x = 1; x < changes.Length - 1; x++)
        {
            double weight = changes[x];
            double number = Math.Round((x - Offset) / Size);
            w += weight;
            k += weight * number;
            x2 += weight * x;
            kk += weight * number * number;
            kx += weight * number * x;
        }

        double spread = w * kk - k * k;
        if (spread <= 0) return this;
        double size = (w * kx - k * x2) / spread;
        return size > 0.9 * Size && size < 1.1 * Size ? new CellRuling((x2 - size * k) / w, size) : this;
    }
}
