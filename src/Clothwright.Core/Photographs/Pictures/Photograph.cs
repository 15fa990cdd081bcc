using Clothwright.Core.Colours;

namespace Clothwright.Core.Photographs.Pictures;

/// <summary>A photograph as linear light, with smaller copies of itself so that it can be looked at from further away.</summary>
/// <remarks>Light is held in 16 bits for each of red, green and blue; each copy averages two by two pixels of the one before.</remarks>
public sealed class Photograph
{
    /// <summary>The largest photograph that is read, in pixels.</summary>
    public const int MostPixels = 64_000_000;

    private static readonly ushort[] Decoded =
        [.. Enumerable.Range(0, 256).Select(code => (ushort)Math.Round(LinearColour.From(new SrgbColour((byte)code, 0, 0)).Red * ushort.MaxValue))];

    private readonly List<Level> _levels = [];

    private Photograph(int width, int height)
    {
        Width = width;
        Height = height;
    }

    /// <summary>Width in pixels.</summary>
    public int Width { get; }

    /// <summary>Height in pixels.</summary>
    public int Height { get; }

    /// <summary>The middle of the picture.</summary>
    public PhotoPoint Middle => new(Width / 2.0, Height / 2.0);

    /// <summary>A photograph from the codes of its pixels.</summary>
    /// <param name="width">Width in pixels; above 0.</param>
    /// <param name="height">Height in pixels; above 0.</param>
    /// <param name="rgba">Red, green, blue, opacity of each pixel in sRGB codes, rows from the top; opacity is not looked at.</param>
    /// <exception cref="ArgumentException">The number of codes does not fit the size.</exception>
    public static Photograph FromRgba(int width, int height, ReadOnlySpan<byte> rgba)
    {
        if (width < 1 || height < 1 || (long)width * height > MostPixels || rgba.Length != width * height * 4)
        {
            throw new ArgumentException($"{rgba.Length} codes are no picture of {width} × {height} pixels.", nameof(rgba));
        }

        var photograph = new Photograph(width, height);
        ushort[] light = new ushort[width * height * 3];
        for (int from = 0, to = 0; from < rgba.Length; from += 4, to += 3)
        {
            light[to] = Decoded[rgba[from]];
            light[to + 1] = Decoded[rgba[from + 1]];
            light[to + 2] = Decoded[rgba[from + 2]];
        }

        photograph._levels.Add(new Level(width, height, light));
        while (photograph._levels[^1] is { Width: >= 64, Height: >= 64 } last) photograph._levels.Add(last.Halved());
        return photograph;
    }

    /// <summary>The light around a place, averaged over a square of the given size.</summary>
    /// <param name="place">The place; outside the picture its edge goes on.</param>
    /// <param name="pixels">Side of the square in pixels; below 1 the light between pixels is given.</param>
    public LinearColour LightAt(PhotoPoint place, double pixels)
    {
        int index = pixels < 1.5 ? 0 : Math.Min(_levels.Count - 1, (int)Math.Round(Math.Log2(pixels)));
        Level level = _levels[index];
        double scale = 1.0 / (1 << index);
        return level.At(place.X * scale - 0.5, place.Y * scale - 0.5);
    }

    private sealed record Level(int Width, int Height, ushort[] Light)
    {
        public Level Halved()
        {
            (int width, int height) = (Width / 2, Height / 2);
            ushort[] light = new ushort[width * height * 3];
            for (int y = 0; y < height; y++)
            {
                int above = 2 * y * Width * 3;
                int below = above + Width * 3;
                int to = y * width * 3;
                for (int x = 0; x < width; x++, above += 6, below += 6, to += 3)
                {
                    for (int c = 0; c < 3; c++)
                    {
                        light[to + c] = (ushort)((Light[above + c] + Light[above + 3 + c] + Light[below + c] + Light[below + 3 + c] + 2) / 4);
                    }
                }
            }

            return new Level(width, height, light);
        }

        public LinearColour At(double x, double y)
        {
            x = Math.Clamp(x, 0, Width - 1.001);
            y = Math.Clamp(y, 0, Height - 1.001);
            (int left, int top) = ((int)x, (int)y);
            (double u, double v) = (x - left, y - top);
            int a = (top * Width + left) * 3;
            int right = Width > 1 ? 3 : 0;
            int b = Height > 1 ? a + Width * 3 : a;
            double ul = (1 - u) * (1 - v) / ushort.MaxValue;
            double ur = u * (1 - v) / ushort.MaxValue;
            double ll = (1 - u) * v / ushort.MaxValue;
            double lr = u * v / ushort.MaxValue;
            return new LinearColour(
                Light[a] * ul + Light[a + right] * ur + Light[b] * ll + Light[b + right] * lr,
                Light[a + 1] * ul + Light[a + right + 1] * ur + Light[b + 1] * ll + Light[b + right + 1] * lr,
                Light[a + 2] * ul + Light[a + right + 2] * ur + Light[b + 2] * ll + Light[b + right + 2] * lr);
        }
    }
}
