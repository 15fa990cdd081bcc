using System.Numerics;
using Clothwright.Core.Cloths.Look.Places;

namespace Clothwright.Core.Cloths.Look.Pictures;

public sealed partial class ClothPainter
{
    // Each pixel: the mean over the cells it covers, by how much of each it covers.
    private Vector3 Far(int column, int row)
    {
        PlaceSpan x = _spansAcross[column];
        PlaceSpan y = _spansAlong[row];
        Vector3 sum = default;
        float weight = 0;
        for (int j = 0; j < y.Count; j++)
        {
            (int placeY, float shareY) = y.Place(j);
            for (int i = 0; i < x.Count; i++)
            {
                (int placeX, float shareX) = x.Place(i);
                float share = shareX * shareY;
                sum += share * Cell(placeX, placeY, x, y);
                weight += share;
            }
        }

        float covered = x.Covered * y.Covered;
        return weight > 0 ? Vector3.Lerp(_behind, sum / weight, covered) : _behind;
    }

    private Vector3 Cell(int column, int row, in PlaceSpan x, in PlaceSpan y)
    {
        int here = _cells[column, row];
        int end = (here >> 1) & 3;
        int pick = (here >> 3) & 3;
        int up = here & 1;
        ClothThread warpThread = _ends[x.Threads.FirstThreads[column] + end];
        ClothThread weftThread = _picks[y.Threads.FirstThreads[row] + pick];
        int step = x.IsTurned ? -1 : 1;
        (float warpCover, Vector3 warp) = FarThread(warpThread, up, Above(column, row - 1, end, warp: true), Above(column, row + 1, end, warp: true), y.Middle);
        (float weftCover, Vector3 weft) = FarThread(weftThread, 1 - up, Above(column - step, row, pick, warp: false), Above(column + step, row, pick, warp: false), x.Middle);
        float top = up > 0 ? warpCover : weftCover;
        float below = up > 0 ? weftCover : warpCover;
        Vector3 light = Vector3.Lerp(_behind * GapLight, up > 0 ? weft : warp, below);
        return Vector3.Lerp(light, up > 0 ? warp : weft, top);
    }

    private int Above(int column, int row, int thread, bool warp)
    {
        int cell = _cells[column, row];
        return warp ? ((cell >> 1) & 3) == thread ? cell & 1 : 0 : ((cell >> 3) & 3) == thread ? 1 - (cell & 1) : 0;
    }

    private (float Cover, Vector3 Light) FarThread(in ClothThread thread, int above, int before, int after, float cloth)
    {
        int number = thread.Clasp >= 0 && cloth >= thread.ClaspMillimetres ? thread.Clasp : thread.Look;
        ReadOnlySpan<float> look = Look(number);
        ReadOnlySpan<float> far = _far.AsSpan(number * FarLight.Parts, FarLight.Parts);
        int level = above > 0 ? 0 : 3;
        int near = level + (before == above ? 0 : 1);
        int beyond = level + (after == above ? 0 : 2);
        float body = 0.5f * (far[1 + 2 * near] + far[1 + 2 * beyond]);
        float gloss = 0.5f * (far[2 + 2 * near] + far[2 + 2 * beyond]);
        Vector3 albedo = Albedo(number, thread, cloth);
        return (far[0], albedo * body + Tint(number) * gloss);
    }
}
