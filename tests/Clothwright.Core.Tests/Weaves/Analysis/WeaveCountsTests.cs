using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis;

public class WeaveCountsTests
{
    [Theory]
    // Definition: plain weave changes face at every crossing, 2/2 twill at every second, a satin of 8 twice in 8.
    [InlineData("10/01", 1, 1, 2)]
    [InlineData("1100/0110/0011/1001", 2, 2, 1)]
    [InlineData("10000000/00010000/00000010/01000000/00001000/00000001/00100000/00000100", 4, 4, 0.5)]
    [InlineData("10/10/01/01", 1, 2, 1.5)]
    public void Mean_floats_follow_from_the_changes_of_face(string rows, double meanEndFloat, double meanPickFloat, double firmness)
    {
        WeaveCounts counts = WeaveCounts.Of(Drawdown.Parse(rows).Value);

        Assert.Equal(meanEndFloat, counts.MeanEndFloat, 12);
        Assert.Equal(meanPickFloat, counts.MeanPickFloat, 12);
        Assert.Equal(firmness, counts.CrossingOverFirmness, 12);
        Assert.True(counts.EveryThreadInterlaces);
    }

    [Fact]
    public void Threads_that_never_change_face_are_named()
    {
        WeaveCounts counts = WeaveCounts.Of(Drawdown.Parse("101/010/000").Value);

        Assert.Equal<int>([2], counts.IdlePicks);
        Assert.Empty(counts.IdleEnds);
        Assert.False(counts.EveryThreadInterlaces);
    }

    [Fact]
    public void Cloth_in_which_nothing_interlaces_has_an_infinite_mean_float()
    {
        WeaveCounts counts = WeaveCounts.Of(Drawdown.Parse("111/111").Value);

        Assert.Equal(double.PositiveInfinity, counts.MeanEndFloat);
        Assert.Equal(double.PositiveInfinity, counts.MeanPickFloat);
        Assert.Equal(0, counts.CrossingOverFirmness);
    }

    [Fact]
    public void Counting_by_packed_words_agrees_with_counting_one_crossing_after_another() =>
        Clothes.Any(200, 140).Sample(
            cloth =>
            {
                WeaveCounts counts = WeaveCounts.Of(cloth);
                for (int pick = 0; pick < cloth.Picks; pick++)
                {
                    int changes = Enumerable.Range(0, cloth.Ends).Count(e => cloth[pick, e] != cloth[pick, (e + 1) % cloth.Ends]);
                    Assert.Equal(changes, counts.TransitionsPerPick[pick]);
                }

                for (int end = 0; end < cloth.Ends; end++)
                {
                    int changes = Enumerable.Range(0, cloth.Picks).Count(p => cloth[p, end] != cloth[(p + 1) % cloth.Picks, end]);
                    Assert.Equal(changes, counts.TransitionsPerEnd[end]);
                }
            },
            iter: 60,
            seed: "0N0XIzNsQ0O2");
}
