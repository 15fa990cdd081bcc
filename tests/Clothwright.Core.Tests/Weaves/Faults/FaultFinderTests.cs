using Clothwright.Core.Quantities;
using Clothwright.Core.Tests.Weaves.Fitting;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Faults;

public class FaultFinderTests
{
    private static readonly Draft Twill = FittingGen.Twill("1100", 16, 16);

    private static readonly Gen<Draft> Drafts =
        from shafts in Gen.Int[2, 4]
        from threading in Gen.Int[1, shafts].Array[6, 12]
        from tieUp in Gen.ULong[1, (1UL << shafts) - 2].Array[2, 4]
        from treadling in Gen.Int[1, tieUp.Length].Array[6, 12]
        from rising in Gen.Bool
        select new Draft
        {
            Shafts = shafts,
            Threading = [.. threading.Select(s => ShaftSet.Of(s))],
            TieUp = [.. tieUp.Select(t => new ShaftSet(t))],
            Treadling = [.. treadling.Select(p => ShaftSet.Of(p))],
            RisingShed = rising,
        };

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_reading_never_has_more_slips_than_were_made(int slips) =>
        Gen.Select(Drafts, Gen.Int[0, 999].Array[slips]).Sample((draft, picked) =>
        {
            // Missing and doubled lines first, as readings have them: a doubled line is one slip only if both are as planned.
            Draft made = draft;
            bool linesDone = false;
            foreach (int which in picked)
            {
                Slip[] possible = [.. Every(made).Where(s => !linesDone || !MovesLines(s))];
                Slip slip = possible[which % possible.Length];
                linesDone |= !MovesLines(slip);
                made = slip.Apply(made);
            }

            Drawdown seen = made.Drawdown();
            FaultReport report = FaultFinder.Find(draft, seen);
            Assert.NotEmpty(report.Readings);
            Assert.All(report.Readings, r => Assert.InRange(r.Steps.Length, 0, slips));
            Assert.All(report.Readings, r => Assert.Equal(seen.ToString(), Beginning(r.Made.Drawdown(), seen.Picks)));
            Assert.Single(report.Readings.Select(r => r.Steps.Length).Distinct());
        }, iter: 200);

    [Fact]
    public void Three_ends_taken_round_are_two_crossings()
    {
        Drawdown seen = new CrossedEnds(5).Apply(new CrossedEnds(4).Apply(Twill)).Drawdown();
        FaultReport report = FaultFinder.Find(Twill, seen);
        Assert.Equal([new CrossedEnds(4), new CrossedEnds(5)], Assert.Single(report.Readings).Slips);
    }

    [Fact]
    public void Every_single_slip_that_explains_the_cloth_is_listed() =>
        Gen.Select(Drafts, Gen.Int[0, 999]).Sample((draft, which) =>
        {
            Slip[] possible = [.. Every(draft)];
            Drawdown seen = possible[which % possible.Length].Apply(draft).Drawdown();
            FaultReport report = FaultFinder.Find(draft, seen);
            Assert.True(report.Proved);
            if (report.NothingWrong) return;

            // Lines missing or doubled among equal neighbours look alike: they are compared by the cloth, the rest slip by slip.
            Slip[] explain = [.. possible.Where(s => !MovesLines(s) && s.Apply(draft).Drawdown().Equals(seen))];
            Slip[] listed = [.. report.Readings.Select(r => r.Slips.Single())];
            Assert.Superset(explain.ToHashSet(), listed.ToHashSet());
            Assert.All(listed, s => Assert.Equal(seen.ToString(), Beginning(s.Apply(Continued(draft)).Drawdown(), seen.Picks)));
        }, iter: 100);

    [Fact]
    public void A_cloth_as_planned_has_nothing_wrong()
    {
        FaultReport report = FaultFinder.Find(Twill, Twill.Drawdown());
        Assert.True(report is { NothingWrong: true, Proved: true });
        Assert.Equal("", report.Readings[0].ToString());
    }

    [Fact]
    public void The_beginning_of_a_cloth_is_enough()
    {
        Drawdown seen = new WrongHeddle(4, ShaftSet.Of(3)).Apply(Twill).Drawdown().Piece(0, 16, 0, 8);
        Assert.Equal("End 5 is on shaft 3 instead of shaft 1.", Assert.Single(FaultFinder.Find(Twill, seen).Readings).ToString());
    }

    [Fact]
    public void A_pick_left_out_is_found_though_the_treadling_went_on()
    {
        // 16 picks are seen, and the 6th of the treadling is not among them.
        Drawdown seen = new PickLeftOut(5).Apply(FittingGen.Twill("1100", 16, 17)).Drawdown();
        FaultReport report = FaultFinder.Find(Twill, seen);
        Assert.Equal("Pick 6 (treadle 2) is left out.", Assert.Single(report.Readings).ToString());
        Assert.Equal(11, report.Readings[0].Steps[0].Mend.PicksToUnweave);
    }

    [Fact]
    public void An_end_doubled_is_found_by_the_wider_cloth()
    {
        Drawdown seen = new EndDoubled(6).Apply(Twill).Drawdown();
        Assert.Equal(new EndDoubled(6), Assert.Single(FaultFinder.Find(Twill, seen).Readings).Slips.Single());
    }

    [Fact]
    public void A_lift_plan_has_wrong_lifts_instead_of_treadles()
    {
        Draft plan = Twill.AsLiftPlan();
        Drawdown seen = new WrongTreadle(5, ShaftSet.Of(3, 4)).Apply(plan).Drawdown();
        Assert.Equal("Pick 6 moves shafts 3 and 4 instead of shafts 2 and 3.", Assert.Single(FaultFinder.Find(plan, seen).Readings).ToString());
    }

