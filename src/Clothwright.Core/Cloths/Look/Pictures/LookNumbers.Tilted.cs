using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Places;
using Clothwright.Core.Cloths.Look.Tilts;

namespace Clothwright.Core.Cloths.Look.Pictures;

public sealed partial class LookNumbers
{
    /// <summary>The numbers for an eye that stands aside: each set of threads as wide as what is seen of it asks for.</summary>
    /// <param name="cells">The side that is seen.</param>
    /// <param name="ends">Places of the ends.</param>
    /// <param name="picks">Places of the picks.</param>
    /// <param name="eye">Towards the eye.</param>
    /// <param name="turned">Whether the cloth lies on its face, left and right exchanged.</param>
    internal LookNumbers SeenFrom(FaceCells cells, ThreadPlaces ends, ThreadPlaces picks, Direction eye, bool turned)
    {
        if ((eye.X == 0 && eye.Y == 0) || eye.Z <= 0) return this;
        (double endWidth, double endHeight) = Mean(Ends, Description.SharedEnds);
        (double pickWidth, double pickHeight) = Mean(Picks, Description.SharedPicks);
        var section = new TiltedSection(ends.Pitch, picks.Pitch, endWidth, pickWidth, endHeight, pickHeight, WarpHeight, WeftHeight);
        int Up(int column, int row) => cells[column, row] & 1;
        TiltedShares flat = TiltedShares.Of(section, cells.Columns, cells.Rows, Up, 0, 0);
        TiltedShares tilted = TiltedShares.Of(section, cells.Columns, cells.Rows, Up, (turned ? -eye.X : eye.X) / eye.Z, eye.Y / eye.Z);
        (int wide, int high) = (Math.Min(cells.Columns, TiltedShares.MostCrossings), Math.Min(cells.Rows, TiltedShares.MostCrossings));
        int warpUp = 0;
        for (int row = 0; row < high; row++)
        {
            for (int column = 0; column < wide; column++) warpUp += Up(column, row);
        }

        TiltedWidths widths = TiltedWidths.Of((double)warpUp / (wide * high), Math.Min(1, endWidth / ends.Pitch), Math.Min(1, pickWidth / picks.Pitch), flat, tilted);
        float[] looks = [.. Looks];
        for (int number = 0; number < looks.Length / PerLook; number++)
        {
            bool warp = Lights[(int)looks[number * PerLook + 15]].Direction == ThreadDirection.Warp;
            looks[number * PerLook + 3] *= (float)(warp ? widths.WarpFactor : widths.WeftFactor);
        }

        return new LookNumbers
        {
            Description = Description,
            Looks = looks,
            Lustres = Lustres,
            Lights = Lights,
            Stretches = Stretches,
            Ends = Ends,
            Picks = Picks,
            WarpHeight = WarpHeight,
            WeftHeight = WeftHeight,
            WarpSteepest = WarpSteepest,
            WeftSteepest = WeftSteepest,
        };
    }

    // Mean width and height of the threads that have a place of their own.
    private (double Width, double Height) Mean(ThreadRound round, System.Collections.Immutable.ImmutableArray<bool> shared)
    {
        int[] own = [.. round.Looks.Where((_, i) => !ThreadPlaces.IsShared(shared, i))];
        return (own.Average(l => Looks[l * PerLook + 3]), own.Average(l => Looks[l * PerLook + 4]));
    }
}
