using Clothwright.Core.Colours;

namespace Clothwright.Core.Photographs.Palettes;

/// <summary>Which two colours a mixed light is made of, and how much of each.</summary>
internal static class ColourMixture
{
    /// <summary>The two of a palette whose mixture comes nearest.</summary>
    /// <param name="light">The mixed light.</param>
    /// <param name="colours">The palette, at least one colour.</param>
    /// <returns>Two of the palette by their places in it, and the share of the second, 0 to 1.</returns>
    public static (int First, int Second, double SecondShare) Of(LinearColour light, IReadOnlyList<LinearColour> colours)
    {
        (int First, int Second, double SecondShare) best = (0, 0, 0);
        double nearest = double.MaxValue;
        for (int i = 0; i < colours.Count; i++)
        {
            LinearColour away = light + colours[i] * -1;
            for (int j = i; j < colours.Count; j++)
            {
                LinearColour way = colours[j] + colours[i] * -1;
                double length = Product(way, way);
                double share = length > 0 ? Math.Clamp(Product(away, way) / length, 0, 1) : 0;
                LinearColour left = away + way * -share;
                double distance = Product(left, left);
                if (distance < nearest) (nearest, best) = (distance, (i, j, share));
            }
        }

        return best;
    }

    private static double Product(LinearColour a, LinearColour b) => a.Red * b.Red + a.Green * b.Green + a.Blue * b.Blue;
}
