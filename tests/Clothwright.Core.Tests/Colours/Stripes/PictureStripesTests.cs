using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Colours.Stripes;
using CsCheck;

namespace Clothwright.Core.Tests.Colours.Stripes;

public class PictureStripesTests
{
    private static readonly SrgbColour[] Yarns = [new(0x1f, 0x3b, 0x57), new(0xd9, 0xcf, 0xb8), new(0x96, 0x3a, 0x26)];

    [Fact]
    public void A_picture_of_the_yarns_themselves_is_laid_as_it_is() =>
        Gen.Int[0, 2].Array[1, 200].Sample(order =>
            Assert.Equal(order, PictureStripes.Laid([.. order.Select(y => LinearColour.From(Yarns[y]))], Yarns, order.Length)));

    [Fact]
    public void Each_stripe_of_a_picture_keeps_its_share_of_the_threads()
    {
        LinearColour[] picture = [.. Enumerable.Repeat(LinearColour.From(Yarns[0]), 30), .. Enumerable.Repeat(LinearColour.From(Yarns[2]), 10)];
        ImmutableArray<int> laid = PictureStripes.Laid(picture, Yarns, 200);
        Assert.Equal(Enumerable.Repeat(0, 150).Concat(Enumerable.Repeat(2, 50)), laid);
    }

    // Light adds: white and black columns under one thread are seen as half the light, which is #bcbcbc (IEC 61966-2-1: 0.5 encodes to 188), nearer to a light grey than to a dark one.
    [Fact]
    public void Columns_under_one_thread_are_mixed_as_light_is() =>
        Assert.Equal(1, Assert.Single(PictureStripes.Laid([new(0, 0, 0), new(1, 1, 1)], [new(0x80, 0x80, 0x80), new(0xbc, 0xbc, 0xbc)], 1)));

    [Fact]
    public void A_picture_without_columns_and_stripes_without_yarns_are_slips()
    {
        Assert.Throws<ArgumentException>(() => PictureStripes.Laid([], Yarns, 4));
        Assert.Throws<ArgumentException>(() => PictureStripes.Laid([default], [], 4));
    }
}
