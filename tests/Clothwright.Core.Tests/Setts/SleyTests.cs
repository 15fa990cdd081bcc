using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;
using CsCheck;

namespace Clothwright.Core.Tests.Setts;

public class SleyTests
{
    [Fact]
    public void An_even_sley_holds_every_end_and_its_dents_differ_by_one_at_most() =>
        Gen.Select(Gen.Int[1, 300], Gen.Int[1, 40]).Sample((ends, dents) =>
        {
            Sley sley = Sley.Even(ends, dents);
            Assert.Equal((ends, dents), (sley.Ends, sley.Dents));
            Assert.True(sley.EndsPerDent.Max() - sley.EndsPerDent.Min() <= 1);
        });

    [Fact]
    public void A_sley_reads_back_what_it_writes() =>
        Gen.Int[0, 9].Array[1, 12].Where(d => d.Sum() > 0).Sample(dents =>
        {
            Sley sley = Sley.Of(dents);
            Assert.Equal(sley, Sley.Parse(sley.ToString()).Value);
            Assert.Equal(sley.GetHashCode(), Sley.Parse(sley.ToString()).Value.GetHashCode());
        });

    [Theory]
    [InlineData("1-1-2", 4, 3)]
    [InlineData("2, 1", 3, 2)]
    [InlineData("3", 3, 1)]
    public void Hyphens_blanks_and_commas_part_the_dents(string text, int ends, int dents)
    {
        Sley sley = Sley.Parse(text).Value;
        Assert.Equal((ends, dents), (sley.Ends, sley.Dents));
    }

    [Theory]
    [InlineData("")]
    [InlineData("1-x")]
    [InlineData("0-0")]
    [InlineData("13")]
    [InlineData("1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1-1")]
    public void A_sley_that_cannot_be_read_shows_how_to_write_it(string text) =>
        Assert.Contains("1-1-2", Sley.Parse(text).Problem!.Mend, StringComparison.Ordinal);

    [Fact]
    public void A_sley_without_ends_is_a_slip_of_the_program()
    {
        Assert.Throws<ArgumentException>(() => Sley.Of());
        Assert.Throws<ArgumentException>(() => Sley.Of(0, 0));
        Assert.Throws<ArgumentException>(() => Sley.Of(1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Sley.Even(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Sley.Even(1, 0));
    }

    [Fact]
    public void The_sequence_goes_on_for_ever()
    {
        Sley sley = Sley.Of(1, 1, 2);
        Assert.Equal([1, 1, 2, 1, 1, 2, 1], Enumerable.Range(0, 7).Select(i => sley[i]));
        Assert.False(sley.Equals(null));
        Assert.NotEqual(Sley.Of(1, 2, 1), sley);
        Assert.Equal(20, Sley.Of(2).In(Sett.FromPerInch(10)).PerInch, 1e-9);
    }
}
