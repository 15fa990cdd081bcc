using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class YarnLabelTests
{
    // Expected tex by definition: 1000 × grams / metres, 1 yd = 0.9144 m, 1 oz = 28.349523125 g.
    [Theory]
    [InlineData("400 m / 100 g", 250)]
    [InlineData("400m/100g", 250)]
    [InlineData("400 m per 100 g", 250)]
    [InlineData("100 g = 400 m", 250)]
    [InlineData("100 g: 400 m", 250)]
    [InlineData("436 yd / 4 oz", 284.4350)]
    [InlineData("109 yd / 50 g", 501.6575)]
    [InlineData("1450 yd/lb", 342.1067)]
    [InlineData("15000 m/kg", 66.66667)]
    public void Length_and_mass_are_read_in_either_order_and_unit(string text, double tex) =>
        Assert.Equal(tex, YarnLabel.Parse(text).Value.Tex, 1e-4);

    [Theory]
    [InlineData("400 m", "length without a mass")]
    [InlineData("100 g", "mass without a length")]
    [InlineData("0 m / 100 g", "has a 0")]
    [InlineData("400 m / 100", "no unit")]
    [InlineData("400 m / furlong", "no mass")]
    [InlineData("400 m / 100 g / 2", "followed by")]
    [InlineData("10,000 m / kg", "comma")]
    [InlineData("8/2", "no unit")]
    public void What_is_no_label_is_refused_with_a_mend(string text, string says)
    {
        InputProblem problem = YarnLabel.Parse(text).Problem!;
        Assert.Contains(says, problem.What, StringComparison.Ordinal);
        Assert.Contains("400 m / 100 g", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_written_label_reads_back_as_the_same_yarn() =>
        Gen.Select(Gen.Double[1, 20000], Gen.Double[1, 5000]).Sample((metres, grams) =>
        {
            var label = new YarnLabel(Length.FromMetres(metres), Mass.FromGrams(grams));
            Assert.InRange(YarnLabel.Parse(label.ToString()).Value.Tex / label.Tex, 1 - 1e-9, 1 + 1e-9);
        });

    [Fact]
    public void A_label_is_surer_than_a_count()
    {
        Derived<LinearDensity> label = YarnLabel.Parse("677.3 m / 100 g").Value.ToLinearDensity();
        Derived<LinearDensity> count = YarnCount.Parse("8/2", CountSystem.Cotton).Value.ToLinearDensity();
        Assert.True(label.StandardDeviation < count.StandardDeviation);
    }

    [Theory]
    [InlineData("400 m / 100 g", null, 250)]
    [InlineData("Nm 28/2", null, 71.42857)]
    [InlineData("8/2", CountSystem.Cotton, 147.63531)]
    [InlineData("8/2 cotton", null, 147.63531)]
    public void A_size_is_read_from_label_or_count(string text, CountSystem? system, double tex) =>
        Assert.Equal(tex, YarnSize.Parse(text, system).Value.Value.Tex, 4);

    [Fact]
    public void A_count_without_system_is_asked_about_with_all_its_readings()
    {
        InputProblem problem = YarnSize.Parse("8/2").Problem!;
        Assert.Contains("in cotton 3360 yd/lb", problem.What, StringComparison.Ordinal);
        Assert.Contains("in worsted 2240 yd/lb", problem.What, StringComparison.Ordinal);
        Assert.Contains("in metric 1984 yd/lb", problem.What, StringComparison.Ordinal);
        Assert.Contains("in linen 1200 yd/lb", problem.What, StringComparison.Ordinal);
        Assert.Contains("in silk-english 6720 yd/lb", problem.What, StringComparison.Ordinal);
        Assert.Contains("Say which system", problem.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("400 m / 0 g", "has a 0")]
    [InlineData("seaweed", "a number is missing")]
    [InlineData("0.0001", "no count system")]
    [InlineData("8/2 Nm", "names the system", CountSystem.Cotton)]
    public void What_is_no_size_is_refused(string text, string says, CountSystem? system = null) =>
        Assert.Contains(says, YarnSize.Parse(text, system).Problem!.What, StringComparison.Ordinal);
}
