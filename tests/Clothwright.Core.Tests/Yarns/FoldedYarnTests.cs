using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class FoldedYarnTests
{
    [Fact]
    public void Strands_together_weigh_their_sum() =>
        Gen.Double[5, 500].Array[1, 6].Sample(tex =>
            Assert.Equal(tex.Sum(), FoldedYarn.Together("thread", [.. tex.Select(Strand)]).Value.Tex, 1e-9));

    [Fact]
    public void A_doubled_strand_is_as_uncertain_as_the_strand_itself()
    {
        Derived<LinearDensity> strand = YarnCount.Parse("16/2", CountSystem.Cotton).Value.ToLinearDensity();
        Derived<LinearDensity> doubled = FoldedYarn.Together("doubled weft", strand, strand);
        // Both ends come from one cone, so their errors do not average out: 2 × the strand's deviation, not √2 ×.
        Assert.Equal(2 * strand.StandardDeviation, doubled.StandardDeviation, 1e-9);
    }

    [Fact]
    public void A_loop_of_a_boucle_counts_with_its_own_length() =>
        Assert.Equal(75, FoldedYarn.LongerStrand(Strand(30), Given(2.5)).Value.Tex, 1e-9);

    [Fact]
    public void A_yarn_that_got_shorter_in_folding_is_heavier_per_length() =>
        // R = ply × T / (1 − c): 2 × 34 tex with 1.876 % take-up is R 69.3 tex (ISO 1139 example, from memory).
        Assert.Equal(69.3, FoldedYarn.Contracted(Strand(68), Given(0.01876)).Value.Tex, 1e-3);

    [Fact]
    public void Take_up_makes_a_count_heavier_whatever_the_system() =>
        Gen.Select(Gen.OneOf(CountSystem.Cotton, CountSystem.Metric, CountSystem.Denier), Gen.Double[1, 100], Gen.Double[0.001, 0.4]).Sample((system, number, takeUp) =>
        {
            YarnCount count = YarnCount.Of(system, number, 2);
            Assert.Equal(count.Tex / (1 - takeUp), count.ToLinearDensity(Given(takeUp)).Value.Tex, 1e-9 * count.Tex);
        });

    private static Derived<LinearDensity> Strand(double tex) => Derived.Given("strand", LinearDensity.FromTex(tex), Source.Measured);

    private static Derived<Ratio> Given(double value) => Derived.Given("factor", Ratio.FromValue(value), Source.Measured);
}
