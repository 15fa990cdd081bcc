using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;

namespace Clothwright.Client.Photographs;

/// <summary>The square of a photograph that is looked at, as pixels, with its scale; and the way back to the photograph as shown.</summary>
/// <param name="Photograph">The pixels of the square.</param>
/// <param name="Scale">Their scale.</param>
/// <param name="Left">Left edge of the square as shown.</param>
/// <param name="Top">Top edge of the square as shown.</param>
/// <param name="Times">Pixels of the square for one pixel as shown.</param>
internal sealed record PhotoSquare(Photograph Photograph, PhotoScale Scale, double Left, double Top, double Times)
{
    // As much as an interpreted page counts in a few seconds.
    private const int MostPixels = 560;

    /// <summary>Takes the square out of the photograph.</summary>
    /// <param name="marks">Two marks on a ruler, or the four corners of a card, as shown.</param>
    /// <param name="length">How far apart two marks are.</param>
    /// <param name="middle">Middle of the square as shown.</param>
    /// <param name="side">Side of the square as shown.</param>
    public static Parsed<PhotoSquare> Take(IReadOnlyList<PhotoPoint> marks, Length length, PhotoPoint middle, double side)
    {
        (double left, double top) = (middle.X - side / 2, middle.Y - side / 2);
        int pixels = (int)Math.Min(MostPixels, Math.Max(96, side * PhotoScript.Fineness()));
        double times = pixels / side;
        PhotoPoint[] moved = [.. marks.Select(m => new PhotoPoint((m.X - left) * times, (m.Y - top) * times))];
        Parsed<PhotoScale> scale = moved.Length == 4
            ? PhotoScale.FromCard(moved)
            : moved[0].PixelsTo(moved[1]) >= 1 && length > Length.Zero
                ? PhotoScale.FromLength(length, moved[0].PixelsTo(moved[1]))
                : new InputProblem("The two marks lie on one place.", "scale", "Mark two places on the ruler, far apart.");
        if (!scale.TryGet(out PhotoScale? found)) return scale.Problem!;
        return new PhotoSquare(Photograph.FromRgba(pixels, pixels, PhotoScript.Pixels(left, top, side, pixels)), found, left, top, times);
    }

    /// <summary>All of the square.</summary>
    public PhotoArea Area => new(Photograph.Middle, Photograph.Width);

    /// <summary>Places of gaps as shown: x, y, x, y.</summary>
    public double[] Shown(IEnumerable<PhotoPoint> gaps) => [.. gaps.SelectMany(g => (double[])[g.X / Times + Left, g.Y / Times + Top])];
}
