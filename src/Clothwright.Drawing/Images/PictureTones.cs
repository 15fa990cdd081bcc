using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Pictures;
using SkiaSharp;

namespace Clothwright.Drawing.Images;

/// <summary>Decodes a picture into levels of grey; what is transparent shows white paper.</summary>
internal static class PictureTones
{
    public static Parsed<(int Width, byte[] Levels)> Decode(ReadOnlySpan<byte> file, DrawdownPictureOptions options)
    {
        const string Mend = "Give a PNG of the drawdown alone, for example ten pixels for each crossing.";
        if (file.IsEmpty) return new InputProblem("The picture is empty.", "picture", Mend);
        if (file.Length > options.MaxBytes) return new InputProblem($"The picture is larger than {options.MaxBytes} bytes.", "picture", Mend);
        using SKData data = SKData.CreateCopy(file);
        using SKCodec? codec = SKCodec.Create(data);
        if (codec is null) return new InputProblem("The file is not a picture that can be read.", "picture", Mend);
        SKImageInfo size = codec.Info;
        if ((long)size.Width * size.Height > options.MaxPixels || size.Width < 1 || size.Height < 1)
        {
            return new InputProblem($"The picture is {size.Width} × {size.Height} pixels; at most {options.MaxPixels} pixels are read.", "picture", Mend);
        }

        using var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        return codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success
            ? (size.Width, Greys(bitmap.GetPixelSpan()))
            : new InputProblem("The picture is damaged: it ends too early or holds what cannot be read.", "picture", Mend);
    }

    // Weights of ITU-R BT.601, as customary for a quick grey; only the order of two tones matters here.
    private static byte[] Greys(ReadOnlySpan<byte> colours)
    {
        byte[] levels = new byte[colours.Length / 4];
        for (int i = 0; i < levels.Length; i++)
        {
            ReadOnlySpan<byte> c = colours.Slice(i * 4, 4);
            int grey = (299 * c[0] + 587 * c[1] + 114 * c[2] + 500) / 1000;
            levels[i] = (byte)((grey * c[3] + 255 * (255 - c[3]) + 127) / 255);
        }

        return levels;
    }
}
