using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>Where the shuttles join the layers of a cloth, and whether the weave runs on round the folds.</summary>
/// <param name="Layers">The layers, from the top.</param>
/// <param name="Folds">Every turn at which a shuttle changes layer, in the order of weaving.</param>
public sealed record LayerJoins(ClothLayers Layers, ImmutableArray<FoldTurn> Folds)
{
    /// <summary>The joins, upper layer first.</summary>
    public ImmutableArray<LayerJoin> Joins =>
        [.. Folds
            .Select(f => new LayerJoin(Math.Min(f.FromLayer, f.ToLayer), Math.Max(f.FromLayer, f.ToLayer), f.Turn.Side))
            .Distinct()
            .OrderBy(j => j.Upper).ThenBy(j => j.Lower).ThenBy(j => j.Side)];

    /// <summary>The turns at which two ends weave as one at the fold.</summary>
    public ImmutableArray<FoldTurn> Faults => [.. Folds.Where(f => f.IsFault)];

    /// <summary>What the layers become.</summary>
    public LayerForm Form => FormOf(Layers.Layers.Length, Joins);

    /// <summary>Follows the shuttles from layer to layer.</summary>
    /// <param name="cloth">The drawdown at its full width.</param>
    /// <param name="start">The side from which every shuttle starts.</param>
    /// <param name="shuttles">Which shuttle throws each pick; one for all if left out.</param>
    public static LayerJoins Of(Drawdown cloth, ClothSide start, ThreadOrder? shuttles = null) =>
        Of(cloth, ClothLayers.Of(cloth), start, shuttles);

    internal static LayerJoins Of(Drawdown cloth, ClothLayers pieces, ClothSide start, ThreadOrder? shuttles)
    {
        ImmutableArray<ClothLayer> layers = pieces.Layers;
        if (layers.Length < 2) return new LayerJoins(pieces, []);
        int[] layerOf = new int[cloth.Picks];
        Array.Fill(layerOf, -1);
        for (int layer = 0; layer < layers.Length; layer++)
        {
            foreach (int pick in layers[layer].Picks) layerOf[pick] = layer;
        }

        var folds = ImmutableArray.CreateBuilder<FoldTurn>();
        foreach (ShuttleTurn turn in ShuttlePath.Of(cloth.Picks, shuttles ?? ThreadOrder.OneYarn, start))
        {
            int pick = turn.Pick % cloth.Picks;
            int next = turn.NextPick % cloth.Picks;
            int from = layerOf[pick];
            int to = layerOf[next];
            if (from < 0 || to < 0 || from == to) continue;
            // Opened out, one of the two layers shows its other side, so crossings alike here alternate there.
            bool runsOn = cloth[pick, Outermost(layers[from], turn.Side)] == cloth[next, Outermost(layers[to], turn.Side)];
            folds.Add(new FoldTurn(turn, from, to, IsFault: !runsOn));
        }

        return new LayerJoins(pieces, folds.ToImmutable());
    }

    private static int Outermost(ClothLayer layer, ClothSide side) => side == ClothSide.Left ? layer.Ends[0] : layer.Ends[^1];

    private static LayerForm FormOf(int layers, ImmutableArray<LayerJoin> joins)
    {
        if (layers < 2) return LayerForm.OneCloth;
        if (joins.IsEmpty) return LayerForm.SeparateCloths;
        if (layers == 2) return joins.Length == 1 ? LayerForm.DoubleWidth : LayerForm.Tube;
        ImmutableArray<LayerJoin> next = [.. joins.Where(j => j.Lower == j.Upper + 1)];
        bool eachToNext = next.Select(j => j.Upper).Distinct().Count() == layers - 1;
        bool lastToFirst = joins.Any(j => j.Upper == 0 && j.Lower == layers - 1);
        if (eachToNext && lastToFirst && joins.All(j => j.Lower == j.Upper + 1 || (j.Upper == 0 && j.Lower == layers - 1))) return LayerForm.Spiral;
        bool alternate = next.Length == joins.Length && next.Length == layers - 1
            && next.Zip(next.Skip(1)).All(pair => pair.First.Side != pair.Second.Side);
        return eachToNext && alternate ? LayerForm.ManyFold : LayerForm.Otherwise;
    }
}
