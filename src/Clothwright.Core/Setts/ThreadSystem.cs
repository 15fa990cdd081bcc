using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Setts;

/// <summary>The yarns of a warp, or of a weft, in the order in which they follow each other.</summary>
/// <param name="Yarns">The yarns, numbered from 0 as the order counts them.</param>
/// <param name="Order">Which yarn each thread is.</param>
public sealed record ThreadSystem(ImmutableArray<Yarn> Yarns, ThreadOrder Order)
{
    // Longest stretch over which order and weave are counted together; past it the shares no longer change visibly.
    private const int LongestRound = 1 << 16;

    /// <summary>One yarn throughout.</summary>
    /// <param name="yarn">The yarn.</param>
    public static ThreadSystem Of(Yarn yarn) => new([yarn], ThreadOrder.OneYarn);

    /// <summary>Whether every thread is the same yarn.</summary>
    public bool IsOneYarn => Order.Repeat.All(y => y == Order.Repeat[0]);

    /// <summary>The yarn of a thread.</summary>
    /// <param name="thread">0-based end or pick.</param>
    public Yarn YarnOf(int thread) => Yarns[Order[thread]];

    /// <summary>The problem when the order names a yarn that is not there; null if it is whole.</summary>
    /// <param name="where">Field path, for example <c>warp</c>.</param>
    public InputProblem? Problem(string where)
    {
        if (Yarns.IsDefaultOrEmpty) return new InputProblem("No yarn is given.", where, "Name at least one yarn.");
        return Order.Yarns > Yarns.Length
            ? new InputProblem(
                $"The order calls for yarn {ThreadOrder.YarnName(Order.Yarns - 1)}, and only {Yarns.Length} are given.",
                where,
                $"Name {Order.Yarns} yarns, or use only {ThreadOrder.YarnName(0)} to {ThreadOrder.YarnName(Yarns.Length - 1)} in the order.")
            : null;
    }

    /// <summary>Mean diameter over the threads.</summary>
    public Derived<Length> MeanDiameter() => MeanOf("mean yarn diameter", YarnDiameter.Of, Shares());

    /// <summary>Mean mass per length over the threads.</summary>
    public Derived<LinearDensity> MeanLinearDensity() => MeanOf("mean mass per length", y => y.LinearDensity, Shares());

    /// <summary>Mean diameter, each thread counted as often as it changes face.</summary>
    /// <param name="transitions">Changes of face of each thread of one repeat of the weave.</param>
    internal Derived<Length> MeanCrossingDiameter(ImmutableArray<int> transitions) =>
        MeanOf("mean yarn diameter at the crossings", YarnDiameter.Of, Shares(transitions));

    private double[] Shares() => [.. Order.Counts(Order.Repeat.Length).Select(c => (double)c / Order.Repeat.Length)];

    private double[] Shares(ImmutableArray<int> weights)
    {
        long round = Math.Min(LongestRound, CommonRepeat.Of(weights.Length, Order.Repeat.Length));
        var sums = new double[Order.Yarns];
        for (int i = 0; i < round; i++) sums[Order[i]] += weights[i % weights.Length];
        double whole = sums.Sum();
        return [.. sums.Select(s => s / whole)];
    }

    private Derived<T> MeanOf<T>(string label, Func<Yarn, Derived<T>> measure, double[] shares)
        where T : struct, IQuantity<T>
    {
        int[] used = [.. Enumerable.Range(0, shares.Length).Where(i => shares[i] > 0)];
        if (used.Length == 1) return measure(Yarns[used[0]]);
        return Derived.From<T>(
            label,
            new Rule("mean over the threads", "sum of each yarn's share of the threads × its value", Source.Derivation),
            [.. used.Select(i => (IDerived)measure(Yarns[i]))],
            values => used.Select((yarn, i) => shares[yarn] * values[i]).Sum());
    }
}
