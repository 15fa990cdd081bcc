using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using SkiaSharp;

namespace Clothwright.Drawing.Images;

/// <summary>Reads a photograph as a camera or a telephone writes it.</summary>
public static class PhotographFile
{
    private const string Mend = "Give a JPEG or PNG photograph of the swatch.";

    /// <summary>Decodes a photograph; one that the camera marked as lying on its side is stood up.</summary>
    /// <param name="file">JPEG, PNG, or another form the drawing library knows.</param>
    /// <returns>The photograph, or the problem: not a picture, too large, damaged.</returns>
    public static Parsed<Photograph> Read(ReadOnlySpan<byte> file)
    {
        if (file.IsEmpty) return new InputProblem("The photograph is empty.", "photo", Mend);
        using SKData data = SKData.CreateCopy(file);
        using SKCodec? codec = SKCodec.Create(data);
        if (codec is null) return new InputProblem("The file is not a picture that can be read.", "photo", Mend);
        SKImageInfo size = codec.Info;
        if (size.Width < 1 || size.Height < 1 || (long)size.Width * size.Height > Photograph.MostPixels)
        {
            return new InputProblem($"The photograph is {size.Width} × {size.Height} pixels; at most {Photograph.MostPixels} pixels are read.", "photo", "Cut out the part that shows the cloth and the ruler.");
        }

        using var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul, SKColorSpace.CreateSrgb()));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) != SKCodecResult.Success)
        {
            return new InputProblem("The photograph is damaged: it ends too early or holds what cannot be read.", "photo", Mend);
        }

        using SKBitmap upright = Upright(bitmap, codec.EncodedOrigin);
        return Photograph.FromRgba(upright.Width, upright.Height, upright.GetPixelSpan());
    }

    // Only the four turns a hand makes; mirrored pictures do not come from cameras and are read as they lie.
    private static SKBitmap Upright(SKBitmap bitmap, SKEncodedOrigin origin)
    {
        (int quarters, bool swap) = origin switch
        {
            SKEncodedOrigin.RightTop => (1, true),
            SKEncodedOrigin.BottomRight => (2, false),
            SKEncodedOrigin.LeftBottom => (3, true),
            _ => (0, false),
        };
        var upright = new SKBitmap(new SKImageInfo(swap ? bitmap.Height : bitmap.Width, swap ? bitmap.Width : bitmap.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul, bitmap.ColorSpace));
        using var canvas = new SKCanvas(upright);
        canvas.Translate(upright.Width / 2f, upright.Height / 2f);
        canvas.RotateDegrees(90 * quarters);
        canvas.DrawBitmap(bitmap, -bitmap.Width / 2f, -bitmap.Height / 2f);
        canvas.Flush();
        return upright;
    }
}
