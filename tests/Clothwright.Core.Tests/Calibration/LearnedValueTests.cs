using Clothwright.Core.Calibration;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using CsCheck;

namespace Clothwright.Core.Tests.Calibration;

public class LearnedValueTests
{
    private static Derived<Ratio> Prior(double mean, double spread) =>
        Derived.Given("warp take-up", Ratio.FromValue(mean), Source.CommonPractice, spread);

    [Fact]
    public void Without_samples_the_handbook_stands()
    {
        Derived<Ratio> prior = Prior(0.09, 0.02);
        LearnedValue learned = LearnedValue.From(prior, []);
        Assert.Same(prior, learned.Value);
        Assert.Equal(0, learned.WeightOfMeasures);
    }

    // Conjugate normal by hand: prior 0.10 ± 0.02, one measure 0.06 with scatter 0.02 meet half way, 0.02/√2 sure.
    [Fact]
    public void A_sample_as_sure_as_the_handbook_meets_it_half_way()
    {
        LearnedValue learned = LearnedValue.From(Prior(0.10, 0.02), [Ratio.FromValue(0.06)], Ratio.FromValue(0.02));
        Assert.Equal(0.08, learned.Value.Value.Value, 1e-12);
        Assert.Equal(0.02 / Math.Sqrt(2), learned.Value.StandardDeviation, 1e-9);
        Assert.Equal(Math.Sqrt(0.0002 + 0.0004), learned.NextPiece.StandardDeviation, 1e-9);
        Assert.Equal(0.08, learned.NextPiece.Value.Value, 1e-12);
        Assert.Equal(2, learned.Value.Working.Inputs.Length);
    }

    [Fact]
    public void An_exact_prior_is_not_moved() =>
        Assert.Equal(0.1, LearnedValue.From(Prior(0.1, 0), [Ratio.FromValue(0.3)]).Value.Value.Value, 1e-12);

    [Fact]
    public void The_learned_value_is_the_conjugate_posterior() =>
        Gen.Select(Gen.Double[0.01, 0.3], Gen.Double[0.005, 0.1], Gen.Double[0.005, 0.05], Gen.Double[0, 0.4].Array[1, 12])
            .Sample((mean, spread, scatter, measures) =>
            {
                LearnedValue learned = LearnedValue.From(Prior(mean, spread), [.. measures.Select(Ratio.FromValue)], Ratio.FromValue(scatter));
                double precision = 1 / (spread * spread) + measures.Length / (scatter * scatter);
                double expected = (mean / (spread * spread) + measures.Sum() / (scatter * scatter)) / precision;
                Assert.Equal(expected, learned.Value.Value.Value, 1e-9);
                Assert.Equal(Math.Sqrt(1 / precision), learned.Value.StandardDeviation, 1e-8);
                Assert.True(learned.Value.StandardDeviation < spread);
                Assert.True(learned.NextPiece.StandardDeviation > scatter);
                Assert.InRange(learned.WeightOfMeasures, 0, 1);
            });

    [Fact]
    public void A_scatter_of_nothing_is_a_slip_of_the_program() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LearnedValue.From(Prior(0.1, 0.1), [], Ratio.Zero));
}
