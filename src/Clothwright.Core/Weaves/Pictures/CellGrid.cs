namespace Clothwright.Core.Weaves.Pictures;

/// <summary>The tones of all cells of a picture, under one division into cells.</summary>
internal sealed class CellGrid
{
    private readonly GreyPicture _picture;
    private readonly double[] _columns;
    private readonly double[] _rows;
    private readonly byte[] _tones;

    public CellGrid(GreyPicture picture, double[] columns, double[] rows)
    {
        _picture = picture;
        _columns = columns;
        _rows = rows;
        Columns = Math.Max(0, columns.Length - 1);
        Rows = Math.Max(0, rows.Length - 1);
        _tones = new byte[Columns * Rows];
        for (int row = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++) _tones[row * Columns + column] = Tone(column, row);
        }
    }

    public int Columns { get; }

    public int Rows { get; }

    public byte this[int column, int row] => _tones[row * Columns + column];

    public ReadOnlySpan<byte> Tones => _tones;

    /// <summary>
    /// Whether something is drawn nearly everywhere between neighbours that are both dark, or both light: grid lines.
    /// Lines of the dark tone show between light cells only. Where no neighbours are of one tone, as in plain weave, the
    /// margin beside the outermost cells tells.
    /// </summary>
    public bool HasLines()
    {
        bool shown = false;
        foreach (bool dark in (ReadOnlySpan<bool>)[true, false])
        {
            (int alike, int parted) = InnerNeighbours(dark);
            if (AreParted(alike, parted)) return true;
            shown |= alike > 0;
        }

        if (shown) return false;
        (int atEdge, int partedAtEdge) = EdgeNeighbours();
        return AreParted(atEdge, partedAtEdge);
    }

    private static bool AreParted(int alike, int parted) => alike > 0 && parted >= 0.9 * alike;

    private (int Alike, int Parted) InnerNeighbours(bool dark)
    {
        double threshold = (_picture.Darkest + _picture.Lightest) / 2.0;
        (int alike, int parted) = (0, 0);
        for (int row = 0; row < Rows; row++)
        {
            int y = Middle(_rows, row, _picture.Height);
            for (int column = 1; column < Columns; column++)
            {
                byte tone = this[column, row];
                if (tone < threshold != dark || Math.Abs(tone - this[column - 1, row]) >= _picture.Step) continue;
                alike++;
                if (IsParted(column, y, tone)) parted++;
            }
        }

        return (alike, parted);
    }

    // Outermost cells beside a margin of their own tone, looked at half a cell outside.
    private (int Alike, int Parted) EdgeNeighbours()
    {
        double half = (_columns[1] - _columns[0]) / 2;
        (int alike, int parted) = (0, 0);
        for (int row = 0; row < Rows; row++)
        {
            int y = Middle(_rows, row, _picture.Height);
            foreach ((int boundary, int column, double outside) in (ReadOnlySpan<(int, int, double)>)[(0, 0, _columns[0] - half), (Columns, Columns - 1, _columns[Columns] + half)])
            {
                int x = (int)Math.Floor(outside);
                byte tone = this[column, row];
                if (x < 0 || x >= _picture.Width || Math.Abs(tone - _picture[x, y]) >= _picture.Step) continue;
                alike++;
                if (IsParted(boundary, y, tone)) parted++;
            }
        }

        return (alike, parted);
    }

    /// <summary>The same cells without those outside the grid lines.</summary>
    /// <param name="columnChanges">Changes of the picture from column to column.</param>
    /// <param name="rowChanges">Changes from row to row.</param>
    public CellGrid Trimmed(double[] columnChanges, double[] rowChanges) =>
        new(_picture, Inside(_columns, columnChanges), Inside(_rows, rowChanges));

    private static double[] Inside(double[] boundaries, double[] changes)
    {
        if (boundaries.Length < 2) return boundaries;
        double reach = 0.3 * (boundaries[1] - boundaries[0]);
        int first = Array.FindIndex(changes, change => change > 0);
        int last = Array.FindLastIndex(changes, change => change > 0);
        return [.. boundaries.Where(b => b >= first - reach && b <= last + reach)];
    }

    private static int Middle(double[] boundaries, int cell, int side) =>
        Math.Clamp((int)((boundaries[cell] + boundaries[cell + 1]) / 2), 0, side - 1);

    private bool IsParted(int column, int y, byte tone)
    {
        double reach = 0.3 * (_columns[1] - _columns[0]);
        int first = Math.Max(0, (int)Math.Floor(_columns[column] - reach));
        int last = Math.Min(_picture.Width - 1, (int)Math.Ceiling(_columns[column] + reach));
        for (int x = first; x <= last; x++)
        {
            if (Math.Abs(_picture[x, y] - tone) >= _picture.Step) return true;
        }

        return false;
    }

    // The middle one of the tones in the inner half of a cell: lines, blur and specks at its edge do not count.
    private byte Tone(int column, int row)
    {
        (int left, int right) = Inner(_columns, column, _picture.Width);
        (int top, int bottom) = Inner(_rows, row, _picture.Height);
        Span<int> counts = stackalloc int[256];
        counts.Clear();
        for (int y = top; y <= bottom; y++)
        {
            for (int x = left; x <= right; x++) counts[_picture[x, y]]++;
        }

        int half = ((right - left + 1) * (bottom - top + 1) + 1) / 2;
        int tone = 0;
        for (int seen = counts[0]; seen < half; seen += counts[tone]) tone++;
        return (byte)tone;
    }

    private static (int First, int Last) Inner(double[] boundaries, int cell, int side)
    {
        double size = boundaries[cell + 1] - boundaries[cell];
        int first = (int)Math.Ceiling(boundaries[cell] + 0.25 * size - 0.5);
        int last = (int)Math.Floor(boundaries[cell + 1] - 0.25 * size - 0.5);
        int middle = Middle(boundaries, cell, side);
        return first > last ? (middle, middle) : (Math.Clamp(first, 0, side - 1), Math.Clamp(last, 0, side - 1));
    }
}
