using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class TwillBaseTests
{
    [Fact]
    public void Figures_written_are_read_as_the_same_figures() =>
        Gen.Int[1, 6].Array[1, 5].Sample(half =>
        {
            TwillBase figures = TwillBase.Of([.. half, .. half]);
            Assert.Equal(figures, TwillBase.Parse(figures.ToString()).Value);
            Assert.Equal(figures.GetHashCode(), TwillBase.Parse(figures.ToString()).Value.GetHashCode());
        });

    [Theory]
    [InlineData("2")]
    [InlineData("2/0")]
    [InlineData("2/-1")]
    [InlineData("2/2/")]
    [InlineData("/")]
    [InlineData("2/99999999999")]
    [InlineData("60/5")]
    public void Figures_that_are_no_twill_are_refused(string text)
    {
        InputProblem problem = TwillBase.Parse(text).Problem!;

        Assert.Equal(text, problem.Text);
        Assert.Contains(text, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Runs_that_are_no_twill_are_refused() => Assert.Throws<InputProblemException>(() => TwillBase.Of(2, 2, 1));

    [Fact]
    public void Half_and_half_twills_are_known()
    {
        Assert.True(TwillBase.Of(2, 2).IsHalfAndHalf);
        Assert.True(TwillBase.Of(2, 1, 1, 2, 1, 1).IsHalfAndHalf);
        Assert.False(TwillBase.Of(1, 3).IsHalfAndHalf);
        Assert.False(TwillBase.Of(2, 1).IsHalfAndHalf);
    }

    [Fact]
    public void A_herringbone_of_other_figures_says_that_its_cut_is_soft() =>
        Assert.Contains(Herringbone.Of(TwillBase.Of(1, 3)).Notes, n => n.Contains("soft", StringComparison.Ordinal));

    [Fact]
    public void Every_twill_of_a_period_is_listed_with_that_many_shafts_and_weaves()
    {
        foreach (TwillBase figures in EveryTwill.On(9))
        {
            Assert.Equal(9, figures.Shafts);
            Assert.Empty(DraftCheck.Problems(Twill.Of(figures).Draft));
        }
    }

    [Fact]
    public void Periods_beyond_the_list_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EveryTwill.On(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => EveryTwill.On(EveryTwill.MostShafts + 1));
    }
}
