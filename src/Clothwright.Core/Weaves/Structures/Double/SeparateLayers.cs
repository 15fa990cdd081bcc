namespace Clothwright.Core.Weaves.Structures;

/// <summary>Cloths woven at the same time and not joined anywhere: a shuttle for each.</summary>
public static class SeparateLayers
{
    /// <summary>One repeat.</summary>
    /// <param name="layers">Layers, 2 to 8.</param>
    public static Weave Of(int layers = 2)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(layers, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(layers, 8);
        int[] yarns = [.. Enumerable.Range(0, layers)];
        Weave weave = LayeredWeave.InOrder(
            $"{layers} separate cloths",
            layers,
            [.. Enumerable.Range(0, 2 * layers).Select(p => (p % layers + 1, p >= layers))]);
        return weave with
        {
            Draft = weave.Draft with { WarpOrder = ThreadOrder.Of(yarns), WeftOrder = ThreadOrder.Of(yarns) },
            YarnNames = [.. yarns.Select(y => $"layer {y + 1}")],
            Notes = [$"{layers} shuttles, one a layer: with a single shuttle the cloths would be joined at the edges.", $"Set the warp {layers} times as close as one cloth wants."],
        };
    }
}
