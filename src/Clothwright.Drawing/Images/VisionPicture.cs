using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using SkiaSharp;

namespace Clothwright.Drawing.Images;

/// <summary>A picture as another kind of colour vision sees it.</summary>
public static class VisionPicture
{
    /// <summary>The largest picture, in pixels.</summary>
    public const int MostPixels = 64_000_000;

    private const string Mend = "Give a PNG or JPEG picture, for example the face.png that clothwright plan writes.";

    /// <summary>Simulates each pixel; what is transparent stays so.</summary>
    /// <param name="file">PNG, or another form the drawing library knows.</param>
    /// <param name="vision">The kind of vision.</param>
    /// <param name="severity">0 (usual vision) to 1 (cones missing).</param>
    /// <returns>A PNG of the same size, or the problem: not a picture, too large, damaged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The severity is outside 0 to 1.</exception>
    public static Parsed<byte[]> Seen(ReadOnlySpan<byte> file, ColourVision vision, double severity)
    {
        if (severity is not (>= 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(severity), severity, "A severity runs from 0 to 1.");
        if (file.IsEmpty) return new InputProblem("The picture is empty.", "picture", Mend);
        using SKData data = SKData.CreateCopy(file);
        using SKCodec? codec = SKCodec.Create(data);
        if (codec is null) return new InputProblem("The file is not a picture that can be read.", "picture", Mend);
        SKImageInfo size = codec.Info;
        if ((long)size.Width * size.Height > MostPixels)
        {
            return new InputProblem($"The picture is {size.Width} × {size.Height} pixels; at most {MostPixels} pixels are read.", "picture", "Give a smaller picture.");
        }

        using var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul, SKColorSpace.CreateSrgb()));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) != SKCodecResult.Success)
        {
            return new InputProblem("The picture is damaged: it ends too early or holds what cannot be read.", "picture", Mend);
        }

        Change(bitmap.GetPixelSpan(), vision, severity);
        using SKData png = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return png.ToArray();
    }

    // A picture of cloth has few colours, or neighbours alike: each colour is worked out once.
    private static void Change(Span<byte> pixels, ColourVision vision, double severity)
    {
        var known = new Dictionary<int, SrgbColour>();
        for (int i = 0; i < pixels.Length; i += 4)
        {
            int key = pixels[i] << 16 | pixels[i + 1] << 8 | pixels[i + 2];
            if (!known.TryGetValue(key, out SrgbColour seen))
            {
                seen = ColourVisionSimulation.Seen(new SrgbColour(pixels[i], pixels[i + 1], pixels[i + 2]), vision, severity);
                known.Add(key, seen);
            }

            (pixels[i], pixels[i + 1], pixels[i + 2]) = (seen.Red, seen.Green, seen.Blue);
        }
    }
}
