using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves;

public class DraftTests
{
    private const string Seed = "0N0XIzNsQ0O2";

    [Fact]
    public void The_drawdown_is_the_boolean_product_crossing_by_crossing() =>
        Clothes.Drafts(mostShafts: 30, mostThreads: 150).Sample(
            draft =>
            {
                Drawdown cloth = draft.Drawdown();
                for (int pick = 0; pick < draft.Picks; pick++)
                {
                    for (int end = 0; end < draft.Ends; end++)
                    {
                        bool moved = draft.Threading[end].Members().Any(shaft => Moves(draft, pick, shaft));
                        if (cloth[pick, end] != (moved == draft.RisingShed)) Assert.Fail($"pick {pick}, end {end} of {DraftNotation.Format(draft)}");
                    }
                }
            },
            iter: 60,
            seed: Seed);

    [Fact]
    public void Lift_plan_and_tie_up_weave_the_same_cloth() =>
        Clothes.Drafts().Sample(
            draft =>
            {
                Assert.Equal(draft.Drawdown(), draft.AsLiftPlan().Drawdown());
                Draft tied = draft.AsTieUp();
                Assert.Equal(draft.Drawdown(), tied.Drawdown());
                Assert.All(tied.Treadling, pick => Assert.True(pick.Count <= 1));
                Assert.Equal(tied.Treadles, tied.TieUp.Distinct().Count());
            },
            iter: 300,
            seed: Seed);

    [Fact]
    public void The_other_shed_weaves_the_same_cloth() =>
        Clothes.Drafts().Sample(
            draft =>
            {
                Draft rising = draft.OnRisingShed();
                Draft sinking = draft.OnSinkingShed();
                Assert.True(rising.RisingShed);
                Assert.False(sinking.RisingShed);
                Assert.Equal(draft.Drawdown(), rising.Drawdown());
                Assert.Equal(draft.Drawdown(), sinking.Drawdown());
            },
            iter: 300,
            seed: Seed);

    [Fact]
    public void One_treadle_a_pick_and_one_shaft_an_end_keep_their_tie_up_on_the_other_shed()
    {
        Draft sinking = Parse("1234 | 1:12 2:23 3:34 4:14 | 1234").OnSinkingShed();

        Assert.Equal("1234 | 1:34 2:14 3:12 4:23 | 1234 | sinking", DraftNotation.Format(sinking));
    }

    [Fact]
    public void A_turned_draft_exchanges_warp_and_weft() =>
        Clothes.Drafts().Sample(
            draft =>
            {
                Drawdown cloth = draft.Drawdown();
                Assert.Equal(cloth.Transposed().Complement(), draft.Turned().Drawdown());
                Assert.Equal(cloth.TurnedClockwise(), draft.TurnedClockwise().Drawdown());
                Assert.Equal(cloth, draft.Turned().Turned().Drawdown());
            },
            iter: 300,
            seed: Seed);

    [Fact]
    public void The_other_face_is_the_cloth_turned_side_to_side_on_the_same_shed() =>
        Clothes.Drafts().Sample(
            draft =>
            {
                Draft other = draft.OtherFace();
                Assert.Equal(draft.RisingShed, other.RisingShed);
                Assert.Equal(draft.Drawdown().OtherFace(), other.Drawdown());
            },
            iter: 300,
            seed: Seed);

    [Fact]
    public void A_draft_repeated_weaves_the_drawdown_repeated() =>
        Gen.Select(Clothes.Drafts(), Gen.Int[1, 90], Gen.Int[1, 90], Gen.Int[0, 50], Gen.Int[0, 50]).Sample(
            (draft, ends, picks, firstEnd, firstPick) =>
            {
                Assert.Equal(draft.Drawdown().Repeated(ends, picks), draft.Repeated(ends, picks).Drawdown());
                Assert.Equal(draft.Drawdown().Piece(firstEnd, ends, firstPick, picks), draft.Piece(firstEnd, ends, firstPick, picks).Drawdown());
            },
            iter: 100,
            seed: Seed);

    [Fact]
    public void Yarn_orders_move_with_their_threads()
    {
        Draft draft = Parse("1234 | 1:12 2:23 3:34 4:14 | 1234") with
        {
            WarpOrder = ThreadOrder.Parse("A B B C").Value,
            WeftOrder = ThreadOrder.Parse("2A B").Value,
        };

        Assert.Equal("2B C A", draft.Piece(1, 4, 0, 4).WarpOrder.ToString());
        Assert.Equal("C 2B A", draft.EndsReversed().WarpOrder.ToString());
        Assert.Equal("2A B", draft.Turned().WarpOrder.ToString());
    }

    [Fact]
    public void A_draft_with_more_lifts_than_treadles_says_at_which_pick()
    {
        Draft draft = new()
        {
            Shafts = 7,
            Threading = [.. Enumerable.Range(1, 7).Select(s => ShaftSet.Of(s))],
            LiftPlan = [.. Enumerable.Range(1, 70).Select(n => new ShaftSet((ulong)n))],
        };

        InputProblem problem = Assert.Throws<InputProblemException>(() => draft.AsTieUp()).Problem;
        Assert.Contains("Pick 65", problem.What, StringComparison.Ordinal);
        problem = Assert.Throws<InputProblemException>(() => draft.Turned()).Problem;
        Assert.Contains("70 different lifts", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Ends_on_more_sets_of_shafts_than_there_are_shafts_cannot_change_shed()
    {
        Draft draft = new()
        {
            Shafts = 7,
            Threading = [.. Enumerable.Range(1, 70).Select(n => new ShaftSet((ulong)n))],
            LiftPlan = [ShaftSet.Of(1), ShaftSet.Of(2)],
        };

        InputProblem problem = Assert.Throws<InputProblemException>(() => draft.OnSinkingShed()).Problem;
        Assert.Equal("threading", problem.Where);
    }

    [Fact]
    public void A_draft_without_picks_weaves_nothing() =>
        Assert.Throws<InvalidOperationException>(() => new Draft { Shafts = 2, Threading = [ShaftSet.Of(1)] }.Drawdown());

    [Fact]
    public void Drafts_are_equal_when_all_their_parts_are()
    {
        const string Text = "12(13) | 1:1 2:23 | 12";
        Assert.Equal(Parse(Text), Parse(Text));
        Assert.Equal(Parse(Text).GetHashCode(), Parse(Text).GetHashCode());
        Assert.NotEqual(Parse(Text), Parse(Text) with { Name = "marsh" });
        Assert.NotEqual(Parse(Text), Parse(Text).AsLiftPlan());
        Assert.Equal(Parse(Text).AsLiftPlan().GetHashCode(), Parse(Text).AsLiftPlan().GetHashCode());
    }

    private static Draft Parse(string text) => DraftNotation.Parse(text).Value;

    private static bool Moves(Draft draft, int pick, int shaft) => draft.LiftPlan.IsEmpty
        ? draft.Treadling[pick].Members().Any(treadle => draft.TieUp[treadle - 1].Contains(shaft))
        : draft.LiftPlan[pick].Contains(shaft);
}
