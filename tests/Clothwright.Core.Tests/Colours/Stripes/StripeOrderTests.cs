using System.Collections.Immutable;
using Clothwright.Core.Colours.Stripes;
using CsCheck;

namespace Clothwright.Core.Tests.Colours.Stripes;

public class StripeOrderTests
{
    [Fact]
    public void Every_manner_fills_the_threads_with_yarns_that_are_there() =>
        Gen.Select(Gen.Enum<StripeManner>(), Gen.Int[2, 6], Gen.Int[1, 600], Gen.Int[1, 40], Gen.Bool, Gen.ULong).Sample((manner, yarns, threads, stripes, mirrored, seed) =>
        {
            ImmutableArray<int> laid = new StripeOrder(manner, yarns, threads) { Stripes = stripes, Mirrored = mirrored, Seed = seed }.Laid();
            Assert.Equal(threads, laid.Length);
            Assert.All(laid, y => Assert.InRange(y, 0, yarns - 1));
        });

    // 1, 1, 2, 3, 5, 8 are Fibonacci's numbers (OEIS A000045); they sum to 20, so that 20 threads hold the series whole.
    [Fact]
    public void Summing_stripes_are_as_wide_as_the_two_before_them() =>
        Assert.Equal((int[])[0, 1, 0, 0, 1, 1, 1, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1], new StripeOrder(StripeManner.Summing, 2, 20).Laid());

    [Fact]
    public void Another_lot_gives_other_stripes_and_the_same_lot_the_same()
    {
        var lot = new StripeOrder(StripeManner.Lot, 3, 200) { Seed = 7 };
        Assert.Equal([.. lot.Laid()], lot.Laid().ToArray());
        Assert.NotEqual([.. lot.Laid()], (lot with { Seed = 8 }).Laid().ToArray());
    }

    [Fact]
    public void No_manner_lays_stripes_of_no_yarns() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new StripeOrder(StripeManner.Passage, 1, 20).Laid());
}
