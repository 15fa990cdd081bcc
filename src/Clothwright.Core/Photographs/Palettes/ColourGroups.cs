using Clothwright.Core.Colours;
using Clothwright.Core.Colours.Stripes;

namespace Clothwright.Core.Photographs.Palettes;

/// <summary>Groups lights by likeness: weighted means in OKLab, begun by lot with a fixed seed, then groups that look alike made one.</summary>
/// <remarks>
/// k-means (S. Lloyd) begun as k-means++ (D. Arthur and S. Vassilvitskii, 2007), both from memory, over a histogram of 32 steps each way.
/// </remarks>
internal static class ColourGroups
{
    private const int Steps = 32;
    private const int Rounds = 20;
    private const int Begun = 12;
    private const double LooksAlike = 5;
    private const ulong Seed = 5;

    /// <summary>Middles of the groups, as light.</summary>
    /// <param name="lights">The lights, each with its weight above 0.</param>
    public static List<LinearColour> Of(IReadOnlyList<(LinearColour Light, double Weight)> lights)
    {
        (LinearColour Light, double Weight, OkLab Lab)[] bins = Histogram(lights);
        List<OkLab> middles = Begin(bins);
        List<(LinearColour Light, double Weight)> groups = [];
        for (int round = 0; round < Rounds; round++)
        {
            groups = Means(bins, middles);
            middles = [.. groups.Select(g => OkLab.From(g.Light))];
        }

        return Merged(groups);
    }

    private static (LinearColour Light, double Weight, OkLab Lab)[] Histogram(IReadOnlyList<(LinearColour Light, double Weight)> lights) =>
    [
        .. lights
            .GroupBy(l => OkLab.From(l.Light) is var lab ? ((int)(lab.L * Steps), (int)Math.Floor((lab.A + 0.5) * Steps), (int)Math.Floor((lab.B + 0.5) * Steps)) : default)
            .OrderBy(g => g.Key)
            .Select(g => Mean(g))
            .Select(g => (g.Light, g.Weight, OkLab.From(g.Light))),
    ];

    // The first middle is the heaviest bin; each further one is drawn by its weight times its squared distance to those there are.
    private static List<OkLab> Begin((LinearColour Light, double Weight, OkLab Lab)[] bins)
    {
        var lot = new SplitMix64(Seed);
        List<OkLab> middles = [bins.MaxBy(b => b.Weight).Lab];
        while (middles.Count < Math.Min(Begun, bins.Length))
        {
            double[] pull = [.. bins.Select(b => b.Weight * middles.Min(m => m.DistanceTo(b.Lab) * m.DistanceTo(b.Lab)))];
            double drawn = lot.NextUnit() * pull.Sum();
            int index = 0;
            while (index < pull.Length - 1 && drawn >= pull[index]) drawn -= pull[index++];
            if (pull[index] == 0) break;
            middles.Add(bins[index].Lab);
        }

        return middles;
    }

    private static List<(LinearColour Light, double Weight)> Means((LinearColour Light, double Weight, OkLab Lab)[] bins, List<OkLab> middles) =>
    [
        .. bins
            .GroupBy(b => Enumerable.Range(0, middles.Count).MinBy(m => middles[m].DistanceTo(b.Lab)))
            .OrderBy(g => g.Key)
            .Select(g => Mean(g.Select(b => (b.Light, b.Weight)))),
    ];

    private static List<LinearColour> Merged(List<(LinearColour Light, double Weight)> groups)
    {
        while (groups.Count > 1)
        {
            (int one, int other) = Enumerable.Range(0, groups.Count)
                .SelectMany(i => Enumerable.Range(i + 1, groups.Count - i - 1).Select(j => (i, j)))
                .MinBy(pair => Difference(groups[pair.i].Light, groups[pair.j].Light));
            if (Difference(groups[one].Light, groups[other].Light) >= LooksAlike) break;
            groups[one] = Mean([groups[one], groups[other]]);
            groups.RemoveAt(other);
        }

        return [.. groups.Select(g => g.Light)];
    }

    private static double Difference(LinearColour one, LinearColour other) => ColourDifference.Ciede2000(CieLab.From(one), CieLab.From(other));

    private static (LinearColour Light, double Weight) Mean(IEnumerable<(LinearColour Light, double Weight)> lights)
    {
        var sum = default(LinearColour);
        double weight = 0;
        foreach ((LinearColour light, double w) in lights)
        {
            sum += light * w;
            weight += w;
        }

        return (sum * (1 / weight), weight);
    }
}
