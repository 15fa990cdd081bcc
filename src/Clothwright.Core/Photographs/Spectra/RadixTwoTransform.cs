namespace Clothwright.Core.Photographs.Spectra;

/// <summary>The discrete Fourier transform of a row or a square whose side is a power of two (Cooley and Tukey 1965, from memory).</summary>
/// <remarks>Forward transform, exp(−2πi·jk/n), not scaled. The parts are held apart so that the browser's plain interpreter walks flat arrays.</remarks>
public sealed class RadixTwoTransform
{
    private readonly int _length;
    private readonly int[] _reversed;
    private readonly double[] _cosines;
    private readonly double[] _sines;

    /// <summary>A transform for one length.</summary>
    /// <param name="length">Values in a row: a power of two, 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is no power of two, or below 2.</exception>
    public RadixTwoTransform(int length)
    {
        if (length < 2 || (length & (length - 1)) != 0)
        {
            throw new ArgumentOutOfRangeException(nameof(length), length, "The length of a transform is a power of two, 2 or more.");
        }

        _length = length;
        _reversed = new int[length];
        for (int i = 1; i < length; i++) _reversed[i] = (_reversed[i >> 1] >> 1) | ((i & 1) == 0 ? 0 : length >> 1);
        _cosines = new double[length / 2];
        _sines = new double[length / 2];
        for (int i = 0; i < length / 2; i++) (_sines[i], _cosines[i]) = Math.SinCos(-2 * Math.PI * i / length);
    }

    /// <summary>Transforms one row in place.</summary>
    /// <param name="real">Real parts.</param>
    /// <param name="imaginary">Imaginary parts.</param>
    /// <exception cref="ArgumentException">A part has another length.</exception>
    public void Row(Span<double> real, Span<double> imaginary)
    {
        if (real.Length != _length || imaginary.Length != _length)
        {
            throw new ArgumentException($"The parts have {real.Length} and {imaginary.Length} values; the transform is for {_length}.", nameof(real));
        }

        for (int i = 0; i < _length; i++)
        {
            int j = _reversed[i];
            if (j <= i) continue;
            (real[i], real[j]) = (real[j], real[i]);
            (imaginary[i], imaginary[j]) = (imaginary[j], imaginary[i]);
        }

        for (int half = 1; half < _length; half <<= 1)
        {
            int step = _length / (2 * half);
            for (int start = 0; start < _length; start += 2 * half)
            {
                for (int k = 0, turn = 0; k < half; k++, turn += step)
                {
                    int a = start + k;
                    int b = a + half;
                    double re = real[b] * _cosines[turn] - imaginary[b] * _sines[turn];
                    double im = real[b] * _sines[turn] + imaginary[b] * _cosines[turn];
                    real[b] = real[a] - re;
                    imaginary[b] = imaginary[a] - im;
                    real[a] += re;
                    imaginary[a] += im;
                }
            }
        }
    }

    /// <summary>Transforms a square in place: along its rows, then along its columns.</summary>
    /// <param name="real">Real parts, row after row.</param>
    /// <param name="imaginary">Imaginary parts, row after row.</param>
    /// <exception cref="ArgumentException">A part is no square of this length.</exception>
    public void Square(double[] real, double[] imaginary)
    {
        ArgumentNullException.ThrowIfNull(real);
        ArgumentNullException.ThrowIfNull(imaginary);
        if (real.Length != _length * _length || imaginary.Length != real.Length)
        {
            throw new ArgumentException($"The parts have {real.Length} and {imaginary.Length} values; a square of {_length} has {_length * _length}.", nameof(real));
        }

        for (int pass = 0; pass < 2; pass++)
        {
            for (int row = 0; row < real.Length; row += _length) Row(real.AsSpan(row, _length), imaginary.AsSpan(row, _length));
            Turn(real);
            Turn(imaginary);
        }
    }

    private void Turn(double[] square)
    {
        for (int y = 0; y < _length; y++)
        {
            for (int x = y + 1; x < _length; x++)
            {
                (square[y * _length + x], square[x * _length + y]) = (square[x * _length + y], square[y * _length + x]);
            }
        }
    }
}
