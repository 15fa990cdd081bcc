using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Workings;

/// <summary>Makes numbers that can show their working.</summary>
/// <remarks>
/// The slope of a rule towards each input is found by a central difference of the rule itself, so a rule is written once.
/// Whole numbers (ends, picks, balls) carry no spread: once chosen they are wound exactly.
/// </remarks>
public static class Derived
{
    // Step of the central difference relative to the input; √³ of the double's precision balances rounding against curvature.
    private const double RelativeStep = 6e-6;

    private static readonly Rule DecisionRule = new("decision", "as chosen", Source.Decision);

    /// <summary>A number the weaver chose; it has no spread.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="value">The number.</param>
    public static Derived<T> Decision<T>(string label, T value)
        where T : struct, IQuantity<T> => Leaf(label, value, DecisionRule, Spread.None);

    /// <summary>A number from a table, a label or a measurement.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="value">The number.</param>
    /// <param name="source">Where it comes from.</param>
    /// <param name="standardDeviation">Standard deviation in the base unit; 0 for an exact value.</param>
    /// <param name="cause">Name of the cause of the spread, where other numbers share it; the label if left out.</param>
    /// <param name="formula">What the source says, in words; "as given" if left out.</param>
    public static Derived<T> Given<T>(string label, T value, Source source, double standardDeviation = 0, string? cause = null, string formula = "as given")
        where T : struct, IQuantity<T> =>
        Leaf(label, value, new Rule(label, formula, source), Spread.Of(new Cause(cause ?? label, source), standardDeviation));

    /// <summary>A number from a range in a table: the middle, with the spread of a value anywhere in the range.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="low">Lower edge.</param>
    /// <param name="high">Upper edge.</param>
    /// <param name="source">Where the range comes from.</param>
    /// <param name="cause">Name of the cause of the spread; the label if left out.</param>
    public static Derived<T> FromRange<T>(string label, T low, T high, Source source, string? cause = null)
        where T : struct, IQuantity<T> =>
        Given(
            label,
            T.FromBase((low.BaseValue + high.BaseValue) / 2),
            source,
            Spread.OfRange(low.BaseValue, high.BaseValue),
            cause,
            $"middle of {QuantityText.Format(T.Kind, low.BaseValue, UnitStyle.Metric)} to {QuantityText.Format(T.Kind, high.BaseValue, UnitStyle.Metric)}");

    /// <summary>A number from a range of habit: the middle, with the range taken as what nine of ten cases keep to.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="low">Lower edge.</param>
    /// <param name="high">Upper edge.</param>
    /// <param name="source">Where the range comes from.</param>
    public static Derived<T> FromHabit<T>(string label, T low, T high, Source source)
        where T : struct, IQuantity<T> =>
        Given(
            label,
            T.FromBase((low.BaseValue + high.BaseValue) / 2),
            source,
            (high.BaseValue - low.BaseValue) / (2 * Spread.UpperNinetyFive),
            formula: $"usually {QuantityText.Format(T.Kind, low.BaseValue, UnitStyle.Metric)} to {QuantityText.Format(T.Kind, high.BaseValue, UnitStyle.Metric)}, in nine of ten cases");

    /// <summary>A number computed from one other.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="a">The input.</param>
    /// <param name="compute">The rule as a function of base values, giving a base value.</param>
    public static Derived<T> From<T>(string label, Rule rule, IDerived a, Func<double, double> compute)
        where T : struct, IQuantity<T> => From<T>(label, rule, [a], v => compute(v[0]));

    /// <summary>A number computed from two others.</summary>
    /// <inheritdoc cref="From{T}(string, Rule, IDerived, Func{double, double})" />
    public static Derived<T> From<T>(string label, Rule rule, IDerived a, IDerived b, Func<double, double, double> compute)
        where T : struct, IQuantity<T> => From<T>(label, rule, [a, b], v => compute(v[0], v[1]));

    /// <summary>A number computed from three others.</summary>
    /// <inheritdoc cref="From{T}(string, Rule, IDerived, Func{double, double})" />
    public static Derived<T> From<T>(string label, Rule rule, IDerived a, IDerived b, IDerived c, Func<double, double, double, double> compute)
        where T : struct, IQuantity<T> => From<T>(label, rule, [a, b, c], v => compute(v[0], v[1], v[2]));

    /// <summary>A number computed from any others.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="inputs">The inputs, in the order in which <paramref name="compute"/> takes them.</param>
    /// <param name="compute">The rule as a pure function of the inputs' base values, giving a base value; called several times with one array, which it does not change or keep.</param>
    public static Derived<T> From<T>(string label, Rule rule, IReadOnlyList<IDerived> inputs, Func<double[], double> compute)
        where T : struct, IQuantity<T>
    {
        var workings = ImmutableArray.CreateBuilder<Working>(inputs.Count);
        var values = new double[inputs.Count];
        for (int i = 0; i < values.Length; i++)
        {
            Working working = inputs[i].Working;
            workings.Add(working);
            values[i] = working.BaseValue;
        }

        T value = T.FromBase(compute(values));
        Spread spread = T.Kind == QuantityKind.Whole
            ? Spread.None
            : Spread.Combine(inputs.Select((input, i) => (Slope(compute, values, i, input.Working.Spread), input.Working.Spread)));
        return new Derived<T>(value, new Working(label, T.Kind, value.BaseValue, rule, workings.MoveToImmutable(), spread));
    }

    /// <summary>Sum of numbers of one kind.</summary>
    /// <param name="label">What the sum is called.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="terms">What is added.</param>
    public static Derived<T> Sum<T>(string label, Rule rule, IReadOnlyList<Derived<T>> terms)
        where T : struct, IQuantity<T>
    {
        T value = T.FromBase(terms.Sum(t => t.Value.BaseValue));
        Spread spread = T.Kind == QuantityKind.Whole ? Spread.None : Spread.Combine(terms.Select(t => (1.0, t.Working.Spread)));
        return new Derived<T>(value, new Working(label, T.Kind, value.BaseValue, rule, [.. terms.Select(t => t.Working)], spread));
    }

    private static Derived<T> Leaf<T>(string label, T value, Rule rule, Spread spread)
        where T : struct, IQuantity<T> =>
        new(value, new Working(label, T.Kind, value.BaseValue, rule, [], spread));

    // One input is moved up and down in place and put back.
    private static double Slope(Func<double[], double> compute, double[] values, int index, Spread spread)
    {
        if (spread.Shares.IsEmpty) return 0;
        double middle = values[index];
        double step = Math.Max(Math.Abs(middle), spread.StandardDeviation) * RelativeStep;
        values[index] = middle + step;
        double above = compute(values);
        values[index] = middle - step;
        double below = compute(values);
        values[index] = middle;
        return (above - below) / (2 * step);
    }
}
