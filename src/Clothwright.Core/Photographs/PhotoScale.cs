using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Photographs;

/// <summary>How large things are in a photograph: two marks a known length apart, or the four corners of a card.</summary>
public sealed class PhotoScale
{
    /// <summary>Long side of a bank card, millimetres (ISO/IEC 7810, size ID-1, from memory).</summary>
    public const double CardLongMillimetres = 85.60;

    /// <summary>Short side of a bank card, millimetres (ISO/IEC 7810, size ID-1, from memory).</summary>
    public const double CardShortMillimetres = 53.98;

    // A mark is set to about a pixel; two marks differ by the root of two of that.
    private const double MarkPixels = 1;

    // A camera held by eye looks up to 8° past square, and the count is then high along the slant.
    private static readonly double SlantDeviation = SlantedCamera.CountErrorFraction(8) / Math.Sqrt(12);

    private PhotoScale(PlaneMapping mapping, double relativeDeviation, bool knowsPlane)
    {
        Mapping = mapping;
        RelativeDeviation = relativeDeviation;
        KnowsPlane = knowsPlane;
    }

    /// <summary>Where the cloth lies in the photograph.</summary>
    public PlaneMapping Mapping { get; }

    /// <summary>Standard deviation of the scale, as a share of it.</summary>
    public double RelativeDeviation { get; }

    /// <summary>Whether the slant of the camera is known and taken out.</summary>
    public bool KnowsPlane { get; }

    /// <summary>A scale from a length and the pixels it covers.</summary>
    /// <param name="length">The length on the ruler; above 0.</param>
    /// <param name="pixels">How many pixels it covers; finite, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is 0 or less, or not finite.</exception>
    public static PhotoScale FromLength(Length length, double pixels)
    {
        if (!double.IsFinite(pixels) || pixels <= 0) throw new ArgumentOutOfRangeException(nameof(pixels), pixels, "A length covers more than 0 pixels.");
        double marks = Math.Sqrt(2) * MarkPixels / pixels;
        return new PhotoScale(PlaneMapping.FromScale(pixels / length.Millimetres), Math.Sqrt(marks * marks + SlantDeviation * SlantDeviation), knowsPlane: false);
    }

    /// <summary>A scale from the four corners of a card of 85.60 × 53.98 mm that lies beside the cloth.</summary>
    /// <param name="corners">The corners in the order in which they are met around the card, from any corner.</param>
    /// <returns>The scale, or the problem: three corners in line, corners crossed.</returns>
    /// <exception cref="ArgumentException">Not four corners.</exception>
    public static Parsed<PhotoScale> FromCard(ReadOnlySpan<PhotoPoint> corners)
    {
        if (corners.Length != 4) throw new ArgumentException("A card has four corners.", nameof(corners));
        PhotoPoint[] around = InPictureOrder(corners);
        double across = around[0].PixelsTo(around[1]) + around[3].PixelsTo(around[2]);
        double down = around[0].PixelsTo(around[3]) + around[1].PixelsTo(around[2]);
        (double width, double height) = across >= down ? (CardLongMillimetres, CardShortMillimetres) : (CardShortMillimetres, CardLongMillimetres);
        ClothPoint[] card = [new(0, 0), new(width, 0), new(width, height), new(0, height)];
        PlaneMapping? mapping = IsConvex(around) ? PlaneMapping.FromFour(card, around) : null;
        if (mapping is null)
        {
            return new InputProblem(
                $"The four corners ({string.Join("; ", corners.ToArray().Select(c => $"{c.X:0.#}, {c.Y:0.#}"))}) do not lie around a card.",
                "card",
                "Mark its four corners one after another around the card, for example 100,80 955,95 940,630 90,615.");
        }

        return new PhotoScale(mapping, 2 * MarkPixels / (across + down) * 2, knowsPlane: true);
    }

    // From the corner nearest the top left, clockwise as seen.
    private static PhotoPoint[] InPictureOrder(ReadOnlySpan<PhotoPoint> corners)
    {
        PhotoPoint[] around = corners.ToArray();
        double area = 0;
        for (int i = 0; i < 4; i++) area += around[i].X * around[(i + 1) % 4].Y - around[(i + 1) % 4].X * around[i].Y;
        if (area < 0) Array.Reverse(around);
        int first = 0;
        for (int i = 1; i < 4; i++)
        {
            if (around[i].X + around[i].Y < around[first].X + around[first].Y) first = i;
        }

        return [.. around[first..], .. around[..first]];
    }

    private static bool IsConvex(PhotoPoint[] around)
    {
        for (int i = 0; i < 4; i++)
        {
            (PhotoPoint a, PhotoPoint b, PhotoPoint c) = (around[i], around[(i + 1) % 4], around[(i + 2) % 4]);
            double turn = (b.X - a.X) * (c.Y - b.Y) - (b.Y - a.Y) * (c.X - b.X);
            if (turn <= 1e-6 * a.PixelsTo(b) * b.PixelsTo(c)) return false;
        }

        return true;
    }
}
