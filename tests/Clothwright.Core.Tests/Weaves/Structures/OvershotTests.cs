using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class OvershotTests
{
    private static readonly BlockRun[] FourBlocks = [new(1, 4), new(2, 4), new(3, 4), new(4, 4)];

    [Fact]
    public void Woven_as_drawn_in_the_floats_stand_on_an_unbroken_diagonal()
    {
        Weave weave = Overshot.Of(FourBlocks);
        Drawdown cloth = weave.Draft.Drawdown();
        int[] pattern = [.. Enumerable.Range(0, weave.RepeatPicks).Where(p => weave.PickRoles[p] == ThreadRole.Pattern)];

        // One pattern pick for each step from end to end: on pick i the weft covers ends i and i + 1.
        Assert.Equal(weave.RepeatEnds, pattern.Length);
        for (int i = 0; i < pattern.Length; i++)
        {
            Assert.False(cloth[pattern[i], i]);
            Assert.False(cloth[pattern[i], (i + 1) % weave.RepeatEnds]);
        }
    }

    [Fact]
    public void Rose_fashion_exchanges_the_blocks_in_pairs()
    {
        Draft star = Overshot.Of(FourBlocks).Draft;
        Draft rose = Overshot.Of(FourBlocks, OvershotFashion.Rose).Draft;
        string Blocks(Draft draft) => string.Concat(Enumerable.Range(0, draft.Picks).Where(p => p % 6 == 0).Select(p => "ABCD"[Array.IndexOf(["3 4", "1 4", "1 2", "2 3"], draft.Lift(p).ToString())]));

        Assert.Equal("ABCD", Blocks(star));
        Assert.Equal("BADC", Blocks(rose));
    }

    [Fact]
    public void Between_each_block_and_its_two_neighbours_lie_half_tones_and_the_opposite_block_hides()
    {
        Weave weave = Overshot.Of(FourBlocks);
        Drawdown cloth = weave.Draft.Drawdown();

        // The first pattern pick is of block A: over ends on 1 2, under those on 3 4, so B and D show one shaft up and one down.
        for (int end = 0; end < weave.RepeatEnds; end++) Assert.Equal(weave.Draft.Threading[end].Max >= 3, cloth[0, end]);
    }

    [Fact]
    public void From_a_block_to_its_opposite_odd_and_even_are_kept_and_it_is_noted()
    {
        BlockRun[] opposite = [new(1, 4), new(3, 4)];

        Assert.True(NeighbouringPairs.KeepsParity(Overshot.Threading(opposite)));
        Assert.Contains(Overshot.Of(opposite).Notes, n => n.Contains("incidental", StringComparison.Ordinal));
        Assert.DoesNotContain(Overshot.Of(FourBlocks).Notes, n => n.Contains("incidental", StringComparison.Ordinal));
    }

    [Fact]
    public void Pattern_and_ground_wefts_follow_each_other_and_are_named()
    {
        Weave weave = Overshot.Of(FourBlocks);

        Assert.True(weave.HasPatternPicks);
        Assert.False(weave.HasPatternEnds);
        Assert.Equal(["ground", "pattern"], weave.YarnNames.ToArray());
        Assert.Equal(1, weave.Draft.WeftOrder[0]);
        Assert.Equal(0, weave.Draft.WeftOrder[1]);
    }
}
