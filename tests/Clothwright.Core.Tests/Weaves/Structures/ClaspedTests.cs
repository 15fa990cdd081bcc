using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class ClaspedTests
{
    private static readonly Length Width = Length.FromCentimetres(24);

    [Fact]
    public void Both_yarns_together_are_twice_the_width_on_every_pick() =>
        Gen.Double[0, 24].Array[1, 60].Sample(places =>
        {
            ClaspedWeft plan = ClaspedWeft.Of(Width, [.. places.Select(Length.FromCentimetres)]).Value;
            // 1e-9 m: sums of doubles.
            Assert.Equal(2 * Width.Metres * places.Length, plan.LeftYarn.Value.Metres + plan.RightYarn.Value.Metres, 9);
        });

    [Fact]
    public void A_boundary_runs_straight_from_point_to_point()
    {
        ClaspedWeft plan = ClaspedWeft.Along(Width, 7, [(2, Length.FromCentimetres(6)), (4, Length.FromCentimetres(12)), (6, Length.FromCentimetres(4))]).Value;

        Assert.Equal([6, 6, 9, 12, 8, 4, 4], plan.Joins.Select(j => Math.Round(j.Centimetres, 9)));
    }

    [Fact]
    public void Points_out_of_order_are_refused() =>
        Assert.Equal("points[1].pick", ClaspedWeft.Along(Width, 7, [(4, Width), (4, Width)]).Problem!.Where);

    [Fact]
    public void A_join_beyond_the_width_is_refused() =>
        Assert.Equal("joins[1]", ClaspedWeft.Of(Width, [Length.Zero, Length.FromCentimetres(25)]).Problem!.Where);

    [Fact]
    public void A_plan_without_picks_points_or_width_is_refused()
    {
        Assert.Equal("joins", ClaspedWeft.Of(Width, []).Problem!.Where);
        Assert.Equal("width", ClaspedWeft.Of(Length.Zero, [Length.Zero]).Problem!.Where);
        Assert.Equal("picks", ClaspedWeft.Along(Width, 0, [(1, Width)]).Problem!.Where);
        Assert.Equal("points", ClaspedWeft.Along(Width, 5, []).Problem!.Where);
    }

    [Fact]
    public void Clasped_ends_whose_joins_lie_side_by_side_are_found_and_staggered()
    {
        Length pick = Length.FromMillimetres(2);
        ClaspedWarp plan = ClaspedWarp.Of(Length.FromMetres(3), [Length.FromMetres(1), Length.FromMetres(1), Length.FromMetres(1.5)], pick).Value;

        Assert.Equal(1, Assert.Single(plan.CrowdedEnds));
        Assert.Empty(plan.Staggered(pick * 2, pick).CrowdedEnds);
        // 2 × (1 + 1 + 1.5) from the front, 2 × (2 + 2 + 1.5) from the back.
        Assert.Equal(7, plan.FrontYarn.Value.Metres, 9);
        Assert.Equal(11, plan.BackYarn.Value.Metres, 9);
    }

    [Fact]
    public void A_clasped_warp_that_cannot_be_wound_is_refused()
    {
        Length pick = Length.FromMillimetres(2);

        Assert.Equal("length", ClaspedWarp.Of(Length.Zero, [Length.Zero], pick).Problem!.Where);
        Assert.Equal("joins", ClaspedWarp.Of(Width, [], pick).Problem!.Where);
        Assert.Equal("joins[0]", ClaspedWarp.Of(Width, [Width * 2], pick).Problem!.Where);
    }

    [Fact]
    public void A_plan_of_areas_runs_from_place_to_place()
    {
        ColourAreas plan = ColourAreas.Along(alongPicks: true, threads: 5, crossed: 20, percent: [0, 50, 100]);

        Assert.Equal<int>([0, 5, 10, 15, 20], plan.Joins);
        Assert.Equal(0.5, plan.FirstShare);
        Assert.True(plan.IsFirst(2, 9));
        Assert.False(plan.IsFirst(2, 10));
        Assert.Equal(["pick 1: the second yarn alone", "pick 2: first yarn over 5 ends from the left, second over 15", "and so on to pick 5"], plan.InWords(2));
    }

    [Fact]
    public void Joins_of_neighbouring_ends_of_a_clasped_warp_lie_on_different_picks() =>
        Gen.Select(Gen.Int[5, 95].Array[1, 6], Gen.Int[2, 60], Gen.Int[20, 80]).Sample(
            (percent, ends, picks) =>
            {
                Weave weave = ClaspedPlan.Warp(percent, new WeaveSize(ends, picks));
                Assert.Equal((ends, picks), (weave.Areas!.Joins.Length, weave.Areas.Crossed));
                Assert.All(weave.Areas.Joins, join => Assert.InRange(join, 0, picks));
                if (percent.Distinct().Count() == 1) Assert.Empty(weave.Areas.Crowded);
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Theory]
    [InlineData("clasped weft line 10 90", true)]
    [InlineData("clasped warp", false)]
    public void Clasped_weaves_are_asked_for_by_name(string words, bool alongPicks)
    {
        Weave weave = WeaveCatalogue.Make(words, new WeaveSize(20, 30)).Value;

        Assert.Equal(alongPicks, weave.Areas!.AlongPicks);
        Assert.Contains(weave.Notes, n => n.Contains("two strands", StringComparison.Ordinal));
        Assert.Null(WeaveCatalogue.Make(words).Value.Areas);
        Assert.Equal(2, weave.RepeatEnds);
    }
}
