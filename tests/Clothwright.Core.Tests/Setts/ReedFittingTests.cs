using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;
using CsCheck;

namespace Clothwright.Core.Tests.Setts;

public class ReedFittingTests
{
    private static readonly ImmutableArray<Reed> Reeds = [.. new[] { "6", "8", "10", "12", "15", "40/10" }.Select(r => Reed.Parse(r).Value)];

    [Fact]
    public void Fits_come_nearest_first_and_say_their_true_error() =>
        Gen.Double[2, 80].Sample(perInch =>
        {
            Sett wanted = Sett.FromPerInch(perInch);
            var fits = ReedFitting.Fits(wanted, Reeds, [RigidHeddle.Parse("7.5", 3).Value]);
            Assert.Equal(Reeds.Length + 3, fits.Length);
            Assert.Equal(fits.Select(f => Math.Abs(f.Error.Value)).Order(), fits.Select(f => Math.Abs(f.Error.Value)));
            Assert.All(fits, f =>
            {
                Assert.Equal(f.Dents.PerInch * f.Sley.MeanEndsPerDent, f.Sett.PerInch, 1e-9);
                Assert.Equal(f.Sett.PerInch / perInch - 1, f.Error.Value, 1e-9);
                Assert.Equal(f.MarksLikely, !f.Warnings.IsEmpty && f.MarksLikely);
            });
        });

    // Sleying as customary: 20 in a 10-dent reed two in a dent, 15 in a 10-dent reed 1-2, 16 in a 12-dent reed 1-1-2.
    [Theory]
    [InlineData("10", 20, "2")]
    [InlineData("10", 15, "1-2")]
    [InlineData("12", 16, "1-1-2")]
    [InlineData("8", 20, "2-3")]
    [InlineData("12", 12, "1")]
    [InlineData("12", 6, "0-1")]
    public void A_reed_is_sleyed_as_customary(string reed, double perInch, string sley)
    {
        ReedFit fit = ReedFitting.InReed(Sett.FromPerInch(perInch), Reed.Parse(reed).Value);
        Assert.Equal(sley, fit.Sley.ToString());
        Assert.Equal(0, fit.Error.Value, 1e-9);
        Assert.Equal(0, fit.Heddles);
    }

    // 41.5 wanted: four in each dent of a 10-dent reed is 3.6 % open and leaves no uneven dents; 36 wanted lies between.
    [Theory]
    [InlineData(41.5, "4")]
    [InlineData(36, "3-4")]
    public void An_even_sley_near_the_sett_is_preferred_to_a_long_sequence(double perInch, string sley) =>
        Assert.Equal(sley, ReedFitting.InReed(Sett.FromPerInch(perInch), Reed.Parse("10").Value).Sley.ToString());

    [Fact]
    public void Uneven_empty_and_crowded_dents_are_warned_of_and_even_ones_are_not()
    {
        Assert.Empty(Fit("10", 20).Warnings);
        Assert.False(Fit("10", 20).MarksLikely);
        Assert.Contains("unequal", Assert.Single(Fit("10", 15).Warnings), StringComparison.Ordinal);
        Assert.Contains("empty", Assert.Single(Fit("12", 6).Warnings), StringComparison.Ordinal);
        Assert.Contains("3 ends share", Assert.Single(Fit("10", 30).Warnings), StringComparison.Ordinal);
        Assert.Equal(2, Fit("6", 60).Warnings.Length);
        Assert.True(Fit("6", 60).MarksLikely);

        static ReedFit Fit(string reed, double perInch) => ReedFitting.InReed(Sett.FromPerInch(perInch), Reed.Parse(reed).Value);
    }

    [Fact]
    public void No_more_heddles_share_a_sett_than_she_owns_or_the_frame_carries()
    {
        RigidHeddle heddle = RigidHeddle.Parse("10", 3).Value;
        Assert.Equal([1, 2, 3], Counts(heddle, 3));
        Assert.Equal([1, 2], Counts(heddle, 2));
        Assert.Equal([1], Counts(heddle with { Count = 1 }, 3));

        static IEnumerable<int> Counts(RigidHeddle heddle, int atOnce) =>
            ReedFitting.Fits(Sett.FromPerInch(20), [], [heddle], atOnce).Select(f => f.Heddles).Order();
    }

    [Fact]
    public void Heddles_with_spaces_left_empty_are_warned_of()
    {
        ReedFit fit = ReedFitting.Fits(Sett.FromPerInch(15), [], [RigidHeddle.Parse("7.5", 3).Value])
            .Single(f => f.Heddles == 3);
        Assert.Equal("1-1-0", fit.Sley.ToString());
        Assert.Contains("empty", Assert.Single(fit.Warnings), StringComparison.Ordinal);
    }
}
