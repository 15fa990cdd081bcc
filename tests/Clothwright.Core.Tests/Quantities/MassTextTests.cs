using Clothwright.Core.Quantities;
using CsCheck;

namespace Clothwright.Core.Tests.Quantities;

public class MassTextTests
{
    // 1 lb = 453.59237 g = 16 oz = 7000 grains = 256 drams, exactly (international pound, 1959).
    [Theory]
    [InlineData("200 g", 200)]
    [InlineData("200g", 200)]
    [InlineData("1.2 kg", 1200)]
    [InlineData("4 oz", 113.3980925)]
    [InlineData("1 3/4 oz", 49.61166546875)]
    [InlineData("1 lb", 453.59237)]
    [InlineData("2 lb 4 oz", 1020.5828325)]
    [InlineData("25 grains", 1.61997275)]
    [InlineData("1 dram", 1.7718451953125)]
    public void Masses_are_read_in_metric_and_customary_units(string text, double grams) =>
        Assert.Equal(grams, MassText.Parse(text).Value.Grams, 9);

    [Theory]
    [InlineData("100", 3)]
    [InlineData("100 gr", 4)]
    [InlineData("−5 g", 0)]
    [InlineData("four oz", 0)]
    public void What_is_no_mass_is_refused_at_its_place(string text, int position)
    {
        InputProblem problem = MassText.Parse(text, "offer.netMass").Problem!;
        Assert.Equal(position, problem.Position);
        Assert.Contains("200 g", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_written_mass_reads_back_to_the_digits_written() =>
        Gen.Double[0.001, 20].Sample(kilograms =>
        {
            foreach (UnitStyle style in Enum.GetValues<UnitStyle>())
            {
                Assert.InRange(MassText.Parse(QuantityText.Format(QuantityKind.Mass, kilograms, style)).Value.Kilograms / kilograms, 0.94, 1.06);
            }
        });
}
