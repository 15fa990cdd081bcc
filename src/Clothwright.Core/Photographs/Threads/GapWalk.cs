namespace Clothwright.Core.Photographs.Threads;

/// <summary>A real count: walks from gap to gap along a strip so that the gaps met are the deepest at spacings near the one expected.</summary>
/// <remarks>
/// Dynamic programming over places of gaps (Bellman 1957, from memory): each gap earns the depth of its valley and pays for a
/// step other than the one expected. It survives uneven spacing, where a single frequency cannot.
/// </remarks>
internal static class GapWalk
{
    private const double LeastStep = 0.6;
    private const double MostStep = 1.5;
    private const double Stiffness = 4;

    /// <summary>Places of the gaps met, in samples, each read off a parabola through its neighbours.</summary>
    /// <param name="valleys">Depth of valleys, mean 0.</param>
    /// <param name="pitch">Step expected, in samples.</param>
    public static double[] Walk(double[] valleys, double pitch)
    {
        int count = valleys.Length;
        int least = Math.Max(2, (int)Math.Floor(LeastStep * pitch));
        int most = Math.Max(least + 1, (int)Math.Ceiling(MostStep * pitch));
        double[] cost = new double[most + 1];
        for (int step = least; step <= most; step++)
        {
            double off = Math.Log(step / pitch);
            cost[step] = Stiffness * off * off * 4;
        }

        double[] best = new double[count];
        int[] from = new int[count];
        for (int i = 0; i < count; i++)
        {
            // A walk begins within the first step at no cost.
            double highest = i < most ? 0 : double.NegativeInfinity;
            from[i] = -1;
            for (int step = least; step <= most && step <= i; step++)
            {
                double total = best[i - step] - cost[step];
                if (total > highest) (highest, from[i]) = (total, i - step);
            }

            best[i] = highest + valleys[i];
        }

        int end = count - 1;
        for (int i = Math.Max(0, count - most); i < count; i++)
        {
            if (best[i] > best[end]) end = i;
        }

        var gaps = new List<double>();
        for (int i = end; i >= 0; i = from[i]) gaps.Add(i + Peak(valleys, i));
        gaps.Reverse();
        return [.. gaps];
    }

    private static double Peak(double[] values, int i)
    {
        if (i == 0 || i == values.Length - 1) return 0;
        double bend = values[i - 1] - 2 * values[i] + values[i + 1];
        return bend < -1e-12 ? Math.Clamp((values[i - 1] - values[i + 1]) / (2 * bend), -0.5, 0.5) : 0;
    }
}
