using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Pieces;

/// <summary>Shrinkage of a cloth along one system of threads: that of the threads, each counted as often as it lies there.</summary>
internal static class WashingShrinkage
{
    private static readonly Rule Mean = new("shrinkage of mixed threads", "sum of each yarn's share of the threads × its shrinkage", Source.CommonPractice);

    /// <summary>The shrinkage along the threads.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="threads">Warp for the length, weft for the width.</param>
    /// <param name="measured">What the weaver measured; null to go by the fibres.</param>
    public static Derived<Ratio> Along(string label, ThreadSystem threads, Ratio? measured)
    {
        if (measured is { } known) return Derived.Given(label, known, Source.Measured);
        int[] counts = [.. threads.Order.Counts(threads.Order.Repeat.Length)];
        int[] used = [.. Enumerable.Range(0, counts.Length).Where(i => counts[i] > 0)];
        double whole = counts.Sum();
        return Derived.From<Ratio>(
            label, Mean, [.. used.Select(i => threads.Yarns[i].Fibres.WashingShrinkage)], v => v.Select((s, i) => counts[used[i]] / whole * s).Sum());
    }
}
