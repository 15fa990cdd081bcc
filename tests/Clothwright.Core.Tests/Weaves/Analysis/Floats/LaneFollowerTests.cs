using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis.Floats;

/// <summary>However the lines are followed, the floats are the same; the wide way is held against counting one by one elsewhere.</summary>
public class LaneFollowerTests
{
    [Fact]
    public void Narrow_and_wide_find_the_same_floats_in_small_cloths() =>
        Clothes.Any(12, 12).Sample(AssertAlike, iter: 2000, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Narrow_and_wide_find_the_same_floats_in_cloths_of_blocks() =>
        Clothes.Blocks(300, 200).Sample(AssertAlike, iter: 60, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Narrow_and_wide_find_the_same_floats_where_nothing_repeats() =>
        Clothes.Any(400, 300).Sample(AssertAlike, iter: 20, seed: "0N0XIzNsQ0O2");

    private static void AssertAlike(Drawdown cloth)
    {
        var lines = new ClothLines(cloth);
        foreach (ClothReading reading in Enum.GetValues<ClothReading>())
        {
            ClothFloats narrow = ClothFloats.Of(lines, reading, () => new NarrowFollower());
            ClothFloats wide = ClothFloats.Of(lines, reading, () => new WideFollower());
            foreach ((FloatTally one, FloatTally other) in narrow.All.Zip(wide.All))
            {
                Assert.Equal<FloatCount>(other.Counts, one.Counts);
                Assert.Equal((other.EndlessThreads, other.Longest), (one.EndlessThreads, one.Longest));
            }
        }
    }
}
