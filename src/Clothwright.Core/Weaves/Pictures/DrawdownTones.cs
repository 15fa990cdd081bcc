using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Pictures;

/// <summary>Reads a drawdown from the tones of a picture in two tones, with or without grid lines, at any scale.</summary>
/// <remarks>
/// The size of a cell is found from where the tone changes: the largest cells that have every change at a boundary. Without grid
/// lines cells are taken as square where one side's cells are a whole number of times the other's, because two threads that always
/// work alike cannot be told from a wide one. A margin is left out only round grid lines.
/// </remarks>
public static class DrawdownTones
{
    // Two tones nearer than this cannot be told apart.
    private const int LeastContrast = 24;

    // Cells may lie this far from the middle of their tone, as a share of the contrast; a share of them may lie further.
    private const double ToneReach = 0.3;
    private const double StrayCells = 0.02;

    /// <summary>Reads a picture.</summary>
    /// <param name="width">Pixels in a row, 1 or more.</param>
    /// <param name="levels">Levels of grey, row after row, 0 black to 255 white; whole rows, one at least.</param>
    /// <param name="options">How to read it; null for <see cref="DrawdownPictureOptions.Usual"/>.</param>
    /// <returns>The drawdown, or the problem: too large, one tone, more than two tones.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Ends or picks are asked for and are below 1, or the levels are no whole rows.</exception>
    public static Parsed<DrawdownPictureReading> Read(int width, byte[] levels, DrawdownPictureOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(levels);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        if (levels.Length == 0 || levels.Length % width != 0) throw new ArgumentOutOfRangeException(nameof(levels), levels.Length, $"The levels are not whole rows of {width}.");
        options ??= DrawdownPictureOptions.Usual;
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Ends ?? 1, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Picks ?? 1, 1, nameof(options));
        if (levels.Length > options.MaxPixels)
        {
            return new InputProblem(
                $"The picture is {width} × {levels.Length / width} pixels; at most {options.MaxPixels} pixels are read.", "picture", "Give a PNG of the drawdown alone, for example ten pixels for each crossing.");
        }

        var picture = new GreyPicture(width, levels.Length / width, levels);
        if (options.Ends > picture.Width || options.Picks > picture.Height)
        {
            return new InputProblem($"The picture is {picture.Width} × {picture.Height} pixels, too few for the ends and picks asked for.", "picture", "Give a larger picture, or fewer ends and picks.");
        }

        if (picture.Lightest - picture.Darkest < LeastContrast)
        {
            return new InputProblem("The picture has one tone only.", "picture", "Give a picture with two tones, for example black where the warp is on top and white where it is not.");
        }

        CellGrid cells = FindCells(picture, options, out double cellWidth, out double cellHeight, out bool lines);
        return Tell(cells, options, cellWidth, cellHeight, lines);
    }

    private static CellGrid FindCells(GreyPicture picture, DrawdownPictureOptions options, out double width, out double height, out bool lines)
    {
        double[] columnChanges = picture.Changes();
        double[] rowChanges = picture.Turned().Changes();
        bool stated = options.Ends is not null || options.Picks is not null;
        if (!stated && CellRuling.Free(columnChanges) is { } across && CellRuling.Free(rowChanges) is { } down)
        {
            CellGrid grid = Grid(picture, across, down).Trimmed(columnChanges, rowChanges);
            if (grid.Columns > 0 && grid.Rows > 0 && grid.HasLines())
            {
                (width, height, lines) = (across.Size, down.Size, true);
                return grid;
            }
        }

        CellRuling? columns = options.Ends is { } ends ? new CellRuling(0, (double)picture.Width / ends) : CellRuling.Even(columnChanges);
        CellRuling? rows = options.Picks is { } picks ? new CellRuling(0, (double)picture.Height / picks) : CellRuling.Even(rowChanges);
        CellRuling x = columns ?? Like(picture.Width, rows!.Value);
        CellRuling y = rows ?? Like(picture.Height, x);
        CellGrid even = Grid(picture, x, y);
        lines = even.HasLines();
        if (!lines && !stated && Squared(ref x, ref y)) even = Grid(picture, x, y);
        (width, height) = (x.Size, y.Size);
        return even;
    }

    private static CellGrid Grid(GreyPicture picture, CellRuling columns, CellRuling rows) =>
        new(picture, columns.Boundaries(picture.Width), rows.Boundaries(picture.Height));

    // A side on which nothing changes has cells about as large as those of the other.
    private static CellRuling Like(int side, CellRuling other) => new(0, side / Math.Max(1, Math.Round(side / other.Size)));

    private static bool Squared(ref CellRuling columns, ref CellRuling rows)
    {
        double ratio = columns.Size / rows.Size;
        double times = Math.Round(Math.Max(ratio, 1 / ratio));
        if (times < 2 || Math.Abs(Math.Max(ratio, 1 / ratio) / times - 1) > 0.02) return false;
        if (ratio > 1) columns = columns with { Size = columns.Size / times };
        else rows = rows with { Size = rows.Size / times };
        return true;
    }

    private static Parsed<DrawdownPictureReading> Tell(CellGrid cells, DrawdownPictureOptions options, double width, double height, bool lines)
    {
        if (cells.Columns < 1 || cells.Rows < 1 || cells.Columns > options.MaxEnds || cells.Rows > options.MaxPicks)
        {
            return new InputProblem($"The picture shows {cells.Columns} ends and {cells.Rows} picks; 1 to {options.MaxEnds} ends and 1 to {options.MaxPicks} picks are read.", "picture", "Give a picture of one repeat.");
        }

        byte darkest = 255;
        byte lightest = 0;
        foreach (byte tone in cells.Tones)
        {
            darkest = Math.Min(darkest, tone);
            lightest = Math.Max(lightest, tone);
        }

        double contrast = lightest - darkest;
        if (contrast < LeastContrast) return new InputProblem("All crossings of the picture have one tone.", "picture", "Give a picture with two tones, for example black where the warp is on top and white where it is not.");
        int between = 0;
        foreach (byte tone in cells.Tones)
        {
            if (Math.Min(tone - darkest, lightest - tone) > ToneReach * contrast) between++;
        }

        if (between > StrayCells * cells.Tones.Length)
        {
            return new InputProblem(
                $"Of {cells.Tones.Length} crossings {between} are neither of the dark nor of the light tone, so this is no drawdown in two tones, or its cells were not found.",
                "picture",
                "Give a picture in black and white without shading, or say how many ends and picks it shows.");
        }

        double threshold = (darkest + lightest) / 2.0;
        Drawdown drawdown = Drawdown.From(
            cells.Columns,
            cells.Rows,
            (pick, end) => cells[end, options.FirstPickAtTop ? pick : cells.Rows - 1 - pick] < threshold == options.DarkIsWarp);
        return new DrawdownPictureReading(drawdown, width, height, lines);
    }
}
