using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Calibration;

/// <summary>A ratio (take-up, shrinkage, share of the sett limit) that starts from the handbook and is corrected by her own swatches.</summary>
/// <remarks>
/// Normal prior, normal measurements with known spread (conjugate normal, Gelman and others, Bayesian Data Analysis, from memory):
/// weights are the reciprocal variances, so few swatches move a sure prior little and an unsure one much.
/// </remarks>
public sealed class LearnedValue
{
    private static readonly Source ConjugateNormal = Source.FromMemoryOf("Gelman and others, Bayesian Data Analysis, conjugate normal");

    private LearnedValue(Derived<Ratio> prior, ImmutableArray<Ratio> measures, Ratio scatter, Derived<Ratio> value)
    {
        Prior = prior;
        Measures = measures;
        Scatter = scatter;
        Value = value;
    }

    /// <summary>How far two pieces of one yarn, sett and finish usually differ when nothing else is known.</summary>
    public static Ratio UsualScatter { get; } = Ratio.FromValue(0.015);

    /// <summary>What the handbook said.</summary>
    public Derived<Ratio> Prior { get; }

    /// <summary>What her swatches measured.</summary>
    public ImmutableArray<Ratio> Measures { get; }

    /// <summary>Standard deviation of one measure about the true value: scatter of pieces and of measuring.</summary>
    public Ratio Scatter { get; }

    /// <summary>Prior and measures together: the mean and how sure it is.</summary>
    public Derived<Ratio> Value { get; }

    /// <summary>What the next piece will show: the mean, with the scatter of a single piece added to its spread.</summary>
    public Derived<Ratio> NextPiece
    {
        get
        {
            string label = Prior.Working.Label;
            Derived<Ratio> piece = Derived.Given("scatter from piece to piece", Ratio.Zero, Source.Measured, Scatter.Value, $"scatter of {label}");
            return Derived.From<Ratio>(label, new Rule("next piece", "learned mean + scatter of one piece", Source.Derivation), Value, piece, (mean, off) => mean + off);
        }
    }

    /// <summary>How much the swatches count, 0 to 1.</summary>
    public double WeightOfMeasures => Weight(Prior.StandardDeviation, Scatter.Value, Measures.Length);

    /// <summary>Puts a prior and measures together.</summary>
    /// <param name="prior">What the handbook says, with its spread.</param>
    /// <param name="measures">What swatches measured; may be empty.</param>
    /// <param name="scatter">Standard deviation of one measure, above 0; <see cref="UsualScatter"/> if left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">The scatter is 0 or less.</exception>
    public static LearnedValue From(Derived<Ratio> prior, IReadOnlyList<Ratio> measures, Ratio? scatter = null)
    {
        ArgumentNullException.ThrowIfNull(prior);
        ArgumentNullException.ThrowIfNull(measures);
        Ratio spread = scatter ?? UsualScatter;
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spread.Value, nameof(scatter));
        if (measures.Count == 0) return new LearnedValue(prior, [], spread, prior);

        string label = prior.Working.Label;
        double weight = Weight(prior.StandardDeviation, spread.Value, measures.Count);
        Derived<Ratio> mean = Derived.Given(
            $"{label}, mean of {measures.Count.ToString(CultureInfo.InvariantCulture)} measured",
            Ratio.FromValue(measures.Average(m => m.Value)),
            Source.Measured,
            spread.Value / Math.Sqrt(measures.Count),
            $"own samples of {label}");
        string w = weight.ToString("0.00", CultureInfo.InvariantCulture);
        Derived<Ratio> value = Derived.From<Ratio>(
            label,
            new Rule("prior and own samples", $"prior × (1 − {w}) + mean of samples × {w}, weights by reciprocal variance", ConjugateNormal),
            prior,
            mean,
            (before, seen) => before + weight * (seen - before));
        return new LearnedValue(prior, [.. measures], spread, value);
    }

    private static double Weight(double priorSpread, double scatter, int count)
    {
        double own = count / (scatter * scatter);
        return count == 0 || priorSpread == 0 ? 0 : own / (own + 1 / (priorSpread * priorSpread));
    }
}
