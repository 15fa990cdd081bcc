namespace Clothwright.Core.Photographs.Pictures;

/// <summary>How a flat cloth and its photograph lie over each other: a homography from millimetres on the cloth to pixels, and back.</summary>
/// <remarks>Held as a 3 × 3 matrix with its inverse; four pairs of points fix it (Hartley and Zisserman 2004, chapter 4, from memory).</remarks>
public sealed class PlaneMapping
{
    private readonly double[] _toPhoto;
    private readonly double[] _toCloth;

    private PlaneMapping(double[] toPhoto)
    {
        _toPhoto = toPhoto;
        _toCloth = Inverse(toPhoto);
    }

    /// <summary>A camera that looks straight down: one scale everywhere, the cloth's axes along the picture's.</summary>
    /// <param name="pixelsPerMillimetre">Pixels for a millimetre of cloth; finite, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The scale is 0 or less, or not finite.</exception>
    public static PlaneMapping FromScale(double pixelsPerMillimetre) => double.IsFinite(pixelsPerMillimetre) && pixelsPerMillimetre > 0
        ? new PlaneMapping([pixelsPerMillimetre, 0, 0, 0, pixelsPerMillimetre, 0, 0, 0, 1])
        : throw new ArgumentOutOfRangeException(nameof(pixelsPerMillimetre), pixelsPerMillimetre, "A scale in pixels per millimetre is a finite number above 0.");

    /// <summary>The mapping that takes four places on the cloth to four places in the photograph.</summary>
    /// <param name="cloth">Four places on the cloth, no three in line.</param>
    /// <param name="photo">The same places in the photograph.</param>
    /// <returns>The mapping, or null when three of the places lie in line.</returns>
    /// <exception cref="ArgumentException">Not four places each.</exception>
    public static PlaneMapping? FromFour(ReadOnlySpan<ClothPoint> cloth, ReadOnlySpan<PhotoPoint> photo)
    {
        if (cloth.Length != 4 || photo.Length != 4) throw new ArgumentException("A mapping is fixed by four pairs of places.", nameof(cloth));
        double[,] rows = new double[8, 9];
        for (int i = 0; i < 4; i++)
        {
            (double x, double y) = (cloth[i].XMillimetres, cloth[i].YMillimetres);
            (double u, double v) = (photo[i].X, photo[i].Y);
            double[][] pair = [[x, y, 1, 0, 0, 0, -u * x, -u * y, u], [0, 0, 0, x, y, 1, -v * x, -v * y, v]];
            for (int j = 0; j < 9; j++) (rows[2 * i, j], rows[2 * i + 1, j]) = (pair[0][j], pair[1][j]);
        }

        double[]? solved = Solved(rows);
        return solved is null || Math.Abs(Determinant([.. solved, 1])) < 1e-12 ? null : new PlaneMapping([.. solved, 1]);
    }

    /// <summary>Where a place on the cloth is seen.</summary>
    /// <param name="place">The place on the cloth.</param>
    public PhotoPoint ToPhoto(ClothPoint place)
    {
        (double x, double y) = Apply(_toPhoto, place.XMillimetres, place.YMillimetres);
        return new PhotoPoint(x, y);
    }

    /// <summary>The place on the cloth that is seen at a place of the photograph.</summary>
    /// <param name="place">The place in the photograph.</param>
    public ClothPoint ToCloth(PhotoPoint place)
    {
        (double x, double y) = Apply(_toCloth, place.X, place.Y);
        return new ClothPoint(x, y);
    }

    /// <summary>Pixels for a millimetre of cloth around a place of the photograph: the square root of the ratio of areas.</summary>
    /// <param name="place">The place in the photograph.</param>
    public double PixelsPerMillimetreAt(PhotoPoint place)
    {
        const double Step = 0.5;
        ClothPoint here = ToCloth(place);
        ClothPoint right = ToCloth(place with { X = place.X + Step });
        ClothPoint down = ToCloth(place with { Y = place.Y + Step });
        double area = (right.XMillimetres - here.XMillimetres) * (down.YMillimetres - here.YMillimetres)
            - (right.YMillimetres - here.YMillimetres) * (down.XMillimetres - here.XMillimetres);
        return Step / Math.Sqrt(Math.Abs(area));
    }

    private static (double X, double Y) Apply(double[] m, double x, double y)
    {
        double w = m[6] * x + m[7] * y + m[8];
        return ((m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w);
    }

    private static double Determinant(double[] m) =>
        m[0] * (m[4] * m[8] - m[5] * m[7]) - m[1] * (m[3] * m[8] - m[5] * m[6]) + m[2] * (m[3] * m[7] - m[4] * m[6]);

    private static double[] Inverse(double[] m)
    {
        double d = Determinant(m);
        return
        [
            (m[4] * m[8] - m[5] * m[7]) / d, (m[2] * m[7] - m[1] * m[8]) / d, (m[1] * m[5] - m[2] * m[4]) / d,
            (m[5] * m[6] - m[3] * m[8]) / d, (m[0] * m[8] - m[2] * m[6]) / d, (m[2] * m[3] - m[0] * m[5]) / d,
            (m[3] * m[7] - m[4] * m[6]) / d, (m[1] * m[6] - m[0] * m[7]) / d, (m[0] * m[4] - m[1] * m[3]) / d,
        ];
    }

    // Gauss with the largest pivot of each column; null where the pivot vanishes beside the size of the numbers.
    private static double[]? Solved(double[,] rows)
    {
        for (int column = 0; column < 8; column++)
        {
            int pivot = column;
            for (int i = column + 1; i < 8; i++)
            {
                if (Math.Abs(rows[i, column]) > Math.Abs(rows[pivot, column])) pivot = i;
            }

            if (Math.Abs(rows[pivot, column]) < 1e-9) return null;
            for (int j = 0; j < 9; j++) (rows[column, j], rows[pivot, j]) = (rows[pivot, j], rows[column, j]);
            for (int i = 0; i < 8; i++)
            {
                if (i == column) continue;
                double factor = rows[i, column] / rows[column, column];
                for (int j = column; j < 9; j++) rows[i, j] -= factor * rows[column, j];
            }
        }

        double[] solved = new double[8];
        for (int i = 0; i < 8; i++) solved[i] = rows[i, 8] / rows[i, i];
        return solved;
    }
}
