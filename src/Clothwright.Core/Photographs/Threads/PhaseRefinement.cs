namespace Clothwright.Core.Photographs.Threads;

/// <summary>Sharpens a frequency by how its phase drifts along a strip.</summary>
/// <remarks>The strip is demodulated at the frequency found, smoothed over a few pitches, and the phase's slope averaged by strength.</remarks>
internal static class PhaseRefinement
{
    /// <summary>By how much the threads in the strip are closer than expected: the true frequency over the one given.</summary>
    /// <param name="values">The strip.</param>
    /// <param name="pitch">Samples for a thread, as found so far.</param>
    /// <returns>The ratio, and how strong the threads were: amplitude over the deviation of the strip.</returns>
    public static (double Ratio, double Strength) Refine(double[] values, double pitch)
    {
        int reach = (int)Math.Ceiling(3 * 1.6 * pitch);
        double[] kernel = new double[2 * reach + 1];
        for (int i = -reach; i <= reach; i++) kernel[i + reach] = Math.Exp(-i * i / (2 * 2.56 * pitch * pitch));
        double sum = kernel.Sum();
        double mean = values.Average();
        double variance = values.Sum(v => (v - mean) * (v - mean)) / values.Length;
        double step = 2 * Math.PI / pitch;
        int stride = Math.Max(1, (int)(pitch / 4));
        (double re, double im, bool any) = (0, 0, false);
        (double slope, double weight) = (0, 0);
        for (int middle = reach; middle < values.Length - reach; middle += stride)
        {
            (double nextRe, double nextIm) = (0, 0);
            for (int i = -reach; i <= reach; i++)
            {
                double angle = -step * (middle + i);
                double value = (values[middle + i] - mean) * kernel[i + reach];
                nextRe += value * Math.Cos(angle);
                nextIm += value * Math.Sin(angle);
            }

            nextRe *= 2 / sum;
            nextIm *= 2 / sum;
            if (any)
            {
                // The turn from one place to the next, weighted by the strength at both.
                double dot = re * nextRe + im * nextIm;
                double cross = re * nextIm - im * nextRe;
                double strength = Math.Sqrt((re * re + im * im) * (nextRe * nextRe + nextIm * nextIm));
                slope += strength * Math.Atan2(cross, dot);
                weight += strength;
            }

            (re, im, any) = (nextRe, nextIm, true);
        }

        if (weight <= 0) return (1, 0);
        int steps = Math.Max(1, (values.Length - 2 * reach - 1) / stride);
        return (1 + slope / weight / stride / step, Math.Sqrt(weight / steps / Math.Max(variance, 1e-12) / 2));
    }
}
