using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Stages;

/// <summary>How much a cloth draws together in its first washing, by fibre and by how open it is.</summary>
public static class WashingShrinkage
{
    private const double UsualTightness = 0.55;

    /// <summary>What fulling by hand takes, for fibres that felt.</summary>
    public static Derived<Ratio> Fulled { get; } =
        Derived.FromRange("shrinkage in fulling", Ratio.FromPercent(20), Ratio.FromPercent(40), Source.CommonPractice);

    /// <summary>Customary shrinkage of the yarns of one system: mean over the threads.</summary>
    /// <param name="threads">Warp for the length, weft for the width.</param>
    /// <param name="label">What it is called, for example <c>shrinkage in length</c>.</param>
    public static Derived<Ratio> OfFibres(ThreadSystem threads, string label)
    {
        ArgumentNullException.ThrowIfNull(threads);
        int[] used = [.. threads.Order.Repeat.Distinct().Order()];
        if (used.Length == 1) return threads.Yarns[used[0]].Fibres.WashingShrinkage;
        double[] shares = [.. used.Select(yarn => threads.Order.Repeat.Count(y => y == yarn) / (double)threads.Order.Repeat.Length)];
        return Derived.From<Ratio>(
            label,
            new Rule("shrinkage of mixed yarns", "sum of each yarn's share of the threads × its shrinkage", Source.CommonPractice),
            [.. used.Select(yarn => (IDerived)threads.Yarns[yarn].Fibres.WashingShrinkage)],
            values => values.Select((v, i) => shares[i] * v).Sum());
    }

    /// <summary>Shrinkage of this cloth: an open one has room to draw together, a close one has not.</summary>
    /// <param name="fibres">Customary shrinkage of its fibres.</param>
    /// <param name="tightness">Tightness off the loom.</param>
    /// <param name="label">What it is called.</param>
    public static Derived<Ratio> InCloth(Derived<Ratio> fibres, Derived<Ratio> tightness, string label)
    {
        ArgumentNullException.ThrowIfNull(fibres);
        double halfRange = fibres.StandardDeviation * Math.Sqrt(12) / 2;
        return Derived.From<Ratio>(
            label,
            new Rule("shrinkage by fibre and openness", "customary shrinkage, towards the upper end of its range for an open cloth, towards the lower for a close one", Source.CommonPractice),
            fibres,
            tightness,
            (shrinkage, tight) => Math.Max(0, shrinkage + halfRange * 0.5 * Math.Clamp((UsualTightness - tight) / (1 - UsualTightness), -1, 1)));
    }

    /// <summary>Whether every thread is mostly of fibres that felt.</summary>
    /// <param name="threads">Warp or weft.</param>
    public static bool Felts(ThreadSystem threads)
    {
        ArgumentNullException.ThrowIfNull(threads);
        return threads.Order.Repeat.All(y => threads.Yarns[y].Fibres.Shares.Where(s => s.Fibre.Felts).Sum(s => s.MassShare.Value) > 0.5);
    }
}
