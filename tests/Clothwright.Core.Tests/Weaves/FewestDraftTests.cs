using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves;

public class FewestDraftTests
{
    [Fact]
    public void Every_cloth_up_to_four_by_four_needs_a_shaft_for_each_different_end_and_a_treadle_for_each_different_pick()
    {
        foreach (Drawdown cloth in EveryCloth.UpTo(4, 4)) AssertFewest(cloth);
    }

    [Fact]
    public void Cloths_up_to_twelve_by_twelve_are_woven_with_the_fewest() =>
        Clothes.Any(12, 12).Sample(AssertFewest, iter: 2000, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void The_draft_of_a_draft_weaves_its_cloth_with_no_more_shafts_or_treadles() =>
        Clothes.Drafts(mostShafts: 8, mostThreads: 60).Sample(
            draft =>
            {
                Draft fewest = FewestDraft.Of(draft.Drawdown()).Value;
                Assert.Equal(draft.Drawdown(), fewest.Drawdown());
                Assert.True(fewest.Shafts <= draft.Threading.Distinct().Count());
                Assert.True(fewest.Treadles <= Enumerable.Range(0, draft.Picks).Select(draft.Lift).Distinct().Count());
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Theory]
    // Straight and pointed draws read as a weaver would number them; where that cannot be, the order is that of first use.
    [InlineData("12341234 | 1:12 2:23 3:34 4:14 | 1234", "12341234")]
    [InlineData("23412341 | 1:12 2:23 3:34 4:14 | 1234", "12341234")]
    [InlineData("1234321234321 | 1:12 2:23 3:34 4:14 | 1234", "1234321234321")]
    [InlineData("3432123432 | 1:12 2:23 3:34 4:14 | 1234", "3432123432")]
    [InlineData("2123432123 | 1:12 2:23 3:34 4:14 | 1234", "3432123432")]
    [InlineData("1324 | 1:12 2:23 3:34 4:14 | 1234", "1234")]
    [InlineData("12341432 | 1:12 2:23 3:34 4:14 | 1234", "12341432")]
    [InlineData("11221122 | 1:1 2:2 | 12", "11221122")]
    [InlineData("1111 | 1:1 2:2 | 12", "1111")]
    public void The_threading_reads_straight_or_pointed_where_it_can(string draft, string threading)
    {
        Draft fewest = FewestDraft.Of(DraftNotation.Parse(draft).Value.Drawdown()).Value;

        Assert.Equal(threading, string.Concat(fewest.Threading.Select(s => s.Max)));
    }

    [Fact]
    public void A_cloth_of_more_than_64_different_ends_or_picks_says_so()
    {
        Drawdown many = Drawdown.From(70, 70, (pick, end) => pick == end);
        InputProblem problem = FewestDraft.Of(many).Problem!;
        Assert.Contains("70 shafts", problem.What, StringComparison.Ordinal);

        Drawdown tall = Drawdown.From(7, 70, (pick, end) => (((pick + 1) >> end) & 1) != 0);
        Assert.Contains("70 treadles", FewestDraft.Of(tall).Problem!.What, StringComparison.Ordinal);
    }

    // By definition: ends that differ on some pick cannot share a shaft, and ends that never differ can.
    private static void AssertFewest(Drawdown cloth)
    {
        Draft fewest = FewestDraft.Of(cloth).Value;
        int Ends(int end) => Enumerable.Range(0, cloth.Picks).Aggregate(0, (bits, pick) => bits * 2 + (cloth[pick, end] ? 1 : 0));
        int Picks(int pick) => Enumerable.Range(0, cloth.Ends).Aggregate(0, (bits, end) => bits * 2 + (cloth[pick, end] ? 1 : 0));
        int shafts = Enumerable.Range(0, cloth.Ends).Select(Ends).Distinct().Count();
        int treadles = Enumerable.Range(0, cloth.Picks).Select(Picks).Distinct().Count();
        if (fewest.Shafts != shafts || fewest.Treadles != treadles) Assert.Fail($"{cloth}: {fewest.Shafts}/{fewest.Treadles}, not {shafts}/{treadles}");
        if (!fewest.Drawdown().Equals(cloth)) Assert.Fail($"{cloth} is woven as {fewest.Drawdown()}");
    }
}
