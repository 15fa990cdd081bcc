using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Tests.Workings;

public class DerivedTests
{
    private static readonly Rule Product = new("product", "a × b", Source.Derivation);

    private static Derived<Ratio> Measured(string label, double value, double deviation) =>
        Derived.Given(label, Ratio.FromValue(value), Source.Measured, deviation);

    [Fact]
    public void Relative_spreads_of_a_product_add_in_squares()
    {
        Derived<Ratio> product = Derived.From<Ratio>("area", Product, Measured("a", 10, 0.3), Measured("b", 20, 0.8), (a, b) => a * b);

        Assert.Equal(200, product.Value.Value, 9);
        // JCGM 100:2008 5.1.6 (from memory): relative variances add: 0.03² + 0.04² = 0.05².
        Assert.Equal(200 * 0.05, product.StandardDeviation, 6);
    }

    [Fact]
    public void A_cause_shared_by_both_inputs_is_not_counted_twice()
    {
        Derived<Ratio> a = Measured("a", 10, 0.5);
        Derived<Ratio> half = Derived.From<Ratio>("half", Product, a, v => v / 2);
        Derived<Ratio> difference = Derived.From<Ratio>("rest", Product, a, half, (whole, part) => whole - part);

        // whole − half = half of the whole, so its deviation is half too, not √(0.5² + 0.25²).
        Assert.Equal(0.25, difference.StandardDeviation, 6);
    }

    [Fact]
    public void Whole_numbers_carry_no_spread()
    {
        Derived<Whole> ends = Derived.From<Whole>("ends", Product, Measured("width", 20.3, 1), w => w * 8);

        Assert.Equal(162, ends.Value.Count);
        Assert.Equal(0, ends.StandardDeviation);
    }

    [Fact]
    public void A_range_stands_for_a_value_anywhere_in_it()
    {
        Derived<Ratio> shrinkage = Derived.FromRange("shrinkage", Ratio.FromPercent(4), Ratio.FromPercent(10), Source.CommonPractice);

        Assert.Equal(0.07, shrinkage.Value.Value, 12);
        Assert.Equal(0.06 / Math.Sqrt(12), shrinkage.StandardDeviation, 12);
        Assert.Equal(0.07 + 1.6448536 * 0.06 / Math.Sqrt(12), shrinkage.Upper95.Value, 6);
    }
}
