using System.Numerics;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Pictures;
using Clothwright.Core.Colours;
using Clothwright.Drawing.Figures;
using SkiaSharp;

namespace Clothwright.Drawing.Faces;

/// <summary>Draws a side of a cloth thread by thread, at true size.</summary>
/// <remarks>
/// First pick at the bottom; end 1 at the left of the front and at the right of the back. Where threads are finer than the dots
/// of the picture, each dot has the mean light of what it covers. Through gaps between threads undyed linen is seen.
/// </remarks>
public static class ClothPicture
{
    private const int MostPixelsPerSide = 8192;
    private const int JpegQuality = 90;
    private const double MetresPerInch = 0.0254; // exact: international inch, 1959

    // A row of a cloth is much like the row above it, so differences from above pack best and soonest.
    private static readonly SKPngEncoderOptions Encoding = new(SKPngEncoderFilterFlags.Up, 1);

    /// <summary>Writes the side as PNG.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="stream">Where to write; stays open.</param>
    /// <param name="face">Front or back.</param>
    /// <param name="dotsPerInch">Dots per inch, above 0; a 1 cm piece of cloth is then 1 cm wide when printed so. Fewer are used where a side would pass 8192 dots.</param>
    /// <param name="frame">How much of the cloth; a swatch if left out.</param>
    /// <param name="lighting">Lamp and eye; a window at the left if left out.</param>
    /// <exception cref="ArgumentException">The cloth has no threads, the frame is empty or the resolution is not above 0.</exception>
    public static void Png(LookDescription cloth, Stream stream, Face face, double dotsPerInch = 300, ClothFrame? frame = null, Lighting? lighting = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using SKBitmap bitmap = Paint(cloth, face, dotsPerInch, frame, lighting ?? Lighting.Window);
        using SKPixmap map = bitmap.PeekPixels();
        using SKData data = map.Encode(Encoding) ?? throw new InvalidOperationException("The drawing library could not write the picture as PNG.");
        data.SaveTo(stream);
    }

    /// <summary>The side as JPEG: threads are finely shaded, so that it takes a quarter of the room of a PNG.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="face">Front or back.</param>
    /// <param name="dotsPerInch">Dots per inch, above 0.</param>
    /// <param name="frame">How much of the cloth.</param>
    internal static JpegPicture Print(LookDescription cloth, Face face, double dotsPerInch, ClothFrame frame)
    {
        using SKBitmap bitmap = Paint(cloth, face, dotsPerInch, frame, Lighting.Window);
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Jpeg, JpegQuality) ?? throw new InvalidOperationException("The drawing library could not write the picture as JPEG.");
        return new JpegPicture(data.ToArray(), bitmap.Width, bitmap.Height);
    }

    private static SKBitmap Paint(LookDescription cloth, Face face, double dotsPerInch, ClothFrame? frame, Lighting lighting)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dotsPerInch);
        LookNumbers numbers = LookNumbers.Of(cloth);
        ClothFrame shown = frame ?? ClothFrame.Swatch(cloth);
        double across = shown.Width.Metres;
        double along = shown.Height.Metres;
        if (across <= 0 || along <= 0) throw new ArgumentException("A picture of a cloth has a width and a height.", nameof(frame));
        double dots = Math.Min(dotsPerInch, MostPixelsPerSide * MetresPerInch / Math.Max(across, along));
        int width = Math.Max(1, (int)Math.Round(across / MetresPerInch * dots));
        int height = Math.Max(1, (int)Math.Round(along / MetresPerInch * dots));

        // The back shows what the front did, from the edge that lies at the left when it is turned over.
        double left = shown.Left.Millimetres;
        if (face == Face.Back) left = cloth.Width is { } whole ? Math.Max(0, whole.Millimetres - across * 1000 - left) : 0;
        var view = new ClothView(face, left, 0, across * 1000 / width, width, height, lighting, LinearColour.From(Palette.Linen));
        return Paint(new ClothPainter(numbers, view, quick: true), width, height);
    }

    private static SKBitmap Paint(ClothPainter painter, int width, int height)
    {
        var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        byte[] pixels = new byte[width * height * 4];
        Parallel.For(0, height, y =>
        {
            Span<Vector3> light = new Vector3[width];
            painter.Row(height - 1 - y, light);
            Span<byte> row = pixels.AsSpan(y * width * 4, width * 4);
            for (int x = 0; x < width; x++)
            {
                SrgbColour colour = new LinearColour(light[x].X, light[x].Y, light[x].Z).ToSrgb();
                row[4 * x] = colour.Red;
                row[4 * x + 1] = colour.Green;
                row[4 * x + 2] = colour.Blue;
                row[4 * x + 3] = 255;
            }
        });
        System.Runtime.InteropServices.Marshal.Copy(pixels, 0, bitmap.GetPixels(), pixels.Length);
        return bitmap;
    }
}
