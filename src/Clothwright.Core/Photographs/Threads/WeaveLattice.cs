using Clothwright.Core.Photographs.Spectra;

namespace Clothwright.Core.Photographs.Threads;

/// <summary>Whether a plain weave, a twill or a satin stands out between two sets of threads at the spacings supposed.</summary>
/// <remarks>
/// A weave that moves by s ends from pick to pick and repeats on n shows in the spectrum at 1/n of the picks' frequency and
/// s/n of the ends' (both signs, for either direction of the line). Two threads taken for one, or one for two, put it elsewhere.
/// </remarks>
internal static class WeaveLattice
{
    // How much of what speaks against a weave is taken off.
    private const double Share = 0.6;

    // Ends' and picks' share of the frequency, and how much less likely the weave is to be met, in nepers.
    private static readonly (double Across, double Down, double Rarity)[] Places =
    [
        (1 / 2.0, 1 / 2.0, 0), (1 / 3.0, 1 / 3.0, 0), (1 / 4.0, 1 / 4.0, 0), (1 / 5.0, 1 / 5.0, 1), (1 / 5.0, 2 / 5.0, 0.5), (2 / 5.0, 1 / 5.0, 0.5),
        (1 / 6.0, 1 / 6.0, 2), (1 / 8.0, 3 / 8.0, 2), (3 / 8.0, 1 / 8.0, 2),
    ];

    /// <summary>How far the most likely weave stands out, in nepers; 0 where none does.</summary>
    /// <param name="search">The spectra.</param>
    /// <param name="across">Threads counted to the right.</param>
    /// <param name="down">Threads counted downwards.</param>
    public static double Standing(RaySearch search, ThreadRay across, ThreadRay down)
    {
        (double sin, double cos) = Math.SinCos(across.AngleRadians);
        (double X, double Y) u = (cos * across.PerMillimetre, sin * across.PerMillimetre);
        (sin, cos) = Math.SinCos(down.AngleRadians);
        (double X, double Y) v = (-sin * down.PerMillimetre, cos * down.PerMillimetre);
        double best = 0;
        foreach ((double a, double b, double rarity) in Places)
        {
            double rising = Around(search, u, v, a, b);
            double falling = Around(search, u, v, a, -b);
            double standing = Math.Max(rising, falling) - rarity;
            // Plain weave has both lines alike; in the others two lines alike are plain weave at twice the spacing.
            if (a < 0.5) standing -= Share * Math.Min(rising, falling);
            // Something at half the place is the weave itself, and this its overtone.
            double lower = Math.Max(
                Math.Max(Around(search, u, v, a / 2, b), Around(search, u, v, a / 2, -b)),
                Math.Max(Around(search, u, v, a, b / 2), Around(search, u, v, a, -b / 2)));
            best = Math.Max(best, standing - Share * lower);
        }

        return best;
    }

    // The place may be a fiftieth of a spacing off, as the spacings themselves are not yet sharp.
    private static double Around(RaySearch search, (double X, double Y) u, (double X, double Y) v, double a, double b)
    {
        double x = a * u.X + b * v.X;
        double y = a * u.Y + b * v.Y;
        LevelSpectra level = search.LevelFor(Math.Sqrt(x * x + y * y) * 1.5);
        double best = 0;
        for (int i = -2; i <= 2; i++)
        {
            for (int j = -2; j <= 2; j++)
            {
                best = Math.Max(best, level.Light(x + 0.01 * (i * u.X + j * v.X), y + 0.01 * (i * u.Y + j * v.Y)));
            }
        }

        return best;
    }
}
