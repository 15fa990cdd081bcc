using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs.Spectra;

/// <summary>What is looked for in a view: evened light, and the valleys between threads across and along.</summary>
internal static class ViewChannels
{
    /// <summary>Log light without its slow part, over its local deviation.</summary>
    public static double[] EvenedLight(ClothView view)
    {
        int reach = Math.Max(3, view.Side / 32);
        double[] slow = BoxBlurred(BoxBlurred(view.LogLight, view.Side, reach), view.Side, reach);
        double[] quick = new double[slow.Length];
        for (int i = 0; i < slow.Length; i++) quick[i] = view.LogLight[i] - slow[i];
        return OverDeviation(quick, view.Side, reach);
    }

    /// <summary>How much a place is darker than both its neighbours across the threads; 0 on ridges and slopes.</summary>
    /// <param name="view">The view.</param>
    /// <param name="down">Whether threads are counted downwards; else to the right.</param>
    public static double[] Valleys(ClothView view, bool down)
    {
        int side = view.Side;
        double[] light = view.LogLight;
        double[] valleys = new double[light.Length];
        int stride = down ? side : 1;
        for (int y = 0; y < side; y++)
        {
            for (int x = 0; x < side; x++)
            {
                int along = down ? y : x;
                if (along < 2 || along > side - 3) continue;
                int i = y * side + x;
                // A second difference over five samples: (1, 1, −4, 1, 1) is wide enough to pass over noise.
                double depth = light[i - 2 * stride] + light[i - stride] + light[i + stride] + light[i + 2 * stride] - 4 * light[i];
                valleys[i] = depth > 0 ? depth : 0;
            }
        }

        return OverDeviation(valleys, side, Math.Max(3, side / 32));
    }

    private static double[] OverDeviation(double[] values, int side, int reach)
    {
        double[] mean = BoxBlurred(values, side, reach);
        double[] squares = new double[values.Length];
        double whole = 0;
        for (int i = 0; i < values.Length; i++)
        {
            squares[i] = (values[i] - mean[i]) * (values[i] - mean[i]);
            whole += squares[i];
        }

        // A flat part of the picture is not to be blown up into noise.
        double least = whole / values.Length * 0.04 + 1e-12;
        double[] local = BoxBlurred(squares, side, reach);
        for (int i = 0; i < values.Length; i++) squares[i] = (values[i] - mean[i]) / Math.Sqrt(local[i] + least);
        return squares;
    }

    private static double[] BoxBlurred(double[] values, int side, int reach)
    {
        double[] once = new double[values.Length];
        double[] twice = new double[values.Length];
        for (int y = 0; y < side; y++) RunningMean(values, once, y * side, 1, side, reach);
        for (int x = 0; x < side; x++) RunningMean(once, twice, x, side, side, reach);
        return twice;
    }

    private static void RunningMean(double[] from, double[] to, int start, int stride, int count, int reach)
    {
        double sum = 0;
        int held = 0;
        for (int i = 0; i < Math.Min(reach, count); i++, held++) sum += from[start + i * stride];
        for (int i = 0; i < count; i++)
        {
            if (i + reach < count)
            {
                sum += from[start + (i + reach) * stride];
                held++;
            }

            if (i - reach - 1 >= 0)
            {
                sum -= from[start + (i - reach - 1) * stride];
                held--;
            }

            to[start + i * stride] = sum / held;
        }
    }
}
