namespace Clothwright.Core.Photographs.Palettes;

/// <summary>How sharp a picture is, by its strongest edges: a sharp edge is over within one square, a blurred one takes many.</summary>
internal static class PaletteSharpness
{
    private const int Far = 8;
    private const double EdgesShare = 0.01;

    // L* that an edge has to step by to be judged; a fall of light over the whole picture steps by less.
    private const double LeastStep = 12;

    public static double Of(double[,] lightness)
    {
        (int down, int across) = (lightness.GetLength(0), lightness.GetLength(1));
        if (across <= 2 * Far || down <= 2 * Far) return 1;
        double far = Strongest(lightness, Far);
        return far < LeastStep ? 1 : Strongest(lightness, 1) / far;
    }

    // The step that one in a hundred places reaches at the far distance; one edge is stepped over that many times more often from afar.
    private static double Strongest(double[,] lightness, int distance)
    {
        (int down, int across) = (lightness.GetLength(0), lightness.GetLength(1));
        var steps = new List<double>(2 * across * down);
        for (int y = 0; y < down; y++)
        {
            for (int x = 0; x < across; x++)
            {
                if (x + distance < across) steps.Add(Math.Abs(lightness[y, x + distance] - lightness[y, x]));
                if (y + distance < down) steps.Add(Math.Abs(lightness[y + distance, x] - lightness[y, x]));
            }
        }

        steps.Sort();
        return steps[(int)((1 - EdgesShare * distance / Far) * (steps.Count - 1))];
    }
}
