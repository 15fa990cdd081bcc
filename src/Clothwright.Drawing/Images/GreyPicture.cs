using Clothwright.Core.Quantities;
using SkiaSharp;

namespace Clothwright.Drawing.Images;

/// <summary>A picture as levels of grey, 0 black to 255 white; what is transparent shows white paper.</summary>
internal sealed class GreyPicture
{
    private readonly byte[] _levels;

    public GreyPicture(int width, int height, byte[] levels)
    {
        Width = width;
        Height = height;
        _levels = levels;
        Darkest = levels.Min();
        Lightest = levels.Max();
    }

    public int Width { get; }

    public int Height { get; }

    public byte Darkest { get; }

    public byte Lightest { get; }

    /// <summary>A step between neighbouring pixels that is more than noise.</summary>
    public int Step => Math.Max(8, (Lightest - Darkest) / 8);

    public byte this[int x, int y] => _levels[y * Width + x];

    /// <summary>The same picture with rows and columns exchanged.</summary>
    public GreyPicture Turned()
    {
        byte[] turned = new byte[_levels.Length];
        for (int y = 0; y < Height; y++)
        {
            for (int x = 0; x < Width; x++) turned[x * Height + y] = _levels[y * Width + x];
        }

        return new GreyPicture(Height, Width, turned);
    }

    /// <summary>How much the picture changes from each column to the next, in steps that are more than noise; entry x is the change between x − 1 and x.</summary>
    public double[] Changes()
    {
        double[] changes = new double[Width + 1];
        for (int y = 0; y < Height; y++)
        {
            ReadOnlySpan<byte> row = _levels.AsSpan(y * Width, Width);
            for (int x = 1; x < row.Length; x++)
            {
                int change = Math.Abs(row[x] - row[x - 1]);
                if (change >= Step) changes[x] += change;
            }
        }

        return changes;
    }

    public static Parsed<GreyPicture> Decode(ReadOnlySpan<byte> file, DrawdownPictureOptions options)
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
            ? new GreyPicture(size.Width, size.Height, Greys(bitmap.GetPixelSpan()))
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
