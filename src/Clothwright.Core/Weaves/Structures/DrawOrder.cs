namespace Clothwright.Core.Weaves.Structures;

/// <summary>Orders in which shafts (or treadles) follow each other, numbered from 1.</summary>
public static class DrawOrder
{
    /// <summary>Straight: 1, 2, … and round again.</summary>
    /// <param name="shafts">Shafts, above 0.</param>
    public static int[] Straight(int shafts) => [.. Enumerable.Range(1, shafts)];

    /// <summary>Up a number of steps and down again, both points single, counted round the shafts.</summary>
    /// <remarks>Levels 0 … L − 1 … 1, each on shaft level mod shafts + 1: 2L − 2 threads (one if L is 1).</remarks>
    /// <param name="levels">Steps from the lower to the upper point, both counted; above 0.</param>
    /// <param name="shafts">Shafts, above 0.</param>
    public static int[] Pointed(int levels, int shafts) =>
        [.. Enumerable.Range(0, levels).Concat(Enumerable.Range(1, Math.Max(0, levels - 2)).Reverse()).Select(l => Wrap(l + 1, shafts))];

    /// <summary>A shaft number counted round.</summary>
    /// <param name="number">Any whole number; 1 is shaft 1, 0 the last.</param>
    /// <param name="shafts">Shafts, above 0.</param>
    public static int Wrap(int number, int shafts) => (((number - 1) % shafts) + shafts) % shafts + 1;
}