    [Fact]
    public void Marks_in_a_column_point_to_an_end()
    {
        // Three of the eight wrong crossings of end 7 are marked.
        FaultReport report = FaultFinder.FindFromMarks(Twill, [(1, 6), (3, 6), (9, 6)]);
        Assert.True(report.Proved);
        Assert.All(report.Readings, r => Assert.Single(r.Steps));
        Assert.Contains(report.Readings, r => r.Slips.Single() == new WrongHeddle(6, ShaftSet.Of(4)));
        Assert.Equal(report.Readings.Min(r => r.Left), report.Readings[0].Left);
        Assert.Equal(5, report.Readings[0].Left);
    }

    [Fact]
    public void All_wrong_crossings_marked_leave_nothing_over()
    {
        (int, int)[] marks = [.. new WrongTie(2, 4).Effect(Twill).Changed];
        FaultReading first = FaultFinder.FindFromMarks(Twill, marks).Readings[0];
        Assert.Equal(0, first.Left);
        Assert.Equal("Treadle 2 is also tied to shaft 4.", first.ToString());
    }

    [Fact]
    public void No_mark_means_nothing_wrong() => Assert.True(FaultFinder.FindFromMarks(Twill, []).NothingWrong);

    [Fact]
    public void A_mark_outside_the_cloth_is_refused()
    {
        var refused = Assert.Throws<InputProblemException>(() => FaultFinder.FindFromMarks(Twill, [(16, 0)]));
        Assert.Equal("There is no crossing of pick 17 and end 1.", refused.Problem.What);
    }

    [Theory]
    [InlineData(0, 100, "mostSlips")]
    [InlineData(7, 100, "mostSlips")]
    [InlineData(2, 0, "steps")]
    public void Limits_that_search_nothing_are_refused(int slips, long steps, string where) => Assert.Equal(
        where,
        Assert.Throws<InputProblemException>(() => FaultFinder.Find(Twill, Twill.Drawdown(), new FaultLimits(slips, steps))).Problem.Where);

    [Fact]
    public void A_draft_without_picks_is_refused() => Assert.Throws<InputProblemException>(
        () => FaultFinder.Find(Twill with { Treadling = [] }, Twill.Drawdown()));

    [Fact]
    public void When_nothing_explains_the_cloth_the_closest_is_given_as_not_proved()
    {
        // End 5 on shaft 3 and, besides, five crossings no single line can explain.
        Drawdown slipped = new WrongHeddle(4, ShaftSet.Of(3)).Apply(Twill).Drawdown();
        (int, int)[] odd = [(0, 0), (3, 9), (6, 12), (9, 2), (12, 14)];
        Drawdown seen = Drawdown.From(16, 16, (pick, end) => slipped[pick, end] != odd.Contains((pick, end)));
        FaultReport report = FaultFinder.Find(Twill, seen, new FaultLimits(2));
        Assert.False(report.Proved);
        FaultReading reading = Assert.Single(report.Readings);
        Assert.Equal(new WrongHeddle(4, ShaftSet.Of(3)), reading.Slips.Single());
        Assert.Equal(5, reading.Left);
    }

    [Fact]
    public void A_cloth_far_too_wide_has_no_reading()
    {
        FaultReport report = FaultFinder.Find(Twill, Twill.Drawdown().Repeated(40, 16), new FaultLimits(2));
        Assert.Empty(report.Readings);
        Assert.False(report.NothingWrong);
    }

    [Fact]
    public void Out_of_steps_is_not_proved()
    {
        Drawdown seen = new WrongHeddle(4, ShaftSet.Of(3)).Apply(Twill).Drawdown();
        Assert.False(FaultFinder.Find(Twill, seen, new FaultLimits(3, 1)).Proved);
    }

    private static bool MovesLines(Slip slip) => slip is EndLeftOut or EndDoubled or PickLeftOut or PickDoubled;

    private static Draft Continued(Draft draft) => draft.Repeated(draft.Ends, draft.Picks + 8);

    private static string Beginning(Drawdown cloth, int picks) => cloth.Piece(0, cloth.Ends, 0, picks).ToString();

    // Every slip of one kind or another that can be made.
    private static IEnumerable<Slip> Every(Draft draft)
    {
        for (int end = 0; end < draft.Ends; end++)
        {
            for (int shaft = 1; shaft <= draft.Shafts; shaft++)
            {
                if (draft.Threading[end] != ShaftSet.Of(shaft)) yield return new WrongHeddle(end, ShaftSet.Of(shaft));
            }

            if (end + 1 < draft.Ends && draft.Threading[end] != draft.Threading[end + 1]) yield return new CrossedEnds(end);
            yield return new EndLeftOut(end);
            yield return new EndDoubled(end);
        }

        for (int pick = 0; pick < draft.Picks; pick++)
        {
            for (int treadle = 1; treadle <= draft.Treadles; treadle++)
            {
                if (draft.Treadling[pick] != ShaftSet.Of(treadle)) yield return new WrongTreadle(pick, ShaftSet.Of(treadle));
            }

            yield return new PickDoubled(pick);
            if (draft.Picks > 1) yield return new PickLeftOut(pick);
        }

        for (int treadle = 1; treadle <= draft.Treadles; treadle++)
        {
            for (int shaft = 1; shaft <= draft.Shafts; shaft++)
            {
                if (draft.Treadling.Any(p => p.Contains(treadle)) && draft.Threading.Any(e => e.Contains(shaft))) yield return new WrongTie(treadle, shaft);
            }
        }
    }
}
