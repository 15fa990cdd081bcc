using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.RigidHeddles;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.RigidHeddles;

public class RigidHeddleFitTests
{
    [Fact]
    public void What_can_be_woven_weaves_the_cloth_of_the_draft() =>
        Gen.Select(Clothes.Drafts(6, 20), Gen.Int[1, 4], Gen.Int[0, 4]).Sample(
            (draft, heddles, sticks) =>
            {
                RigidHeddlePlan plan = RigidHeddleFit.Of(draft, heddles, sticks);
                Assert.Equal(plan.CanBeWoven, plan.UnmadePicks.IsEmpty);
                Assert.InRange(plan.Sticks.Length, 0, sticks);
                if (plan.CanBeWoven) Assert.Equal(draft.Drawdown(), plan.Drawdown());
            },
            iter: 400);

    [Fact]
    public void One_heddle_fewer_than_the_kinds_of_ends_makes_every_shed() =>
        Clothes.Drafts(5, 20).Sample(
            draft =>
            {
                Drawdown cloth = draft.Drawdown();
                string[] kinds = [.. Enumerable.Range(0, cloth.Ends).Select(e => string.Concat(Enumerable.Range(0, cloth.Picks).Select(p => cloth[p, e]))).Distinct()];
                if (kinds.Length is < 2 or > 5) return;
                RigidHeddlePlan plan = RigidHeddleFit.Of(draft, kinds.Length - 1);
                Assert.All(plan.UnmadePicks, p => Assert.Single(Enumerable.Range(0, cloth.Ends).Select(e => cloth[p, e]).Distinct()));
            },
            iter: 300);

    [Fact]
    public void Four_kinds_of_ends_on_one_heddle_need_sticks_and_the_answer_says_how_many()
    {
        Draft twill = Twill.Of(TwillBase.Of(2, 2)).Draft;
        RigidHeddlePlan plan = RigidHeddleFit.Of(twill, 1);

        Assert.False(plan.CanBeWoven);
        Assert.Contains("4 of 4 picks cannot be made on 1 heddle with 0 sticks", plan.Cannot!.What, StringComparison.Ordinal);
        Assert.Contains("3 heddles, or 4 pick-up sticks", plan.Cannot.Mend, StringComparison.Ordinal);
        Assert.True(RigidHeddleFit.Of(twill, 3).CanBeWoven);
        Assert.True(RigidHeddleFit.Of(twill, 1, 4).CanBeWoven);
        Assert.Throws<InvalidOperationException>(() => plan.Drawdown());
    }

