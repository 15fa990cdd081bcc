using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Editing;

public class DraftEditsTests
{
    private static readonly Draft Twill = DraftNotation.Parse("1234 | 1:12 2:23 3:34 4:14 | 1234").Value;

    [Fact]
    public void A_cell_is_filled_and_emptied()
    {
        Draft two = Twill.WithCell(DraftPart.Threading, 1, 4, filled: true);
        Assert.Equal("1(24)34 | 1:12 2:23 3:34 4:14 | 1234", DraftNotation.Format(two));
        Assert.Equal("1434 | 1:12 2:23 3:34 4:14 | 1234", DraftNotation.Format(Twill.WithCell(DraftPart.Threading, 1, 4, filled: true, alone: true)));
        Assert.Equal(Twill, two.WithCell(DraftPart.Threading, 1, 4, filled: false));
        Assert.Same(Twill, Twill.WithCell(DraftPart.Threading, 1, 2, filled: true));
        Assert.Equal("1234 | 1:12 2:23 3:34 4:14 | 1230", DraftNotation.Format(Twill.WithCell(DraftPart.Treadling, 3, 4, filled: false)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Twill.WithCell(DraftPart.Treadling, 4, 1, filled: true));
        Assert.Throws<ArgumentOutOfRangeException>(() => Twill.WithCell(DraftPart.TieUp, 0, 5, filled: true));
    }

    [Fact]
    public void Threads_are_put_in_before_between_and_behind()
    {
        ImmutableArray<ShaftSet> two = [ShaftSet.Of(4), ShaftSet.Of(3)];
        Assert.Equal("431234", Threading(Twill.WithThreads(DraftPart.Threading, 0, two)));
        Assert.Equal("124334", Threading(Twill.WithThreads(DraftPart.Threading, 2, two)));
        Assert.Equal("123443", Threading(Twill.WithThreads(DraftPart.Threading, 4, two)));
        Assert.Same(Twill, Twill.WithThreads(DraftPart.Threading, 4, []));
        Assert.Equal("1443", Threading(Twill.WithOver(DraftPart.Threading, 1, [ShaftSet.Of(4), ShaftSet.Of(4), ShaftSet.Of(3), ShaftSet.Of(1)])));
    }

    [Fact]
    public void Runs_go_straight_or_to_a_point_and_back()
    {
        var all = new ThreadSpan(0, 4);
        Assert.Equal("2323", Threading(Twill.Run(DraftPart.Threading, all, 2, 3, pointed: false)));
        Assert.Equal("4321", Threading(Twill.Run(DraftPart.Threading, all, 4, 1, pointed: false)));
        Assert.Equal("12321234", Threading(Twill.Edited(DraftPart.Threading, new OnceMore(all)).Run(DraftPart.Threading, new ThreadSpan(0, 5), 1, 3, pointed: true)));
        Assert.Equal("3333", Threading(Twill.Run(DraftPart.Threading, all, 3, 3, pointed: true)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShaftRuns.Straight(0, 3, 4));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShaftRuns.Pointed(1, 65, 4));
    }

    [Fact]
    public void Runs_advance_over_the_highest_shaft_to_the_first() =>
        Assert.Equal("123234341412", Threading(Twill.Edited(DraftPart.Threading, new TakenOut(new ThreadSpan(3, 1))).Advanced(DraftPart.Threading, new ThreadSpan(0, 3), 3, 1)));

    [Fact]
    public void Threads_are_turned_upside_down_and_emptied()
    {
        Assert.Equal("1324", Threading(Twill.UpsideDown(DraftPart.Threading, new ThreadSpan(1, 2))));
        Assert.Equal("1004", Threading(Twill.Emptied(DraftPart.Threading, new ThreadSpan(1, 2))));
        Assert.Equal("1234 | 1:34 2:14 3:12 4:23 | 1234", DraftNotation.Format(Twill.Raised(DraftPart.TieUp, new ThreadSpan(0, 4), 2)));
    }

    [Fact]
    public void Raised_and_lowered_all_is_as_before() =>
        Gen.Select(DraftGen.Treadled, Gen.Int[-20, 20]).Sample(
            (draft, by) =>
            {
                var all = new ThreadSpan(0, draft.Ends);
                Assert.Equal(draft, draft.Raised(DraftPart.Threading, all, by).Raised(DraftPart.Threading, all, -by));
                Assert.Equal(draft, draft.UpsideDown(DraftPart.Threading, all).UpsideDown(DraftPart.Threading, all));
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Exchanged_shafts_and_treadles_weave_the_same_cloth() =>
        Gen.Select(DraftGen.Treadled, Gen.Int[1, DraftGen.Treadles], Gen.Int[1, DraftGen.Treadles]).Sample(
            (draft, one, other) =>
            {
                Drawdown cloth = draft.Drawdown();
                Assert.Equal(cloth, draft.ShaftsExchanged(one, other).Drawdown());
                Assert.Equal(cloth, draft.TreadlesExchanged(one, other).Drawdown());
                Assert.Equal(cloth, draft.AsLiftPlan().ShaftsExchanged(one, other).Drawdown());
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Ends_moved_in_the_threading_move_in_the_cloth_with_their_yarns() =>
        Gen.Select(DraftGen.Treadled, Gen.Int[0, 13], Gen.Int[1, 14], Gen.Int[0, 4]).Sample(
            (draft, first, count, which) =>
            {
                ThreadSpan span = new ThreadSpan(first, count).Within(draft.Ends);
                LineEdit edit = Edits(span)[which];
                Draft changed = draft.Edited(DraftPart.Threading, edit);
                ImmutableArray<int> order = edit.Apply<int>([.. Enumerable.Range(0, draft.Ends)]);
                Drawdown before = draft.Drawdown();
                Assert.Equal(Drawdown.From(order.Length, draft.Picks, (pick, end) => before[pick, order[end]]), changed.Drawdown());
                Assert.Equal(before.WithEnds(edit), changed.Drawdown());
                Assert.Equal(order.Select(e => draft.WarpOrder[e]), Enumerable.Range(0, changed.Ends).Select(e => changed.WarpOrder[e]));
            },
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Picks_moved_in_the_treadling_move_in_the_cloth_with_their_yarns() =>
        Gen.Select(DraftGen.Treadled, Gen.Int[0, 13], Gen.Int[1, 14], Gen.Int[0, 4], Gen.Bool).Sample(
            (draft, first, count, which, lifts) =>
            {
                Draft before = lifts ? draft.AsLiftPlan() : draft;
                LineEdit edit = Edits(new ThreadSpan(first, count).Within(draft.Picks))[which];
                Draft changed = before.Edited(lifts ? DraftPart.LiftPlan : DraftPart.Treadling, edit);
                Assert.Equal(draft.Drawdown().WithPicks(edit), changed.Drawdown());
                Assert.Equal(edit.Apply<int>([.. Enumerable.Range(0, draft.Picks).Select(p => draft.WeftOrder[p])]), Enumerable.Range(0, changed.Picks).Select(p => changed.WeftOrder[p]));
            },
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Treadles_put_in_or_repeated_leave_the_cloth_as_it_was() =>
        Gen.Select(DraftGen.Treadled, Gen.Int[0, DraftGen.Treadles - 1]).Sample(
            (draft, treadle) =>
            {
                Drawdown cloth = draft.Drawdown();
                Assert.Equal(cloth, draft.Edited(DraftPart.TieUp, new OnceMore(new ThreadSpan(treadle, 1))).Drawdown());
                Assert.Equal(cloth, draft.WithThreads(DraftPart.TieUp, treadle, [ShaftSet.Of(1)]).Drawdown());
                Assert.Equal(cloth, draft.WithThreads(DraftPart.TieUp, draft.Treadles, [ShaftSet.Of(1)]).Drawdown());
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_treadle_taken_out_is_pressed_no_more_and_the_others_keep_their_picks() =>
        Assert.Equal("1234 | 1:12 2:34 3:14 | 1023", DraftNotation.Format(Twill.Edited(DraftPart.TieUp, new TakenOut(new ThreadSpan(1, 1)))));

    [Fact]
    public void Shafts_and_treadles_can_be_more_and_as_few_as_are_in_use()
    {
        Assert.Equal(8, Twill.WithShafts(8).Value.Shafts);
        Assert.Equal("Shaft 4 is in use, so 3 are too few.", Twill.WithShafts(3).Problem!.What);
        Assert.False(Twill.WithShafts(65).Succeeded);
        Assert.Equal(6, Twill.WithTreadles(6).Value.Treadles);
        Assert.Equal(Twill, Twill.WithTreadles(6).Value.WithTreadles(4).Value);
        Assert.Equal("Treadle 4 is pressed, so 3 are too few.", Twill.WithTreadles(3).Problem!.What);
    }

    private static LineEdit[] Edits(ThreadSpan span) =>
        [new LastFirst(span), new BackAgain(span), new OnceMore(span, 2), new MovedOn(span, 2), new MovedOn(span, -1)];

    private static string Threading(Draft draft) => DraftNotation.Format(draft).Split(' ')[0];
}
