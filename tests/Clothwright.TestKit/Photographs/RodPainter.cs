namespace Clothwright.TestKit.Photographs;

/// <summary>Paints yarn wound on a pale rod: wraps run up the picture, a little slanted, each with its plies.</summary>
public static class RodPainter
{
    /// <summary>A rod with its wraps.</summary>
    /// <param name="wrapsPerCentimetre">Wraps in a centimetre.</param>
    /// <param name="cover">Width of a wrap as a share of its spacing; 1 touches.</param>
    public static SyntheticSwatch Rod(double wrapsPerCentimetre, double cover) => new()
    {
        Name = "rod",
        EndsPerCentimetre = wrapsPerCentimetre,
        PicksPerCentimetre = 1,
        WarpCover = cover,
        PixelsPerMillimetre = 12,
        Side = 600,
        Noise = 0.01,
        Jitter = 0.04,
        Seed = 21,
    };

    /// <summary>The photograph in sRGB codes.</summary>
    public static byte[] Rgba(SyntheticSwatch rod)
    {
        var chance = new SeededChance(rod.Seed);
        var wraps = new ThreadPlaces(512, rod.Jitter, chance);
        byte[] rgba = new byte[rod.Side * rod.Side * 4];
        for (int y = 0; y < rod.Side; y++)
        {
            for (int x = 0; x < rod.Side; x++)
            {
                double along = (x + 0.5 + 0.05 * y) / rod.PixelsPerMillimetre;
                (int wrap, double off) = wraps.Nearest(along * rod.EndsPerCentimetre / 10);
                double q = off / (rod.WarpCover / 2);
                double light = Math.Abs(q) < 1
                    ? 0.3 * (0.45 + 0.55 * Math.Sqrt(1 - q * q)) * (1 + 0.1 * Math.Sin(y / 5.0 + 2 * q + wrap))
                    : 0.85;
                // Light falls off to both sides of the round rod.
                double v = (y - rod.Side / 2.0) / rod.Side;
                double code = 255 * Math.Pow(Math.Clamp(light * (1 - 1.5 * v * v) + rod.Noise * chance.Normal(), 0, 1), 1 / 2.2);
                rgba.AsSpan((y * rod.Side + x) * 4, 4).Fill((byte)code);
            }
        }

        return rgba;
    }
}