    [Fact]
    public void A_draft_whose_ends_all_move_alike_has_no_shed()
    {
        Draft alike = DraftNotation.Parse("111 | 1:1 2:2 | 12").Value;

        Assert.Contains("no shed", RigidHeddleFit.Of(alike, 1).Cannot!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pick_that_raises_every_end_is_to_be_left_out()
    {
        Draft draft = DraftNotation.Parse("1212 | 1:1 2:2 3:12 | 123").Value;
        RigidHeddlePlan plan = RigidHeddleFit.Of(draft, 1);

        Assert.Equal(2, Assert.Single(plan.UnmadePicks));
        Assert.Contains("every end is raised", plan.Cannot!.What, StringComparison.Ordinal);
        Assert.Contains("Leave out", plan.Cannot.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void The_dressing_table_reads_end_by_end_and_pick_by_pick()
    {
        RigidHeddlePlan plan = RigidHeddleFit.Of(Twill.Of(TwillBase.Of(2, 1)).Sized(new WeaveSize(6, 3)).Draft, 2);
        string table = RigidHeddleTable.Of(plan, new RigidHeddle("ten", Sett.FromPerInch(10), 2), Sett.FromPerInch(15)).ToText();

        // At one and a half times the number each pitch holds one eye end of each heddle and one slot end.
        Assert.Equal(
            "end 1: heddle 1 eye 1, heddle 2 slot 1 left of eye 1\n"
            + "end 2: heddle 1 slot 1, heddle 2 eye 1\n"
            + "end 3: heddle 1 slot 1, heddle 2 slot 1\n"
            + "end 4: heddle 1 eye 2, heddle 2 slot 1\n"
            + "end 5: heddle 1 slot 2, heddle 2 eye 2\n"
            + "end 6: heddle 1 slot 2, heddle 2 slot 2\n"
            + "pick 1: heddle 1 up, heddle 2 up\n"
            + "pick 2: heddle 1 down, heddle 2 at rest\n"
            + "pick 3: heddle 1 at rest, heddle 2 down\n",
            table);
    }

    [Fact]
    public void A_stick_stands_in_the_table_of_its_ends_and_picks()
    {
        Draft spots = DraftNotation.Parse("1213 | 1:1 2:23 3:2 | 1213").Value;
        RigidHeddlePlan plan = RigidHeddleFit.Of(spots, 1, 1);
        string table = RigidHeddleTable.Of(plan, new RigidHeddle("ten", Sett.FromPerInch(10), 1), Sett.FromPerInch(10)).ToText();

        Assert.True(plan.CanBeWoven);
        Assert.Contains("end 2: slot 1, on stick 1\n", table, StringComparison.Ordinal);
        Assert.Contains("pick 4: heddle at rest, stick 1 forward\n", table, StringComparison.Ordinal);
        Assert.DoesNotContain("end 4: slot 2, on stick", table, StringComparison.Ordinal);
    }

    [Fact]
    public void No_thread_crosses_another_in_any_heddle() =>
        Gen.Select(Gen.Int[1, 4].Array[6, 40], Gen.Double[0.6, 2.0]).Sample(
            (groups, times) =>
            {
                var plan = new RigidHeddlePlan(3, [.. groups], [], [], null);
                var heddle = new RigidHeddle("ten", Sett.FromPerInch(10), 3);
                RigidHeddleTable table = RigidHeddleTable.Of(plan, heddle, heddle.Spaces * times);
                for (int h = 0; h < 3; h++)
                {
                    // Slot n lies right of eye n.
                    int[] places = [.. table.Holes.Select(e => e[h].IsEye ? 2 * e[h].Number : 2 * e[h].Number + 1)];
                    for (int e = 1; e < places.Length; e++)
                    {
                        Assert.True(places[e] > places[e - 1] || (places[e] == places[e - 1] && !table.Holes[e][h].IsEye), $"ends {e} and {e + 1} in heddle {h + 1}");
                    }
                }
            },
            iter: 200);

    [Fact]
    public void No_choice_of_eyes_pulls_the_warp_less() =>
        Gen.Select(Gen.Int[1, 3].Array[1, 5], Gen.Double[0.5, 2.5]).Sample(
            (gaps, times) =>
            {
                int[] ends = new int[gaps.Length];
                for (int i = 1; i < ends.Length; i++) ends[i] = ends[i - 1] + gaps[i];
                Sett spaces = Sett.FromPerInch(10);
                Sett sett = spaces * times;
                double[] places = [.. ends.Select(e => e / sett.PerMetre)];
                double least = LeastRange(places, 2 / spaces.PerMetre, [], (int)(places[^1] * spaces.PerMetre / 2) + ends.Length + 1);

                Assert.Equal(least / 2, EyePlacement.Of(ends, sett, spaces).GreatestShift.Metres, 9);
            },
            iter: 200);

    // Every rising choice of eyes, eye 0 first; the heddle may slide, so half the range of the deviations counts.
    private static double LeastRange(double[] places, double pitch, List<double> deviations, int eyes, int from = 0)
    {
        if (deviations.Count == places.Length) return deviations.Max() - deviations.Min();
        double best = double.MaxValue;
        int last = deviations.Count == 0 ? 0 : eyes;
        for (int eye = from; eye <= last; eye++)
        {
            best = Math.Min(best, LeastRange(places, pitch, [.. deviations, places[deviations.Count] - eye * pitch], eyes, eye + 1));
        }

        return best;
    }
}
