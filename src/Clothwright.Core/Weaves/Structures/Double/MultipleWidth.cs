using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Cloth wider than the loom: layers woven with one shuttle and joined at alternate sides (double width has one fold, in the middle of the opened cloth).</summary>
public static class MultipleWidth
{
    /// <summary>One repeat: down through the layers and up again.</summary>
    /// <param name="layers">2 for double width, 3 for triple, up to 8.</param>
    /// <param name="fold">The side of the first fold; the first pick is thrown from the other side.</param>
    public static Weave Of(int layers = 2, ClothSide fold = ClothSide.Right)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(layers, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(layers, 8);
        ClothSide start = fold == ClothSide.Right ? ClothSide.Left : ClothSide.Right;
        string name = layers switch { 2 => "double width", 3 => "triple width", _ => $"{layers} times the width" };
        return LayeredWeave.InOrder(
            name,
            layers,
            [.. Enumerable.Range(1, layers).Select(l => (l, false)), .. Enumerable.Range(1, layers).Reverse().Select(l => (l, true))]) with
        {
            FirstPickFrom = start,
            Notes =
            [
                $"One shuttle; throw the first pick from the {Tube.Side(start)}: the fold comes on the {Tube.Side(fold)}.",
                $"Take a multiple of {2 * layers} ends, set {layers} times as close as one layer wants.",
                "A fishing line or a lighter sett at the fold keeps its ends from crowding; check the lower layer with a mirror.",
            ],
        };
    }

    /// <summary>The cloth at a size; of an odd number of ends the one left out is at the open edges of double width.</summary>
    /// <param name="size">Ends and picks of all layers together.</param>
    /// <param name="layers">2 for double width, 3 for triple, up to 8.</param>
    /// <param name="fold">The side of the first fold.</param>
    /// <exception cref="InputProblemException">The size is outside its limits.</exception>
    public static Weave Of(WeaveSize size, int layers = 2, ClothSide fold = ClothSide.Right)
    {
        Weave repeat = Of(layers, fold);
        bool isEvenEnough = layers == 2 ? size.Ends % 2 == 0 : size.Ends % (2 * layers) == 0;
        Weave weave = repeat.Sized(size, layers == 2 && !isEvenEnough && fold == ClothSide.Right ? 1 : 0);
        return isEvenEnough || layers == 2
            ? weave
            : weave.Noting($"{size.Ends} ends are no multiple of {2 * layers}: the layers differ in ends and a fold may hold a doubled end.");
    }
}
