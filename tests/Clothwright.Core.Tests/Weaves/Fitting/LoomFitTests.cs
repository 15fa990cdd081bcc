using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Fitting;

public class LoomFitTests
{
    private static readonly LoomLimits Roomy = new(64, 64, 2);

    [Fact]
    public void A_fit_weaves_the_same_cloth_and_is_never_worse_than_the_draft() =>
        FittingGen.Draft(2).Sample(draft =>
        {
            // The planted draft presses up to two treadles: the fit on the same kind of shed must not need more.
            ShedAction shed = draft.RisingShed ? ShedAction.Rising : ShedAction.Sinking;
            LoomFitResult fit = LoomFit.For(draft, Roomy with { Shed = shed });
            Assert.True(fit.Optimal);
            Assert.Equal(draft.Drawdown(), fit.Draft!.Drawdown());
            Assert.InRange(fit.Shafts.Value.Count, 0, draft.Threading.Distinct().Count());
            Assert.InRange(fit.Treadles.Value.Count, 0, draft.Treadling.SelectMany(p => p.Members()).Distinct().Count());
            Assert.All(fit.Treadling, p => Assert.InRange(p.Count, 0, 2));
        }, iter: 300);

    [Theory]
    [InlineData(ShedAction.Rising)]
    [InlineData(ShedAction.Sinking)]
    [InlineData(ShedAction.Countermarche)]
    [InlineData(ShedAction.Levers)]
    public void The_shafts_that_are_up_lift_the_ends_that_are_on_top(ShedAction shed) =>
        FittingGen.Draft(1).Sample(draft =>
        {
            Drawdown cloth = draft.Drawdown();
            LoomFitResult fit = LoomFit.For(draft, Roomy with { Shed = shed });
            Assert.Equal(cloth, fit.Draft!.Drawdown());
            for (int pick = 0; pick < cloth.Picks; pick++)
            {
                for (int end = 0; end < cloth.Ends; end++)
                {
                    // An end that never moves is on no shaft: below on a rising shed, above on a sinking one.
                    ShaftSet on = fit.Draft.Threading[end];
                    bool up = on.Bits == 0 ? shed == ShedAction.Sinking : fit.LiftPlan[pick].Overlaps(on);
                    Assert.Equal(cloth[pick, end], up);
                }
            }
        }, iter: 100);

    [Fact]
    public void With_one_shaft_an_end_and_one_treadle_a_pick_the_numbers_are_the_different_lines() =>
        FittingGen.Draft(2).Sample(draft =>
        {
            Drawdown cloth = draft.Drawdown();
            string[] rows = cloth.ToString().Split('/');
            string[] columns = [.. Enumerable.Range(0, cloth.Ends).Select(e => string.Concat(rows.Select(r => r[e])))];
            LoomFitResult fit = LoomFit.For(cloth, new LoomLimits(64, 64));
            Assert.Equal(columns.Where(c => c.Contains('1')).Distinct().Count(), fit.Shafts.Value.Count);
            Assert.Equal(rows.Where(r => r.Contains('1')).Distinct().Count(), fit.Treadles.Value.Count);
        }, iter: 200);

    [Fact]
    public void On_a_countermarche_each_shaft_is_tied_once_in_the_treadles_pressed() =>
        FittingGen.Draft(1).Sample(draft =>
        {
            LoomFitResult fit = LoomFit.For(draft, Roomy with { Shed = ShedAction.Countermarche });
            ulong all = ShaftSet.FirstOf(fit.Shafts.Value.Count).Bits;
            for (int pick = 0; pick < draft.Picks; pick++)
            {
                ulong up = 0, down = 0;
                foreach (int t in fit.Treadling[pick].Members())
                {
                    TreadleTie tie = fit.TieUp[t - 1];
                    Assert.Equal(0UL, (up | down) & (tie.Up.Bits | tie.Down.Bits));
                    up |= tie.Up.Bits;
                    down |= tie.Down.Bits;
                }

                Assert.Equal(all, up | down);
                Assert.Equal(fit.LiftPlan[pick].Bits, up);
            }
        }, iter: 100);

    [Fact]
    public void Sinking_shafts_are_those_that_stay_down_elsewhere()
    {
        LoomFitResult fit = LoomFit.For(FittingGen.Twill("1000", 8, 8), new LoomLimits(4, 4, 1, ShedAction.Sinking));
        Assert.True(fit.Feasible);
        Assert.False(fit.Draft!.RisingShed);
        Assert.All(fit.TieUp, t => Assert.Equal((0, 3), (t.Up.Count, t.Down.Count)));
    }

    [Fact]
    public void A_counterbalance_weaves_sheds_of_two_against_two()
    {
        LoomFitResult fit = LoomFit.For(FittingGen.Twill("1100", 8, 8), new LoomLimits(4, 6, 1, ShedAction.Counterbalance));
        Assert.True(fit.Feasible, string.Join(' ', fit.Reasons));
        Assert.All(fit.LiftPlan, l => Assert.Equal(2, l.Count));
    }

