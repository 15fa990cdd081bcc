using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Diamonds: threading and treadling both pointed, as drawn in. Small ones are called bird's-eye, rosepath or goose-eye.</summary>
public static class DiamondTwill
{
    /// <summary>Pointed both ways.</summary>
    public static Rule Rule { get; } = new(
        "diamond twill", "threading goes up L levels and down again round the n shafts, points single; treadled as drawn in", Source.Derivation);

    /// <summary>Point by point: 1 … n … 2. On three shafts take 1/2 or 2/1.</summary>
    /// <param name="figures">Ends up and down.</param>
    public static Weave Of(TwillBase figures) => WithLevels($"{figures} diamond twill", figures, figures.Shafts);

    /// <summary>Bird's-eye: the smallest diamonds, one point a repeat.</summary>
    /// <param name="figures">Ends up and down.</param>
    public static Weave Birdseye(TwillBase figures) => WithLevels($"{figures} birdseye twill", figures, figures.Shafts);

    /// <summary>Rosepath: the point one end beyond the last shaft, 1 2 3 4 1 4 3 2.</summary>
    /// <param name="figures">Ends up and down.</param>
    public static Weave Rosepath(TwillBase figures) => WithLevels($"{figures} rosepath", figures, figures.Shafts + 1);

    /// <summary>Goose-eye: several runs between the points, so diamond lies within diamond.</summary>
    /// <param name="figures">Ends up and down.</param>
    /// <param name="runs">Runs of all shafts between the points, 1 to 16.</param>
    public static Weave GooseEye(TwillBase figures, int runs = 2)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(runs, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(runs, 16);
        return WithLevels($"{figures} goose-eye", figures, runs * figures.Shafts);
    }

    internal static string PointNote(TwillBase figures) => $"Floats of up to {2 * figures.LongestFloat - 1} stand at the points.";

    private static Weave WithLevels(string name, TwillBase figures, int levels)
    {
        int[] order = DrawOrder.Pointed(levels, figures.Shafts);
        return Weave.FromTreadles(name, Rule, order, figures.TieUp, order) with
        {
            BalancingEnds = 1,
            BalancingPicks = 1,
            Notes = [PointNote(figures), "Add one end and one pick after the last repeat for balanced edges."],
        };
    }
}
