using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Fitting;

public class TreadleWalkTests
{
    [Fact]
    public void A_straight_twill_is_walked_from_the_outside_in()
    {
        TreadleWalk walk = Lay(4, 1, 2, 3, 4);
        Assert.Equal([1, 4, 2, 3], walk.Order.AsEnumerable());
        Assert.True(walk is { Left: 2, Alternating: 4, Steps: 4, Walks: true, Best: true });
    }

    [Fact]
    public void Tabby_with_a_pattern_keeps_the_tabby_to_one_foot()
    {
        // Tabby 1 and 2 between four pattern treadles: one foot has tabby, the other pattern.
        TreadleWalk walk = Lay(6, 1, 3, 2, 4, 1, 5, 2, 6);
        Assert.True(walk is { Left: 2, Walks: true });
        Assert.Equal([1, 2], new[] { walk.Order[0], walk.Order[1] }.Order());
    }

    [Fact]
    public void Three_treadles_in_turn_cannot_be_walked()
    {
        TreadleWalk walk = Lay(3, 1, 2, 3);
        Assert.True(walk is { Alternating: 2, Steps: 3, Walks: false, Best: true });
    }

    [Fact]
    public void Double_presses_take_one_treadle_with_each_foot()
    {
        ShaftSet[] picks = [ShaftSet.Of(1, 2), ShaftSet.Of(3, 4), ShaftSet.Of(1, 4), ShaftSet.Of(2, 3)];
        TreadleWalk walk = TreadleWalk.Lay(4, picks);
        Assert.True(walk is { Split: 4, Doubles: 4, Walks: true });
    }

    [Fact]
    public void No_sharing_among_the_feet_alternates_more() =>
        Gen.Int[1, 6].Array[2, 20].Sample(picks =>
        {
            TreadleWalk walk = Lay(6, picks);
            int most = Enumerable.Range(0, 64).Max(left => Enumerable.Range(0, picks.Length)
                .Count(i => (left >> (picks[i] - 1) & 1) != (left >> (picks[(i + 1) % picks.Length] - 1) & 1)));
            Assert.Equal(most, walk.Alternating);
            Assert.Equal(Enumerable.Range(1, 6), walk.Order.Order());
            Assert.Equal(walk.Alternating, Enumerable.Range(0, picks.Length)
                .Count(i => walk.Order[picks[i] - 1] <= walk.Left != walk.Order[picks[(i + 1) % picks.Length] - 1] <= walk.Left));
        }, iter: 100);

    [Fact]
    public void Many_treadles_are_laid_out_too()
    {
        TreadleWalk walk = Lay(24, [.. Enumerable.Range(1, 24)]);
        Assert.Equal(Enumerable.Range(1, 24), walk.Order.Order());
        Assert.True(walk.Walks);
    }

    private static TreadleWalk Lay(int treadles, params int[] picks) => TreadleWalk.Lay(treadles, [.. picks.Select(p => ShaftSet.Of(p))]);
}
