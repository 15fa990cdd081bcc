using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Threads;
using Clothwright.Core.Workings;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis.Threads;

public class ThreadTests
{
    [Theory]
    [InlineData("1234", "1 3", "2 4")]
    [InlineData("123432", "1 3", "2 4")]
    [InlineData("123", "1 3", "2")]
    [InlineData("12342143", null, null)]
    [InlineData("1122", null, null)]
    [InlineData("1", null, null)]
    [InlineData("(13)2(14)2", "1 3 4", "2")]
    [InlineData("10", null, null)]
    public void Tabby_is_there_when_odd_and_even_ends_share_no_shaft(string threading, string? odd, string? even)
    {
        TabbySheds? sheds = TabbySheds.On(DraftNotation.Parse($"{threading} | 1:1 | 1").Value.Threading);

        Assert.Equal(odd, sheds?.OddEnds.ToString());
        Assert.Equal(even, sheds?.EvenEnds.ToString());
    }

    [Fact]
    public void The_tabby_sheds_weave_plain_weave_on_any_threading_that_has_them() =>
        Clothes.Drafts().Sample(
            draft =>
            {
                if (TabbySheds.On(draft.Threading) is not { } sheds) return;
                Draft tabby = draft with { TieUp = [], Treadling = [], LiftPlan = [sheds.OddEnds, sheds.EvenEnds], RisingShed = true };
                Assert.Equal(Drawdown.From(draft.Ends, 2, (pick, end) => (pick + end) % 2 == 0), tabby.Drawdown());
            },
            iter: 1000,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_cloth_by_itself_allows_tabby_when_ends_alike_stand_on_odd_or_on_even_places()
    {
        Assert.True(ClothAnalysis.Of(Clothes.Of("1100/0110/0011/1001")).TabbyAvailable);
        Assert.False(ClothAnalysis.Of(Clothes.Of("1100/0011")).TabbyAvailable);
        Assert.False(ClothAnalysis.Of(Clothes.Of("1/0")).TabbyAvailable);
    }

    [Fact]
    public void Treadles_for_tabby_are_one_or_two_together()
    {
        TabbyTreadles direct = TabbyTreadles.Of(Draft("1234 | 1:1 2:2 3:3 4:4 | 1234"));
        Assert.Equal((ShaftSet.Of(1, 3), ShaftSet.Of(2, 4)), (direct.OddEnds!.Value, direct.EvenEnds!.Value));
        Assert.True(direct.Both);

        TabbyTreadles tied = TabbyTreadles.Of(Draft("1234 | 1:12 2:24 | 12"));
        Assert.Null(tied.OddEnds);
        Assert.Equal(ShaftSet.Of(2), tied.EvenEnds);
        Assert.False(tied.Both);
    }

    [Fact]
    public void Heddles_are_counted_by_shaft_and_held_against_the_loom()
    {
        EndsPerShaft ends = EndsPerShaft.Of(Draft("12(13)2 | 1:1 | 1 | 4 shafts"));
        Assert.Equal<int>([2, 2, 1, 0], ends.Counts);
        Assert.Equal(5, ends.Heddles);

        Loom loom = Loom(heddles: 1);
        InputProblem[] problems = [.. ends.Problems(loom)];
        Assert.Equal(2, problems.Length);
        Assert.Contains("Shaft 1 carries 2 ends; the mudflat loom has 1", problems[0].What, StringComparison.Ordinal);
        Assert.Contains("Hang 1 more", problems[0].Mend, StringComparison.Ordinal);
        Assert.Empty(ends.Problems(Loom(heddles: 0)));
        Assert.Empty(ends.Problems(Loom(heddles: 2)));
    }

    [Theory]
    [InlineData("1 2 3 1 2 3", 3, 3)]
    [InlineData("1 2 3 1 2", 5, 3)]
    [InlineData("1 1 1", 1, 1)]
    [InlineData("1 2 3", 3, 3)]
    [InlineData("", 0, 0)]
    public void The_shortest_repeat_is_found_whole_and_running(string threads, int whole, int running)
    {
        int[] row = [.. threads.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)];

        Assert.Equal(whole, RepeatLength.Whole(row));
        Assert.Equal(running, RepeatLength.Running(row));
    }

    [Fact]
    public void The_repeat_of_a_cloth_is_that_of_its_draft_or_shorter()
    {
        Draft draft = Draft("12341234 | 1:13 2:24 | 121212");

        Assert.Equal(new ClothRepeat(4, 2, 4, 2), ClothRepeat.Of(draft));
        Assert.Equal(new ClothRepeat(2, 2, 2, 2), ClothRepeat.Of(draft.Drawdown()));
        Assert.Equal(new ClothRepeat(7, 3, 4, 3), ClothRepeat.Of(Draft("1234123 | 1:13 2:24 | 112").AsLiftPlan()));
    }

