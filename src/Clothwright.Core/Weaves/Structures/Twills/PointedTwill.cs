using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Pointed twill: the draw goes up and comes down again, points single; straight treadling makes zigzags across.</summary>
public static class PointedTwill
{
    /// <summary>Up to the last shaft and down again.</summary>
    public static Rule Rule { get; } = new("pointed twill", "threading 1 … n … 2 (2n − 2 ends, points single), tie-up and treadling of the straight twill", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="figures">Ends up and down.</param>
    public static Weave Of(TwillBase figures)
    {
        int n = figures.Shafts;
        return Weave.FromTreadles($"pointed {figures} twill", Rule, DrawOrder.Pointed(n, n), figures.TieUp, DrawOrder.Straight(n)) with
        {
            BalancingEnds = 1,
            Notes = [DiamondTwill.PointNote(figures), "Add one end on shaft 1 after the last repeat for a balanced edge."],
        };
    }
}
