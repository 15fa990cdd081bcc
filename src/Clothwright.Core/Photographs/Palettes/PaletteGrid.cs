using Clothwright.Core.Colours;
using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs.Palettes;

/// <summary>A photograph looked at in small squares, burnt and dark spots left aside; averages are of light.</summary>
internal sealed class PaletteGrid
{
    private const int MostAcross = 160;
    private const int MostSamples = 5;

    // Codes above 250 may stand for any light; darker than this in OKLab a camera's noise has more colour than the yarn.
    private const double LeastLightness = 0.08;
    private const double EvenWithin = 0.03;

    private static readonly double Burnt = LinearColour.From(new SrgbColour(251, 0, 0)).Red;

    private PaletteGrid(List<PaletteCell> cells, double burntShare, double darkShare, double edgeSharpness)
    {
        Cells = cells;
        BurntShare = burntShare;
        DarkShare = darkShare;
        EdgeSharpness = edgeSharpness;
    }

    public IReadOnlyList<PaletteCell> Cells { get; }

    public double BurntShare { get; }

    public double DarkShare { get; }

    /// <summary>Step of the strongest edges from one square to the next, as a share of their whole step; 1 where there is no edge to judge by.</summary>
    public double EdgeSharpness { get; }

    public static bool IsBurnt(LinearColour light) => light.Red >= Burnt || light.Green >= Burnt || light.Blue >= Burnt;

    public static PaletteGrid Of(Photograph photo, PhotoPoint from, PhotoPoint to)
    {
        (double width, double height) = (to.X - from.X, to.Y - from.Y);
        double side = Math.Max(1, Math.Max(width, height) / MostAcross);
        (int across, int down) = (Math.Max(1, (int)(width / side)), Math.Max(1, (int)(height / side)));
        int samples = Math.Clamp((int)Math.Round(side), 1, MostSamples);
        var cells = new List<PaletteCell>(across * down);
        double[,] lightness = new double[down, across];
        (int burnt, int dark) = (0, 0);
        Span<OkLab> seen = stackalloc OkLab[MostSamples * MostSamples];
        for (int row = 0; row < down; row++)
        {
            for (int column = 0; column < across; column++)
            {
                var sum = default(LinearColour);
                var all = default(LinearColour);
                int told = 0;
                for (int i = 0; i < samples * samples; i++)
                {
                    LinearColour light = photo.LightAt(new PhotoPoint(
                        from.X + (column + (i % samples + 0.5) / samples) * side, from.Y + (row + (i / samples + 0.5) / samples) * side), 1);
                    all += light;
                    if (IsBurnt(light))
                    {
                        burnt++;
                        continue;
                    }

                    OkLab lab = OkLab.From(light);
                    if (lab.L < LeastLightness)
                    {
                        dark++;
                        continue;
                    }

                    sum += light;
                    seen[told++] = lab;
                }

                lightness[row, column] = CieLab.From(all * (1.0 / (samples * samples))).L;
                if (told > 0) cells.Add(new PaletteCell(sum * (1.0 / told), told, IsEven(seen[..told], OkLab.From(sum * (1.0 / told)))));
            }
        }

        double total = (double)across * down * samples * samples;
        return new PaletteGrid(cells, burnt / total, dark / total, PaletteSharpness.Of(lightness));
    }

    private static bool IsEven(ReadOnlySpan<OkLab> seen, OkLab mean)
    {
        double squares = 0;
        foreach (OkLab lab in seen) squares += lab.DistanceTo(mean) * lab.DistanceTo(mean);
        return squares <= EvenWithin * EvenWithin * seen.Length;
    }
}
