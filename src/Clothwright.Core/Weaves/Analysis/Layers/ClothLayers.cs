using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>Whether a cloth hangs together, and if not, what it falls into.</summary>
/// <remarks>
/// At each crossing the upper thread lies on the lower. A set of threads can be lifted off if every thread in it lies on every thread it
/// crosses outside the set. A cloth hangs together if no such set exists but all or nothing; the smallest pieces, from top to bottom, are its layers.
/// </remarks>
/// <param name="Components">The pieces from top to bottom, loose threads among them.</param>
public sealed record ClothLayers(ImmutableArray<ClothLayer> Components)
{
    /// <summary>Whether the cloth is one piece.</summary>
    public bool HangsTogether => Components.Length == 1;

    /// <summary>The pieces that are cloth, from top to bottom.</summary>
    public ImmutableArray<ClothLayer> Layers => [.. Components.Where(c => !c.IsLooseThread)];

    /// <summary>0-based ends that nothing holds, from top to bottom.</summary>
    public ImmutableArray<int> LooseEnds => [.. Components.Where(c => c.IsLooseThread).SelectMany(c => c.Ends)];

    /// <summary>0-based picks that nothing holds, from top to bottom.</summary>
    public ImmutableArray<int> LoosePicks => [.. Components.Where(c => c.IsLooseThread).SelectMany(c => c.Picks)];

    /// <summary>Finds the layers. One repeat settles the endless cloth; a finished piece is tested as it is.</summary>
    /// <remarks>
    /// Sums test (C. R. J. Clapham, When a fabric hangs together, Bulletin of the London Mathematical Society 12, 1980, from memory):
    /// with picks in rising order of their warp crossings r and ends in falling order of theirs, c, the first s picks and t ends can be
    /// lifted off exactly when c₁ + … + c_t − r₁ − … − r_s = t · (picks − s). All such pairs form a chain, and its steps are the pieces.
    /// </remarks>
    /// <param name="cloth">The drawdown.</param>
    public static ClothLayers Of(Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return Of(new ClothLines(cloth));
    }

    internal static ClothLayers Of(ClothLines lines)
    {
        Drawdown cloth = lines.Cloth;
        SummedLines picks = SummedLines.Rising(lines.PickSums, lines.Picks, cloth.Ends);
        SummedLines ends = SummedLines.Falling(lines.EndSums, lines.Ends, cloth.Picks);
        var pieces = ImmutableArray.CreateBuilder<ClothLayer>();
        int donePicks = 0;
        int doneEnds = 0;
        int t = 0;
        long endSum = 0;
        long pickSum = 0;
        for (int s = 0; s <= cloth.Picks; s++)
        {
            int others = cloth.Picks - s;
            if (s > 0) pickSum += picks.Sums[s - 1];
            while (t < cloth.Ends && ends.Sums[t] > others) endSum += ends.Sums[t++];
            if (endSum - pickSum != (long)t * others) continue;
            Cut(s, t);

            // Ends that lie exactly over the other picks and under these can be taken one by one.
            while (t < cloth.Ends && ends.Sums[t] == others)
            {
                endSum += ends.Sums[t++];
                Cut(s, t);
            }
        }

        return new ClothLayers(pieces.ToImmutable());

        void Cut(int s, int t)
        {
            if (s == donePicks && t == doneEnds) return;
            pieces.Add(new ClothLayer(ends.Taken(doneEnds, t), picks.Taken(donePicks, s)));
            donePicks = s;
            doneEnds = t;
        }
    }
}
