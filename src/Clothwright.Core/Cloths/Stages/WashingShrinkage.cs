using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Stages;

/// <summary>How much a cloth draws together in its first washing, by fibre and by how open it is.</summary>
public static class WashingShrinkage
{
    private const double UsualTightness = 0.55;

    // Charts give what a fibre usually does; one piece differs from the next, as swatches of one yarn do.
    private static readonly Derived<Ratio> Piece = Derived.Given(
        "scatter from piece to piece", Ratio.Zero, Source.CommonPractice, Calibration.LearnedValue.UsualScatter.Value, "scatter of shrinkage, washing by washing");

    /// <summary>What fulling by hand takes, for fibres that felt.</summary>
    public static Derived<Ratio> Fulled { get; } =
        Derived.FromHabit("shrinkage in fulling", Ratio.FromPercent(20), Ratio.FromPercent(40), Source.CommonPractice);

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
        double halfRange = fibres.StandardDeviation * Spread.UpperNinetyFive;
        Derived<Ratio> byOpenness = Derived.From<Ratio>(
            "shrinkage by fibre and openness",
            new Rule("shrinkage by fibre and openness", "customary shrinkage, at the upper end of its range for an open cloth, at the lower for a close one", Source.CommonPractice),
            fibres,
            tightness,
            (shrinkage, tight) => shrinkage + halfRange * Math.Clamp((UsualTightness - tight) / (1 - UsualTightness), -1, 1));
        Derived<Number> matters = Derived.Given(
            "how much openness matters", Number.FromValue(0.5), Source.CommonPractice, 0.5, formula: "half, from not at all to wholly: no source says");
        return Derived.From<Ratio>(
            label,
            new Rule("shrinkage in the first washing", "shrinkage by fibre + how much openness matters × (shrinkage by openness − shrinkage by fibre); one piece differs from the next", Source.CommonPractice),
            [fibres, byOpenness, matters, Piece],
            v => Math.Max(0, v[0] + v[2] * (v[1] - v[0]) + v[3]));
    }

    /// <summary>Whether every thread is mostly of fibres that felt.</summary>
    /// <param name="threads">Warp or weft.</param>
    public static bool Felts(ThreadSystem threads)
    {
        ArgumentNullException.ThrowIfNull(threads);
        return threads.Order.Repeat.All(y => threads.Yarns[y].Fibres.Shares.Where(s => s.Fibre.Felts).Sum(s => s.MassShare.Value) > 0.5);
    }
}
