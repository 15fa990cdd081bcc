using Clothwright.Core.Weaves;

namespace Clothwright.Core.Tests.Weaves;

public class ShaftSetTests
{
    [Fact]
    public void Shafts_are_numbered_from_1_to_64()
    {
        ShaftSet set = ShaftSet.Of(1, 3, 64);

        Assert.Equal([1, 3, 64], set.Members());
        Assert.Equal((3, 64), (set.Count, set.Max));
        Assert.True(set.Contains(64) && !set.Contains(2) && !set.Contains(0) && !set.Contains(65));
        Assert.Equal("1 3 64", set.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => ShaftSet.Of(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShaftSet.Of(65));
    }

    [Fact]
    public void Sets_are_joined_met_and_taken_from_each_other()
    {
        Assert.Equal(ShaftSet.Of(1, 2, 3), ShaftSet.Of(1, 2) | ShaftSet.Of(2, 3));
        Assert.Equal(ShaftSet.Of(2), ShaftSet.Of(1, 2) & ShaftSet.Of(2, 3));
        Assert.Equal(ShaftSet.Of(1), ShaftSet.Of(1, 2).Without(ShaftSet.Of(2, 3)));
        Assert.True(ShaftSet.Of(1, 2).Overlaps(ShaftSet.Of(2)) && !ShaftSet.Of(1).Overlaps(ShaftSet.Of(2)));
        Assert.Equal(64, ShaftSet.FirstOf(64).Count);
        Assert.Equal(ShaftSet.Of(1, 2, 3), ShaftSet.FirstOf(3));
        Assert.Equal(("–", 0), (ShaftSet.None.ToString(), ShaftSet.None.Max));
    }
}
