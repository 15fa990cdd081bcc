using Clothwright.Core.Colours;
using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs.Threads;

/// <summary>A strip across one set of threads: log light, valleys and hue along it, each averaged a little way along the threads.</summary>
/// <param name="Start">Place of the first sample.</param>
/// <param name="Step">Millimetres between samples, in the direction in which threads are counted.</param>
/// <param name="Light">Log light, averaged along the threads.</param>
/// <param name="Valleys">How far each sample is darker than its neighbours on both sides, averaged along the threads, mean 0 and deviation 1.</param>
/// <param name="Hue">Log ratio of red and blue light, averaged along the threads.</param>
internal sealed record ThreadStrip(ClothPoint Start, (double X, double Y) Step, double[] Light, double[] Valleys, double[] Hue)
{
    private const double Floor = 0.0006;

    /// <summary>Samples along one spacing of the threads.</summary>
    public const int SamplesAPitch = 12;

    /// <summary>Reads a strip.</summary>
    /// <param name="photograph">The photograph.</param>
    /// <param name="mapping">Where the cloth lies in it.</param>
    /// <param name="middle">Middle of the strip on the cloth.</param>
    /// <param name="across">Direction in which threads are counted, length 1.</param>
    /// <param name="lengthMillimetres">Length of the strip.</param>
    /// <param name="depthMillimetres">How far along the threads it reaches.</param>
    /// <param name="pitchMillimetres">Spacing of the threads, as found so far.</param>
    /// <param name="mostRows">The most rows of samples averaged.</param>
    public static ThreadStrip Read(Photograph photograph, PlaneMapping mapping, ClothPoint middle, (double X, double Y) across, double lengthMillimetres, double depthMillimetres, double pitchMillimetres, int mostRows)
    {
        double step = pitchMillimetres / SamplesAPitch;
        int count = Math.Max(4 * SamplesAPitch, (int)(lengthMillimetres / step));
        int rows = Math.Clamp((int)(depthMillimetres / (2 * step)), 8, mostRows);
        double rowStep = depthMillimetres / rows;
        double pixels = step * mapping.PixelsPerMillimetreAt(mapping.ToPhoto(middle));
        double[] light = new double[count];
        double[] valleys = new double[count];
        double[] hue = new double[count];
        double[] row = new double[count];
        // Valleys are looked for row by row, for a slant or a bent thread would fill them if light were averaged first.
        for (int r = 0; r < rows; r++)
        {
            double off = (r - (rows - 1) / 2.0) * rowStep;
            for (int i = 0; i < count; i++)
            {
                double along = (i - (count - 1) / 2.0) * step;
                var place = new ClothPoint(
                    middle.XMillimetres + along * across.X - off * across.Y,
                    middle.YMillimetres + along * across.Y + off * across.X);
                LinearColour colour = photograph.LightAt(mapping.ToPhoto(place), pixels);
                row[i] = Math.Log(ClothView.Luminance(colour) + Floor);
                light[i] += row[i] / rows;
                hue[i] += Math.Log((colour.Red + 4 * Floor) / (colour.Blue + 4 * Floor)) / rows;
            }

            AddValleys(row, valleys);
        }

        Standardise(valleys);
        double half = (count - 1) / 2.0 * step;
        return new ThreadStrip(
            new ClothPoint(middle.XMillimetres - half * across.X, middle.YMillimetres - half * across.Y),
            (across.X * step, across.Y * step),
            light,
            valleys,
            hue);
    }

    private static void AddValleys(double[] row, double[] valleys)
    {
        const int Near = 2;
        const int Far = 4;
        for (int i = Far; i < row.Length - Far; i++)
        {
            double middle = (row[i - 1] + row[i] + row[i + 1]) / 3;
            double depth = (row[i - Near] + row[i - Far] + row[i + Near] + row[i + Far]) / 4 - middle;
            if (depth > 0) valleys[i] += depth;
        }
    }

    // Over a window of four pitches, so that a dim corner or a dark stripe counts as much as a bright one.
    private static void Standardise(double[] values)
    {
        int reach = 2 * SamplesAPitch;
        double[] mean = Means(values, reach);
        double[] squares = new double[values.Length];
        for (int i = 0; i < values.Length; i++) squares[i] = (values[i] - mean[i]) * (values[i] - mean[i]);
        double[] variance = Means(squares, reach);
        double floor = 0.05 * squares.Average() + 1e-12;
        for (int i = 0; i < values.Length; i++) values[i] = (values[i] - mean[i]) / Math.Sqrt(variance[i] + floor);
    }

    private static double[] Means(double[] values, int reach)
    {
        double[] sums = new double[values.Length + 1];
        for (int i = 0; i < values.Length; i++) sums[i + 1] = sums[i] + values[i];
        double[] means = new double[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            int from = Math.Max(0, i - reach);
            int to = Math.Min(values.Length, i + reach + 1);
            means[i] = (sums[to] - sums[from]) / (to - from);
        }

        return means;
    }
}
