using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Tests.Looms;

public class ReedTests
{
    // Expected dents per inch by the definition of each writing.
    [Theory]
    [InlineData("10", 10)]
    [InlineData("10-dent", 10)]
    [InlineData("12 dpi", 12)]
    [InlineData("7.5/in", 7.5)]
    [InlineData("15 per inch", 15)]
    [InlineData("40/10", 10.16)]
    [InlineData("30 /10 cm", 7.62)]
    [InlineData("4/cm", 10.16)]
    [InlineData("60 stockport", 30)]
    [InlineData("50 Metric", 12.7)]
    [InlineData("40 Stockport (Manchester)", 20)]
    public void A_reed_is_read_as_weavers_write_it(string text, double dentsPerInch)
    {
        Reed reed = Reed.Parse(text).Value;
        Assert.Equal(dentsPerInch, reed.Dents.PerInch, 1e-9);
        Assert.Equal(text.Trim(), reed.Name);
    }

    [Theory]
    [InlineData("")]
    [InlineData("ten")]
    [InlineData("0")]
    [InlineData("-8")]
    [InlineData("8 furlongs")]
    [InlineData("12345678901234567890")]
    [InlineData("1e5")]
    [InlineData("10\n10")]
    public void A_reed_that_cannot_be_read_says_what_and_how_to_mend_it(string text)
    {
        InputProblem? problem = Reed.Parse(text).Problem;
        Assert.NotNull(problem);
        Assert.Equal("reed", problem.Where);
        Assert.Contains("for example", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_heddle_is_read_as_a_reed_is_with_its_number()
    {
        RigidHeddle heddle = RigidHeddle.Parse("7.5-dent", 3).Value;
        Assert.Equal((7.5, 3), (Math.Round(heddle.Spaces.PerInch, 9), heddle.Count));
        Assert.Equal("heddle", RigidHeddle.Parse("none").Problem!.Where);
        Assert.Contains("0 heddles", RigidHeddle.Parse("10", 0).Problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_reed_system_reads_back_the_number_it_writes()
    {
        foreach (ReedSystem system in ReedSystem.All)
        {
            Assert.Equal(36, system.NumberOf(system.Dents(36)), 1e-9);
            Assert.Same(system, ReedSystem.Parse(system.Id).Value);
            Assert.Same(system, ReedSystem.Parse(system.Name.ToUpperInvariant()).Value);
        }
    }

    [Fact]
    public void An_unknown_reed_system_lists_the_known_ones() =>
        Assert.Contains("stockport", ReedSystem.Parse("atlantis").Problem!.Mend, StringComparison.Ordinal);
}
