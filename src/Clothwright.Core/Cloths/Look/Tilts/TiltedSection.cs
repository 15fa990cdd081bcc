namespace Clothwright.Core.Cloths.Look.Tilts;

/// <summary>The threads of a cloth as bodies: widths, heights and how far they rise, in one unit.</summary>
/// <param name="EndPitch">Spacing of the ends.</param>
/// <param name="PickPitch">Spacing of the picks.</param>
/// <param name="EndWidth">Width of an end.</param>
/// <param name="PickWidth">Width of a pick.</param>
/// <param name="EndHeight">Height of an end's section.</param>
/// <param name="PickHeight">Height of a pick's section.</param>
/// <param name="WarpRise">Crimp height of the warp.</param>
/// <param name="WeftRise">Crimp height of the weft.</param>
public readonly record struct TiltedSection(
    double EndPitch, double PickPitch, double EndWidth, double PickWidth, double EndHeight, double PickHeight, double WarpRise, double WeftRise)
{
    /// <summary>How far the cloth reaches from its middle.</summary>
    public double Top => Math.Max(WarpRise + EndHeight, WeftRise + PickHeight) / 2;

    /// <summary>Which thread holds a place: 0 none, 1 an end, 2 a pick.</summary>
    internal int At(double x, double y, double height, int columns, int rows, Func<int, int, int> warpUp)
    {
        double cellX = Math.Floor(x);
        double cellY = Math.Floor(y);
        int column = Wrapped((int)cellX, columns);
        int row = Wrapped((int)cellY, rows);
        double across = x - cellX - 0.5;
        double along = y - cellY - 0.5;
        int here = warpUp(column, row);
        double end = HalfHeight(Math.Abs(across) * EndPitch, EndWidth, EndHeight);
        if (end > 0)
        {
            int next = warpUp(column, Wrapped(row + (along > 0 ? 1 : -1), rows));
            if (IsInside(height, here, next, along, WarpRise, PickPitch, end)) return 1;
        }

        double pick = HalfHeight(Math.Abs(along) * PickPitch, PickWidth, PickHeight);
        if (pick <= 0) return 0;
        int beside = 1 - warpUp(Wrapped(column + (across > 0 ? 1 : -1), columns), row);
        return IsInside(height, 1 - here, beside, across, WeftRise, EndPitch, pick) ? 2 : 0;
    }

    // A race-track: level in the middle, half circles at the sides. Below 0 beside it.
    private static double HalfHeight(double aside, double width, double height)
    {
        double beyond = aside - Math.Max(0, width - height) / 2;
        if (beyond <= 0) return height / 2;
        double square = height * height / 4 - beyond * beyond;
        return square > 0 ? Math.Sqrt(square) : -1;
    }

    // Cut upright, a thread on a slope is higher than cut square.
    private static bool IsInside(double height, int here, int next, double along, double rise, double pitch, double half)
    {
        double turn = Math.PI * Math.Abs(along);
        double middle = (here + (next - here) * (1 - Math.Cos(turn)) / 2 - 0.5) * rise;
        double slope = (next - here) * Math.PI / 2 * Math.Sin(turn) * rise / pitch;
        return Math.Abs(height - middle) <= half * Math.Sqrt(1 + slope * slope);
    }

    private static int Wrapped(int index, int count) => ((index % count) + count) % count;
}
