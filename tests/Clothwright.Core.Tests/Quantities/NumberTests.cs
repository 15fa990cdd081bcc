using Clothwright.Core.Quantities;
using CsCheck;

namespace Clothwright.Core.Tests.Quantities;

public class NumberTests
{
    [Theory]
    [InlineData(8, "8")]
    [InlineData(1.5, "1.5")]
    [InlineData(0.3333333, "0.3333")]
    public void A_number_is_written_without_unit_or_percent(double value, string text) => Assert.Equal(text, Number.FromValue(value).ToString());

    [Fact]
    public void Numbers_are_ordered_by_value() =>
        Gen.Select(Gen.Double[0, 1e6], Gen.Double[0, 1e6]).Sample((a, b) =>
        {
            Number one = Number.FromBase(a);
            Number other = Number.FromBase(b);
            Assert.Equal(a < b, one < other);
            Assert.Equal(a > b, one > other);
            Assert.Equal(a <= b, one <= other);
            Assert.Equal(a >= b, one >= other);
            Assert.Equal(a.CompareTo(b), one.CompareTo(other));
        });

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_number_below_0_or_without_end_is_a_slip_of_the_program(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Number.FromValue(value));
}
