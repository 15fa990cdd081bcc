using System.Collections.Immutable;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Core.Setts;

/// <summary>Takes a weave of several layers apart, so that each layer is set by its own weave.</summary>
internal static class LayerSplit
{
    private const int LongestOrder = 1 << 14;

    /// <summary>The question about one layer, when the weave falls into layers of one size; else the question as it is.</summary>
    internal static SettQuestion Of(SettQuestion question)
    {
        if (question.Layers != 1) return question;
        ImmutableArray<ClothLayer> layers = ClothLayers.Of(question.Weave).Layers;
        if (layers.Length is < 2 or > 4 || layers.Any(l => l.Ends.Length != layers[0].Ends.Length || l.Picks.Length != layers[0].Picks.Length)) return question;
        int[] ends = [.. layers[0].Ends.Order()];
        int[] picks = [.. layers[0].Picks.Order()];
        return question with
        {
            Layers = layers.Length,
            Weave = Drawdown.From(ends.Length, picks.Length, (pick, end) => question.Weave[picks[pick], ends[end]]),
            Warp = question.Warp with { Order = Taken(question.Warp.Order, ends, question.Weave.Ends) },
            Weft = question.Weft with { Order = Taken(question.Weft.Order, picks, question.Weave.Picks) },
        };
    }

    // The order of the threads of one layer, over as many repeats of the weave as bring the order round.
    private static ThreadOrder Taken(ThreadOrder order, int[] threads, int repeat)
    {
        int rounds = 1;
        while (rounds * repeat % order.Repeat.Length != 0 && rounds * threads.Length < LongestOrder) rounds++;
        return ThreadOrder.Of([.. Enumerable.Range(0, rounds).SelectMany(round => threads.Select(t => order[round * repeat + t]))]);
    }
}
