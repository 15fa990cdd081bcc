using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Places;

namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>How the colour of each yarn is adapted so that a cloth lying flat in the light of the window shows it on the average.</summary>
/// <remarks>The eye adapts to a lamp; crowns then are lighter than the yarn's colour and valleys darker, and a tilt changes both.</remarks>
internal static class Exposure
{
    /// <summary>Numbers of one look: what its colour is multiplied with, the gloss that is taken off before, red, green and blue of its gloss.</summary>
    public const int Parts = 5;

    // No yarn is darker than its own gloss: a dark one takes a little off the colour of the lamp. By eye.
    private const float MostGloss = 0.95f;
    private const float LeastTint = 0.5f;

    private const int Sampled = 48;

    /// <summary>Exposure of every look.</summary>
    /// <param name="numbers">The cloth.</param>
    /// <param name="cells">Its side.</param>
    /// <param name="window">Means of every look in the light of the window.</param>
    /// <param name="turned">Whether the cloth is turned over.</param>
    public static float[] Of(LookNumbers numbers, FaceCells cells, float[] window, bool turned)
    {
        (double[] warp, double[] weft) = States(cells, turned ? -1 : 1);
        int count = numbers.Looks.Length / LookNumbers.PerLook;
        double warpGap = 1 - MeanCover(numbers, numbers.Ends, window);
        double weftGap = 1 - MeanCover(numbers, numbers.Picks, window);
        var exposure = new float[count * Parts];
        for (int number = 0; number < count; number++)
        {
            bool isWarp = numbers.Lights[(int)numbers.Looks[number * LookNumbers.PerLook + 15]].Direction == ThreadDirection.Warp;
            double[] states = isWarp ? warp : weft;
            double gap = isWarp ? weftGap : warpGap;
            double body = 0;
            double gloss = 0;
            double weight = 0;
            for (int state = 0; state < FarLight.States; state++)
            {
                double share = states[state] * (state < 3 ? 1 : gap);
                body += share * window[number * FarLight.Parts + 1 + 2 * state];
                gloss += share * window[number * FarLight.Parts + 2 + 2 * state];
                weight += share;
            }

            if (weight <= 0) (body, gloss, weight) = (window[number * FarLight.Parts + 1], window[number * FarLight.Parts + 2], 1);
            exposure[number * Parts] = (float)(weight / body);
            float taken = (float)(gloss / weight);
            exposure[number * Parts + 1] = taken;
            for (int part = 0; part < 3; part++)
            {
                float tint = numbers.Looks[number * LookNumbers.PerLook + 12 + part];
                float colour = numbers.Looks[number * LookNumbers.PerLook + part];
                exposure[number * Parts + 2 + part] = MathF.Min(tint, MathF.Max(LeastTint * tint, MostGloss * colour / MathF.Max(taken, 1e-6f)));
            }
        }

        return exposure;
    }

    private static double MeanCover(LookNumbers numbers, ThreadRound round, float[] window) => round.Looks.Average(l => window[l * FarLight.Parts]);

    // How often half a crossing is in each state, over a piece of the cloth.
    private static (double[] Warp, double[] Weft) States(FaceCells cells, int right)
    {
        var warp = new double[FarLight.States];
        var weft = new double[FarLight.States];
        int columns = Math.Min(Sampled, cells.Columns);
        int rows = Math.Min(Sampled, cells.Rows);
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                int here = cells[column, row];
                int up = here & 1;
                int end = (here >> 1) & 3;
                int pick = (here >> 3) & 3;
                warp[State(up, WarpUp(column, row - 1, end), 1)]++;
                warp[State(up, WarpUp(column, row + 1, end), 2)]++;
                weft[State(1 - up, WeftUp(column - right, row, pick), 1)]++;
                weft[State(1 - up, WeftUp(column + right, row, pick), 2)]++;
            }
        }

        return (warp, weft);

        int WarpUp(int column, int row, int end) => ((cells[column, row] >> 1) & 3) == end ? cells[column, row] & 1 : 0;
        int WeftUp(int column, int row, int pick) => ((cells[column, row] >> 3) & 3) == pick ? 1 - (cells[column, row] & 1) : 0;
        static int State(int above, int next, int side) => (above > 0 ? 0 : 3) + (next == above ? 0 : side);
    }
}
