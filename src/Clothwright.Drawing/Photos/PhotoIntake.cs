using Clothwright.Core.Quantities;
using SkiaSharp;

namespace Clothwright.Drawing.Photos;

/// <summary>Takes a photo in: checks that it is one, turns it upright, makes it smaller, and writes it anew.</summary>
/// <remarks>Nothing of the file itself is kept, so neither its notes (place, time, camera) nor anything hidden in it.</remarks>
public static class PhotoIntake
{
    /// <summary>The longer side of a photo that is kept, in pixels.</summary>
    public const int LongerSidePixels = 1600;

    // A small file can unfold into a very large picture: 100 million pixels take 400 MB.
    private const long MostPixels = 100_000_000;
    private const int Quality = 88;

    private static readonly SKEncodedImageFormat[] Taken = [SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png, SKEncodedImageFormat.Webp];

    /// <summary>Takes a photo in.</summary>
    /// <param name="file">A JPEG, PNG or WebP file.</param>
    /// <returns>The photo as it is to be kept, or why it cannot be.</returns>
    public static Parsed<StoredPhoto> Take(byte[] file)
    {
        ArgumentNullException.ThrowIfNull(file);
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null || !Taken.Contains(codec.EncodedFormat)) return Problem("The file is no photo that can be read.", "Send a JPEG, PNG or WebP file.");
        if ((long)codec.Info.Width * codec.Info.Height > MostPixels) return Problem($"The photo has {codec.Info.Width} × {codec.Info.Height} pixels.", "Make it smaller, for example 3000 × 2000 pixels.");
        using var srgb = SKColorSpace.CreateSrgb();
        using var raw = new SKBitmap(new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, SKAlphaType.Premul, srgb));
        SKCodecResult result = codec.GetPixels(raw.Info, raw.GetPixels());
        if (result is not SKCodecResult.Success) return Problem("The photo is damaged: it ends before it is whole.", "Take it again, or save it anew from the program that shows it.");
        return Written(raw, codec.EncodedOrigin, srgb);
    }

    private static StoredPhoto Written(SKBitmap raw, SKEncodedOrigin origin, SKColorSpace srgb)
    {
        bool sideways = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        (int width, int height) = sideways ? (raw.Height, raw.Width) : (raw.Width, raw.Height);
        double scale = Math.Min(1, (double)LongerSidePixels / Math.Max(width, height));
        var size = new SKSizeI(Math.Max(1, (int)Math.Round(width * scale)), Math.Max(1, (int)Math.Round(height * scale)));
        using var upright = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Opaque, srgb));
        using (var canvas = new SKCanvas(upright))
        {
            // A picture that can be seen through is laid on white.
            canvas.Clear(SKColors.White);
            canvas.Scale((float)size.Width / width, (float)size.Height / height);
            Turn(canvas, origin, width, height);
            using var image = SKImage.FromBitmap(raw);
            canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        }

        using SKData jpeg = upright.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return new StoredPhoto(jpeg.ToArray(), size.Width, size.Height);
    }

    // The origin of EXIF says at which corner and along which side the first row of the file stands.
    private static void Turn(SKCanvas canvas, SKEncodedOrigin origin, float width, float height)
    {
        SKMatrix matrix = origin switch
        {
            SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new SKMatrix(0, -1, width, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, width, -1, 0, height, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, height, 0, 0, 1),
            _ => SKMatrix.Identity,
        };
        canvas.Concat(in matrix);
    }

    private static InputProblem Problem(string what, string mend) => new(what, "photo", mend);
}
