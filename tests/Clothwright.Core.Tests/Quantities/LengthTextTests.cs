using Clothwright.Core.Quantities;
using CsCheck;

namespace Clothwright.Core.Tests.Quantities;

public class LengthTextTests
{
    [Theory]
    [InlineData("10m", 10)]
    [InlineData("10 m", 10)]
    [InlineData(" 12in ", 0.3048)]
    [InlineData("12 in", 0.3048)]
    [InlineData("12\"", 0.3048)]
    [InlineData("1.5 yd", 1.3716)]
    [InlineData("1 1/2 in", 0.0381)]
    [InlineData("1/2 in", 0.0127)]
    [InlineData("1 yd 4 in", 1.016)]
    [InlineData("5' 6\"", 1.6764)]
    [InlineData("180 CM", 1.8)]
    [InlineData("3 mm", 0.003)]
    [InlineData("0", 0)]
    [InlineData("0 cm", 0)]
    [InlineData("2 yds.", 1.8288)]
    public void Lengths_are_read_in_metric_and_customary_units(string text, double metres) =>
        Assert.Equal(metres, LengthText.Parse(text).Value.Metres, 12);

    [Theory]
    [InlineData("", 0, "not a length")]
    [InlineData("cm", 0, "not a length")]
    [InlineData("12", 2, "no unit")]
    [InlineData("12 furlong", 3, "\"furlong\" is not a unit")]
    [InlineData("-3 cm", 0, "below 0")]
    [InlineData("1,5 m", 1, "comma")]
    [InlineData("1 2 in", 2, "two numbers")]
    [InlineData("1/0 in", 3, "stroke")]
    [InlineData("12 cm wide", 6, "followed by")]
    public void What_is_no_length_is_refused_at_its_place_with_a_mend(string text, int position, string says)
    {
        InputProblem problem = LengthText.Parse(text, "pieces[0].width").Problem!;
        Assert.Contains(says, problem.What, StringComparison.Ordinal);
        Assert.Equal("pieces[0].width", problem.Where);
        Assert.Equal(text, problem.Text);
        Assert.Equal(position, problem.Position);
        Assert.Matches("[0-9]", problem.Mend);
    }

    [Fact]
    public void A_sum_beyond_all_bounds_is_refused() =>
        Assert.Contains("too large", MeasureReader.ReadAll("9 m", "length", new MeasureUnits("length", "1 m", new Dictionary<string, double> { ["m"] = double.MaxValue })).Problem!.What, StringComparison.Ordinal);

    [Fact]
    public void Ten_megabytes_of_garbage_are_refused_in_a_short_message()
    {
        InputProblem problem = LengthText.Parse(new string('x', 10_000_000)).Problem!;
        Assert.Contains("too long", problem.What, StringComparison.Ordinal);
        Assert.True(problem.What.Length < 200);
        Assert.True(problem.Text!.Length <= 200);
    }

    [Fact]
    public void Any_text_is_read_or_refused_but_never_throws() =>
        Gen.String.Sample(text =>
        {
            Parsed<Length> length = LengthText.Parse(text);
            Parsed<Mass> mass = MassText.Parse(text);
            Parsed<Sett> sett = SettText.Parse(text);
            Assert.True(length.Succeeded || length.Problem.Mend.Length > 0);
            Assert.True(mass.Succeeded || mass.Problem.Mend.Length > 0);
            Assert.True(sett.Succeeded || sett.Problem.Mend.Length > 0);
        });

    [Fact]
    public void A_written_length_reads_back_to_the_digits_written() =>
        Gen.Double[0.01, 500].Sample(metres =>
        {
            foreach (UnitStyle style in Enum.GetValues<UnitStyle>())
            {
                string text = QuantityText.Format(QuantityKind.Length, metres, style);
                // The coarsest writing is whole metres or yards from 100 of them on.
                Assert.InRange(LengthText.Parse(text).Value.Metres / metres, 0.99, 1.01);
            }
        });
}
