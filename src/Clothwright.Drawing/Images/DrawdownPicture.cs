using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Pictures;

namespace Clothwright.Drawing.Images;

/// <summary>Reads a drawdown from a picture file in two tones.</summary>
public static class DrawdownPicture
{
    /// <summary>Reads a picture.</summary>
    /// <param name="file">PNG, or another form the drawing library knows.</param>
    /// <param name="options">How to read it; null for <see cref="DrawdownPictureOptions.Usual"/>.</param>
    /// <returns>The drawdown, or the problem: not a picture, too large, one tone, more than two tones.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Ends or picks are asked for and are below 1.</exception>
    public static Parsed<DrawdownPictureReading> Read(ReadOnlySpan<byte> file, DrawdownPictureOptions? options = null)
    {
        options ??= DrawdownPictureOptions.Usual;
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Ends ?? 1, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Picks ?? 1, 1, nameof(options));
        Parsed<(int Width, byte[] Levels)> tones = PictureTones.Decode(file, options);
        return tones.TryGet(out (int Width, byte[] Levels) seen) ? DrawdownTones.Read(seen.Width, seen.Levels, options) : tones.Problem!;
    }
}
