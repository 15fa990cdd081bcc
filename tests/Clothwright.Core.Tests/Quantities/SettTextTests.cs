using Clothwright.Core.Quantities;
using CsCheck;

namespace Clothwright.Core.Tests.Quantities;

public class SettTextTests
{
    [Theory]
    [InlineData("8/cm", 8)]
    [InlineData("8 / cm", 8)]
    [InlineData("80/10cm", 8)]
    [InlineData("80/10 cm", 8)]
    [InlineData("8 per cm", 8)]
    [InlineData("8 ends per cm", 8)]
    [InlineData("20/in", 7.874015748)]
    [InlineData("20 epi", 7.874015748)]
    [InlineData("20 e.p.i.", 7.874015748)]
    [InlineData("20 PPI", 7.874015748)]
    [InlineData("20 wpi", 7.874015748)]
    [InlineData("7.5 dents/in", 2.952755906)]
    [InlineData("80/4in", 7.874015748)]
    [InlineData("12/\"", 4.724409449)]
    public void Setts_are_read_in_metric_and_customary_units(string text, double perCentimetre) =>
        Assert.Equal(perCentimetre, SettText.Parse(text).Value.PerCentimetre, 9);

    [Theory]
    [InlineData("0/cm", 0, "is 0")]
    [InlineData("-8/cm", 0, "below 0")]
    [InlineData("twenty", 0, "start with a number")]
    [InlineData("20", 2, "which width")]
    [InlineData("20 per", 6, "no width")]
    [InlineData("20/0cm", 3, "is 0")]
    [InlineData("20 epi wide", 7, "followed by")]
    [InlineData("7,5/in", 1, "comma")]
    [InlineData("20/g", 3, "no width")]
    public void What_is_no_sett_is_refused_at_its_place_with_a_mend(string text, int position, string says)
    {
        InputProblem problem = SettText.Parse(text, "warp.sett").Problem!;
        Assert.Contains(says, problem.What, StringComparison.Ordinal);
        Assert.Equal(position, problem.Position);
        Assert.NotEqual("", problem.Mend);
    }

    [Fact]
    public void A_written_sett_reads_back_to_the_digits_written() =>
        Gen.Double[50, 20000].Sample(perMetre =>
        {
            foreach (UnitStyle style in Enum.GetValues<UnitStyle>())
            {
                Assert.InRange(SettText.Parse(QuantityText.Format(QuantityKind.Sett, perMetre, style)).Value.PerMetre / perMetre, 0.95, 1.05);
            }
        });
}