    [Fact]
    public void A_counterbalance_cannot_weave_one_shaft_against_three()
    {
        LoomFitResult fit = LoomFit.For(FittingGen.Twill("1000", 8, 8), new LoomLimits(4, 6, 1, ShedAction.Counterbalance));
        Assert.False(fit.Feasible);
        Assert.Contains(fit.Reasons, r => r.StartsWith("Cannot be woven on a counterbalance loom, because pick 1 raises 1 shafts against 3", StringComparison.Ordinal));
    }

    [Fact]
    public void A_counterbalance_may_need_one_kind_of_end_on_two_shafts()
    {
        // Kinds A to E in sheds ABC, AE, BE, ABD: five shafts never balance, but with E on two of them three rise and three sink.
        string[] sheds = ["ABC", "AE", "BE", "ABD"];
        Drawdown cloth = Drawdown.From(6, 4, (pick, end) => sheds[pick].Contains("ABCDEE"[end]));
        LoomFitResult fit = LoomFit.For(cloth, new LoomLimits(6, 6, 1, ShedAction.Counterbalance));
        Assert.True(fit.Feasible, string.Join(' ', fit.Reasons));
        Assert.Equal(6, fit.Shafts.Value.Count);
        Assert.All(fit.LiftPlan, l => Assert.Equal(3, l.Count));
        Assert.Equal(cloth, fit.Draft!.Drawdown());
    }

    [Fact]
    public void Ends_on_two_shafts_save_a_shaft()
    {
        // Columns 1001, 0100, 1101, 0011: four shafts, or three with end 3 on two of them (computed; two independent programs agree).
        string[] columns = ["1001", "0100", "1101", "0011"];
        Drawdown cloth = Drawdown.From(4, 4, (pick, end) => columns[end][pick] == '1');
        Assert.Equal(4, LoomFit.For(cloth, new LoomLimits(4, 4)).Shafts.Value.Count);
        LoomFitResult fit = LoomFit.For(cloth, new LoomLimits(4, 4) { ShaftsPerEnd = 2 });
        Assert.Equal(3, fit.Shafts.Value.Count);
        Assert.Equal(2, fit.Draft!.Threading[2].Count);
        Assert.Equal(cloth, fit.Draft.Drawdown());
        Assert.Contains(fit.Reasons, r => r.Contains("long-eyed heddles", StringComparison.Ordinal));
    }

    [Fact]
    public void Ends_on_several_shafts_still_weave_the_same_cloth() =>
        FittingGen.Draft(1).Sample(draft =>
        {
            ShedAction shed = draft.RisingShed ? ShedAction.Rising : ShedAction.Sinking;
            LoomFitResult single = LoomFit.For(draft, Roomy with { Shed = shed });
            LoomFitResult shared = LoomFit.For(draft, Roomy with { Shed = shed, ShaftsPerEnd = 2 });
            Assert.Equal(draft.Drawdown(), shared.Draft!.Drawdown());
            Assert.InRange(shared.Shafts.Value.Count, 0, single.Shafts.Value.Count);
        }, iter: 100);

    [Fact]
    public void A_countermarche_keeps_each_end_on_one_shaft()
    {
        LoomFitResult fit = LoomFit.For(FittingGen.Twill("1100", 8, 8), new LoomLimits(4, 6, 1, ShedAction.Countermarche) { ShaftsPerEnd = 2 });
        Assert.Contains(fit.Reasons, r => r.StartsWith("Ends are kept on one shaft each", StringComparison.Ordinal));
        Assert.All(fit.Draft!.Threading, e => Assert.Equal(1, e.Count));
    }

    [Fact]
    public void An_eight_shaft_twill_cannot_be_woven_on_four_and_the_change_that_would_do_can()
    {
        LoomFitResult fit = LoomFit.For(FittingGen.Twill("11010100", 16, 16), new LoomLimits(4, 8));
        Assert.False(fit.Feasible);
        Assert.Contains("Cannot be woven on 4 shafts, because it needs 8: one for each different end.", fit.Reasons);
        Assert.Equal(8, fit.SmallestChange!.Ends.Length);
        Assert.Contains(fit.SmallestChange.InWords, fit.Reasons);
        Assert.True(LoomFit.For(fit.SmallestChange.Cloth, new LoomLimits(4, 8)).Feasible);
    }

    [Fact]
    public void Too_many_lifts_for_the_treadles_are_told_with_the_change_that_would_do()
    {
        LoomFitResult fit = LoomFit.For(FittingGen.Twill("1100", 8, 8), new LoomLimits(4, 3));
        Assert.False(fit.Feasible);
        Assert.Contains(fit.Reasons, r => r.StartsWith("Cannot be treadled on 3 treadles, because it needs 4 with one treadle a pick (proved the fewest).", StringComparison.Ordinal));
        Assert.Equal(2, fit.SmallestChange!.Picks.Length);
        Assert.True(LoomFit.For(fit.SmallestChange.Cloth, new LoomLimits(4, 3)).Feasible);
    }

