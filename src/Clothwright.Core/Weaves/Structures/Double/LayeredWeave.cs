using System.Collections.Immutable;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Several plain cloths woven one above the other on a straight draw, two shafts a layer.</summary>
public static class LayeredWeave
{
    /// <summary>To weave a lower layer the whole warp of the layers above it is lifted out of the way.</summary>
    public static Rule Rule { get; } = new(
        "layers", "layers on every k-th end; a pick of a layer lifts all ends of the layers above it and one of the layer's two shafts", Source.Derivation);

    /// <summary>The shafts to lift for a pick.</summary>
    /// <param name="layers">Layers, 2 to 32.</param>
    /// <param name="layer">Layer of the pick, 1 on top.</param>
    /// <param name="second">The second of the layer's two sheds.</param>
    public static ShaftSet Lift(int layers, int layer, bool second)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(layer, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(layer, layers);
        ShaftSet lift = ShaftSet.Of(layer + (second ? layers : 0));
        for (int above = 1; above < layer; above++) lift |= ShaftSet.Of(above, above + layers);
        return lift;
    }

    internal static Weave InOrder(string name, int layers, ImmutableArray<(int Layer, bool Second)> picks) =>
        Weave.FromLifts(name, Rule, DrawOrder.Straight(2 * layers), [.. picks.Select(p => Lift(layers, p.Layer, p.Second))]) with { Layers = layers };
}
