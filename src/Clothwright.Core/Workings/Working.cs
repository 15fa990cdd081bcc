using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Workings;

/// <summary>How a number came to be: its rule, its inputs (each with a working of its own) and its spread.</summary>
public sealed class Working
{
    internal Working(string label, QuantityKind kind, double baseValue, Rule rule, ImmutableArray<Working> inputs, Spread spread)
    {
        Label = label;
        Kind = kind;
        BaseValue = baseValue;
        Rule = rule;
        Inputs = inputs;
        Spread = spread;
    }

    /// <summary>What the number is called, for example <c>warp length</c>.</summary>
    public string Label { get; }

    /// <summary>What the number measures.</summary>
    public QuantityKind Kind { get; }

    /// <summary>The number in the base unit of <see cref="Kind"/>.</summary>
    public double BaseValue { get; }

    /// <summary>The rule that made it.</summary>
    public Rule Rule { get; }

    /// <summary>What went in, in the order of the formula.</summary>
    public ImmutableArray<Working> Inputs { get; }

    /// <summary>How uncertain it is, and why.</summary>
    public Spread Spread { get; }

    /// <summary>The value that is not exceeded in 95 of 100 cases, in the base unit (mean + 1.645 standard deviations).</summary>
    public double Upper95 => BaseValue + Spread.UpperNinetyFive * Spread.StandardDeviation;

    /// <summary>The value that is not undercut in 95 of 100 cases, in the base unit.</summary>
    public double Lower95 => BaseValue - Spread.UpperNinetyFive * Spread.StandardDeviation;

    /// <summary>The number with its unit.</summary>
    /// <param name="style">Metric or customary units.</param>
    public string Format(UnitStyle style = UnitStyle.Metric) => QuantityText.Format(Kind, BaseValue, style);

    /// <inheritdoc />
    public override string ToString() => $"{Label} = {Format()}";
}
