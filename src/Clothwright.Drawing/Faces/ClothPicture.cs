using System.Runtime.InteropServices;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Publishing;
using SkiaSharp;

namespace Clothwright.Drawing.Faces;

/// <summary>Draws a side of a cloth thread by thread, at true colour and true size.</summary>
/// <remarks>
/// First pick at the bottom; end 1 at the left of the front and at the right of the back. Where threads are finer than the dots
/// of the picture, each dot has the mean light of what it covers. Through gaps between threads undyed linen is seen.
/// </remarks>
public static class ClothPicture
{
    // A row of a cloth is much like the row above it, so differences from above pack best and soonest.
    private static readonly SKPngEncoderOptions Encoding = new(SKPngEncoderFilterFlags.Up, 3);

    private const int MostPixelsPerSide = 8192;
    private const double MetresPerInch = 0.0254; // exact: international inch, 1959

    /// <summary>Writes the side as PNG.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="stream">Where to write; stays open.</param>
    /// <param name="face">Front or back.</param>
    /// <param name="dotsPerInch">Dots per inch, above 0; a 1 cm piece of cloth is then 1 cm wide when printed so. Fewer are used where a side would pass 8192 dots.</param>
    /// <param name="frame">How much of the cloth; a swatch if left out.</param>
    /// <exception cref="ArgumentException">The cloth has no threads, the frame is empty or the resolution is not above 0.</exception>
    public static void Png(LookDescription cloth, Stream stream, Face face, double dotsPerInch = 300, ClothFrame? frame = null)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dotsPerInch);
        ClothFrame shown = frame ?? ClothFrame.Swatch(cloth);
        var side = new ClothSide(cloth, face, shown);
        double dots = Math.Min(dotsPerInch, MostPixelsPerSide * MetresPerInch / Math.Max(side.Width, side.Height));
        int width = Math.Max(1, (int)Math.Round(side.Width / MetresPerInch * dots));
        int height = Math.Max(1, (int)Math.Round(side.Height / MetresPerInch * dots));
        byte[] pixels = ClothRaster.Render(side, width, height);
        using SKBitmap bitmap = ToBitmap(pixels, width, height);
        using SKPixmap map = bitmap.PeekPixels();
        using SKData data = map.Encode(Encoding) ?? throw new InvalidOperationException("The drawing library could not write the picture as PNG.");
        data.SaveTo(stream);
    }

    private static SKBitmap ToBitmap(byte[] pixels, int width, int height)
    {
        byte[] padded = new byte[width * height * 4];
        for (int i = 0, at = 0; i < pixels.Length; i += 3, at += 4)
        {
            padded[at] = pixels[i];
            padded[at + 1] = pixels[i + 1];
            padded[at + 2] = pixels[i + 2];
            padded[at + 3] = 255;
        }

        var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        Marshal.Copy(padded, 0, bitmap.GetPixels(), padded.Length);
        return bitmap;
    }
}
