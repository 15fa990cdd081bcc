namespace Clothwright.Core.Photographs.Spectra;

/// <summary>How strongly each frequency stands out of a square picture: the log of its power over what is usual at that distance from the middle.</summary>
internal sealed class PowerSpectrum
{
    private readonly int _side;
    private readonly double[] _standing;

    private PowerSpectrum(int side, double[] standing)
    {
        _side = side;
        _standing = standing;
    }

    /// <summary>The spectra of two pictures from one transform: real parts carry the first, imaginary parts the second.</summary>
    public static (PowerSpectrum First, PowerSpectrum Second) OfTwo(double[] first, double[] second, int side)
    {
        double[] real = Windowed(first, side);
        double[] imaginary = Windowed(second, side);
        new RadixTwoTransform(side).Square(real, imaginary);
        double[] one = new double[real.Length];
        double[] two = new double[real.Length];
        for (int y = 0; y < side; y++)
        {
            int mirrorRow = (side - y) % side * side;
            for (int x = 0; x < side; x++)
            {
                int i = y * side + x;
                int j = mirrorRow + (side - x) % side;
                double re = real[i] + real[j];
                double im = imaginary[i] - imaginary[j];
                one[i] = re * re + im * im;
                re = imaginary[i] + imaginary[j];
                im = real[j] - real[i];
                two[i] = re * re + im * im;
            }
        }

        return (Whitened(one, side), Whitened(two, side));
    }

    /// <summary>How far a frequency stands out, in nepers of power; between bins it is read off a straight line.</summary>
    /// <param name="x">Cycles across the square.</param>
    /// <param name="y">Cycles down the square.</param>
    public double At(double x, double y)
    {
        int left = (int)Math.Floor(x);
        int top = (int)Math.Floor(y);
        (double u, double v) = (x - left, y - top);
        int mask = _side - 1;
        int a = (top & mask) * _side;
        int b = ((top + 1) & mask) * _side;
        int l = left & mask;
        int r = (left + 1) & mask;
        return (1 - v) * ((1 - u) * _standing[a + l] + u * _standing[a + r]) + v * ((1 - u) * _standing[b + l] + u * _standing[b + r]);
    }

    private static double[] Windowed(double[] values, int side)
    {
        double[] hann = new double[side];
        for (int i = 0; i < side; i++) hann[i] = 0.5 - 0.5 * Math.Cos(2 * Math.PI * (i + 0.5) / side);
        double[] windowed = new double[values.Length];
        for (int y = 0; y < side; y++)
        {
            for (int x = 0; x < side; x++) windowed[y * side + x] = values[y * side + x] * hann[x] * hann[y];
        }

        return windowed;
    }

    private static PowerSpectrum Whitened(double[] power, int side)
    {
        double[] log = Smoothed(power, side);
        int half = side / 2;
        double[] sums = new double[side];
        int[] counts = new int[side];
        for (int y = 0; y < side; y++)
        {
            int fy = y < half ? y : y - side;
            for (int x = 0; x < side; x++)
            {
                int fx = x < half ? x : x - side;
                int i = y * side + x;
                log[i] = Math.Log(log[i] + 1e-12);
                int radius = (int)Math.Sqrt(fx * fx + fy * fy);
                sums[radius] += log[i];
                counts[radius]++;
            }
        }

        double[] usual = new double[side];
        for (int r = 0; r < side; r++)
        {
            // Rings near the middle are short, so neighbours are taken in: a tenth of the radius, two at least.
            int reach = 2 + r / 10;
            (double sum, int count) = (0, 0);
            for (int q = Math.Max(0, r - reach); q <= Math.Min(side - 1, r + reach); q++) (sum, count) = (sum + sums[q], count + counts[q]);
            usual[r] = count > 0 ? sum / count : 0;
        }

        for (int y = 0; y < side; y++)
        {
            int fy = y < half ? y : y - side;
            for (int x = 0; x < side; x++)
            {
                int fx = x < half ? x : x - side;
                log[y * side + x] -= usual[(int)Math.Sqrt(fx * fx + fy * fy)];
            }
        }

        return new PowerSpectrum(side, log);
    }

    // Weights 1 2 1 along and across calm the chance of single bins.
    private static double[] Smoothed(double[] power, int side)
    {
        double[] once = new double[power.Length];
        double[] twice = new double[power.Length];
        int mask = side - 1;
        for (int y = 0; y < side; y++)
        {
            int row = y * side;
            for (int x = 0; x < side; x++) once[row + x] = power[row + ((x - 1) & mask)] + 2 * power[row + x] + power[row + ((x + 1) & mask)];
        }

        for (int y = 0; y < side; y++)
        {
            int row = y * side;
            int above = ((y - 1) & mask) * side;
            int below = ((y + 1) & mask) * side;
            for (int x = 0; x < side; x++) twice[row + x] = once[above + x] + 2 * once[row + x] + once[below + x];
        }

        return twice;
    }
}