    [Fact]
    public void Repeating_a_cloth_does_not_change_its_repeat() =>
        Gen.Select(Clothes.Any(6, 6), Gen.Int[1, 4], Gen.Int[1, 4]).Sample(
            (cloth, across, along) =>
            {
                ClothRepeat one = ClothRepeat.Of(cloth);
                ClothRepeat many = ClothRepeat.Of(cloth.Repeated(cloth.Ends * across, cloth.Picks * along));
                Assert.Equal((one.Ends, one.Picks), (many.Ends, many.Picks));
            },
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    [Theory]
    [InlineData("10/01", ClothSymmetries.SideToSide | ClothSymmetries.EndToEnd | ClothSymmetries.HalfTurn | ClothSymmetries.FacesAlike | ClothSymmetries.Counterchange | ClothSymmetries.QuarterTurn | ClothSymmetries.WarpAsWeft)]
    // A twill line leans to one side in a mirror and on the other face, but not when turned half round.
    [InlineData("1100/0110/0011/1001", ClothSymmetries.HalfTurn | ClothSymmetries.Counterchange | ClothSymmetries.WarpAsWeft)]
    [InlineData("1000/0100/0010/0001", ClothSymmetries.HalfTurn)]
    // Pointed 2/2 twill, a zigzag: mirrored at its points; upside down the same zigzag half a repeat further across; the back
    // has the same rows two picks on (110001 and 001110, 011011 and 100100). Warp and weft differ: no quarter turn.
    [InlineData("110001/011011/001110/100100", ClothSymmetries.SideToSide | ClothSymmetries.EndToEnd | ClothSymmetries.HalfTurn | ClothSymmetries.FacesAlike | ClothSymmetries.Counterchange)]
    public void Symmetries_are_those_seen_in_the_cloth(string rows, ClothSymmetries expected)
    {
        ClothSymmetries found = ClothSymmetry.Of(Clothes.Of(rows));

        Assert.Equal(expected, found);
    }

    [Fact]
    public void A_cloth_moved_in_both_directions_is_the_same_endless_cloth() =>
        Gen.Select(Clothes.Any(9, 9), Gen.Int[0, 8], Gen.Int[0, 8]).Sample(
            (cloth, end, pick) => Assert.True(ClothSymmetry.SameUpToShift(cloth, cloth.Piece(end, cloth.Ends, pick, cloth.Picks))),
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Cloths_of_another_size_are_not_the_same() =>
        Assert.False(ClothSymmetry.SameUpToShift(Clothes.Of("10/01"), Clothes.Of("10/01/10")));

    [Fact]
    public void Plain_stripes_beside_satin_stripes_want_a_second_beam()
    {
        Drawdown cloth = Drawdown.From(48, 8, (pick, end) => end < 24 ? (pick + end) % 2 == 0 : (end - 24) % 8 == pick * 3 % 8);

        EndTakeUp takeUp = EndTakeUp.Of(WeaveCounts.Of(cloth));

        // Plain weave changes face on every pick, the satin twice in eight.
        Assert.Equal(1, takeUp.MostCrossingsPerPick, 12);
        Assert.Equal(0.25, takeUp.LeastCrossingsPerPick, 12);
        Assert.True(takeUp.NeedsSecondBeam);
        Assert.Contains("Ends from 1 interlace 4.0 times", takeUp.Text, StringComparison.Ordinal);
        Assert.Contains("second beam", takeUp.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_even_cloth_needs_no_word_about_take_up()
    {
        Assert.Equal("", EndTakeUp.Of(WeaveCounts.Of(Clothes.Of("1100/0110/0011/1001"))).Text);
        Assert.Equal(1, EndTakeUp.Of(WeaveCounts.Of(Clothes.Of("11/11"))).Ratio);
    }

    [Fact]
    public void Stripes_that_differ_a_little_are_to_be_watched()
    {
        // Plain weave (8 changes in 8 picks) beside a twill with 6 in 8.
        Drawdown cloth = Drawdown.From(48, 8, (pick, end) => end < 24 ? (pick + end) % 2 == 0 : "11010100"[(end - pick + 80) % 8] == '1');
        EndTakeUp takeUp = EndTakeUp.Of(WeaveCounts.Of(cloth));

        Assert.False(takeUp.NeedsSecondBeam);
        Assert.Contains("watch", takeUp.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stripe_that_does_not_interlace_at_all_cannot_share_a_beam()
    {
        Drawdown cloth = Drawdown.From(48, 2, (pick, end) => end >= 24 || (pick + end) % 2 == 0);

        Assert.Contains("cannot share a beam", EndTakeUp.Of(WeaveCounts.Of(cloth)).Text, StringComparison.Ordinal);
    }

    private static Draft Draft(string text) => DraftNotation.Parse(text).Value;

    private static Loom Loom(int heddles) => new(
        "mudflat",
        "the mudflat loom",
        LoomKind.Floor,
        Length.FromCentimetres(90),
        4,
        6,
        ShedAction.Rising,
        Derived.Decision("waste", Length.FromCentimetres(70)))
    {
        HeddlesPerShaft = heddles,
    };
}
