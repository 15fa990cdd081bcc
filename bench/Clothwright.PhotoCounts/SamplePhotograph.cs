using Clothwright.TestKit.Photographs;
using SkiaSharp;

namespace Clothwright.PhotoCounts;

/// <summary>The photograph of the guide: a painted swatch, not a real one, of 9 ends and 7.5 picks in a centimetre.</summary>
internal static class SamplePhotograph
{
    public static void Write(string path)
    {
        var swatch = new SyntheticSwatch
        {
            Name = "tide-line swatch",
            EndsPerCentimetre = 9,
            PicksPerCentimetre = 7.5,
            Weave = ["1100", "0110", "0011", "1001"],
            WarpColours = [(0.12, 0.2, 0.19)],
            WeftColours = [(0.12, 0.2, 0.19)],
            PixelsPerMillimetre = 10,
            Side = 640,
            TurnDegrees = 3,
            TiltDegrees = 2,
            Jitter = 0.04,
            Hairs = 0.1,
            Blur = 0.7,
            Noise = 0.006,
            UnevenLight = 0.3,
            Seed = 9,
        };
        byte[] rgba = SwatchPainter.Rgba(swatch);
        using var bitmap = new SKBitmap(new SKImageInfo(swatch.Side, swatch.Side, SKColorType.Rgba8888, SKAlphaType.Opaque));
        rgba.CopyTo(bitmap.GetPixelSpan());
        using SKData jpeg = bitmap.Encode(SKEncodedImageFormat.Jpeg, 85);
        File.WriteAllBytes(path, jpeg.ToArray());
    }
}