    [Fact]
    public void Two_rigid_heddles_weave_three_groups_and_no_more()
    {
        Assert.True(LoomFit.For(FittingGen.Twill("100", 9, 9), LoomLimits.ForRigidHeddles(2)).Feasible);
        LoomFitResult fit = LoomFit.For(FittingGen.Twill("1100", 8, 8), LoomLimits.ForRigidHeddles(2));
        Assert.False(fit.Feasible);
        Assert.Contains("Cannot be woven on 2 rigid heddles, because it has 4 different ends and they carry 3 groups: the eyes of each heddle, and the slots.", fit.Reasons);
        Assert.Equal(2, fit.SmallestChange!.Ends.Length);
    }

    [Fact]
    public void A_pick_without_a_shed_cannot_be_woven_on_rigid_heddles()
    {
        Drawdown cloth = Drawdown.From(2, 3, (pick, end) => pick == 2 || pick == end);
        LoomFitResult fit = LoomFit.For(cloth, LoomLimits.ForRigidHeddles(1));
        Assert.False(fit.Feasible);
        Assert.Contains(fit.Reasons, r => r.StartsWith("Pick 3 lies wholly below the warp", StringComparison.Ordinal));
    }

    [Fact]
    public void A_table_loom_gets_a_lift_plan_and_no_treadles()
    {
        LoomFitResult fit = LoomFit.For(FittingGen.Twill("1100", 8, 8), new LoomLimits(4, 0, 1, ShedAction.Levers));
        Assert.True(fit is { Feasible: true, Optimal: true });
        Assert.Equal(["1 2", "2 3", "3 4", "1 4"], fit.LiftPlan.Take(4).Select(l => l.ToString()));
        Assert.Empty(fit.TieUp);
        Assert.Null(fit.Walk);
    }

    [Fact]
    public void An_end_that_never_rises_needs_no_shaft()
    {
        LoomFitResult fit = LoomFit.For(Drawdown.From(3, 2, (pick, end) => end == pick), new LoomLimits(4, 4));
        Assert.Equal(2, fit.Shafts.Value.Count);
        Assert.Contains(fit.Reasons, r => r.StartsWith("End 3 never rises", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cloth_of_seventy_different_ends_is_refused_with_a_change()
    {
        // End e is up on pick p where bit p of e + 1 is set: 70 different ends on 7 picks.
        Drawdown cloth = Drawdown.From(70, 7, (pick, end) => ((end + 1) >> pick & 1) == 1);
        LoomFitResult fit = LoomFit.For(cloth, new LoomLimits(8, 10));
        Assert.False(fit.Feasible);
        Assert.Null(fit.Draft);
        Assert.Equal(70, fit.Shafts.Value.Count);
        Assert.True(LoomFit.For(fit.SmallestChange!.Cloth, new LoomLimits(8, 10)).Feasible);
    }

    [Fact]
    public void When_the_steps_run_out_it_is_called_not_proved()
    {
        var everyShed = Enumerable.Range(1, 30).Select(b => new ShaftSet((ulong)b)).ToArray();
        var draft = new Draft { Shafts = 5, Threading = [.. Enumerable.Range(1, 5).Select(s => ShaftSet.Of(s))], LiftPlan = [.. everyShed] };
        LoomFitResult fit = LoomFit.For(draft, new LoomLimits(5, 30, 2), new BranchAndBoundSearch(1));
        Assert.False(fit.Optimal);
        Assert.Contains(fit.Reasons, r => r.Contains("not proved: the best found, and at least 9 are needed", StringComparison.Ordinal));
        Assert.Equal(draft.Drawdown(), fit.Draft!.Drawdown());
    }

    [Theory]
    [InlineData(0, 4, 1, 1, "shafts")]
    [InlineData(65, 4, 1, 1, "shafts")]
    [InlineData(4, 0, 1, 1, "treadles")]
    [InlineData(4, 4, 4, 1, "feet")]
    [InlineData(4, 4, 1, 0, "shaftsPerEnd")]
    public void Looms_that_do_not_exist_are_refused(int shafts, int treadles, int feet, int shaftsPerEnd, string where)
    {
        var limits = new LoomLimits(shafts, treadles, feet) { ShaftsPerEnd = shaftsPerEnd };
        var refused = Assert.Throws<InputProblemException>(() => LoomFit.For(FittingGen.Twill("10", 2, 2), limits));
        Assert.Equal(where, refused.Problem.Where);
    }

    [Fact]
    public void Names_and_yarns_stay_with_the_draft()
    {
        Draft draft = FittingGen.Twill("1100", 8, 8) with { Name = "samphire", WarpOrder = ThreadOrder.Of(0, 1), WeftOrder = ThreadOrder.Of(1) };
        LoomFitResult fit = LoomFit.For(draft, Roomy);
        Assert.Equal(("samphire", draft.WarpOrder, draft.WeftOrder), (fit.Draft!.Name, fit.Draft.WarpOrder, fit.Draft.WeftOrder));
    }
}
