using Clothwright.Core.Calibration;
using Clothwright.Core.Cloths.Stages;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Tests.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Cloths;

public class ClothStagesTests
{
    private static StagesQuestion Question(Yarn yarn, Drawdown weave, double perInch) => new()
    {
        Warp = ThreadSystem.Of(yarn),
        Weft = ThreadSystem.Of(yarn),
        Weave = weave,
        EndsInReed = Derived.Decision("ends in the reed", Sett.FromPerInch(perInch)),
        Picks = Derived.Decision("picks", Sett.FromPerInch(perInch)),
    };

    // One cloth read in a weavers' forum: 8/2 cotton twill at 20 ends per inch went from 14 in in the reed to 11 in finished, 21 % together.
    [Fact]
    public void A_measured_twill_scarf_lies_within_two_spreads_of_the_chain()
    {
        ClothStages stages = ClothStages.Of(Question(SampleYarns.Of(), SampleYarns.Twill, 20));
        double left = (1 - stages.DrawIn.Value.Value) * (1 - stages.WidthShrinkage.Value.Value);
        double spread = Math.Sqrt(Math.Pow(stages.DrawIn.StandardDeviation, 2) + Math.Pow(stages.WidthShrinkage.StandardDeviation, 2));
        Assert.InRange(11.0 / 14, left - 3 * spread, left + 3 * spread);
    }

    // Handweaving habit, common practice, no source: warp take-up 8 to 12 % balanced, draw-in 5 to 10 %.
    [Fact]
    public void Take_up_and_draw_in_of_plain_cotton_reach_the_habit_of_the_trade_within_their_spread()
    {
        ClothStages stages = ClothStages.Of(Question(SampleYarns.Of(), SampleYarns.Plain, 20));
        Assert.True(stages.WarpTakeUp.Working.Upper95 > 0.08, $"{stages.WarpTakeUp.Working.Upper95}");
        Assert.True(stages.DrawIn.Working.Lower95 < 0.10 && stages.DrawIn.Working.Upper95 > 0.05);
        Assert.InRange(stages.WarpTakeUp.Value.Value, stages.OffLoom.WarpTakeUp.Value.Value, 0.10);
        Assert.InRange(stages.WeftTakeUp.Value.Value, 0.075, stages.OnLoom.WeftTakeUp.Value.Value);
    }

    [Fact]
    public void The_mass_off_the_loom_is_that_of_the_yarn_the_take_up_uses()
    {
        ClothStages stages = ClothStages.Of(Question(SampleYarns.Of("cotton", 100), SampleYarns.Plain, 25.4));
        double ends = stages.OffLoom.Question.Ends.Value.PerMetre;
        double yarn = ends / (1 - stages.WarpTakeUp.Value.Value) + 1000 / (1 - stages.WeftTakeUp.Value.Value);
        Assert.Equal(yarn * 0.1, stages.OffLoomMass.Value.GramsPerSquareMetre, 1e-6);
    }

    // Law of total variance, worked by hand: 4 ± 1 and 10 ± 1 with 1.5 of scatter on the first, half each: 7 ± √((1 + 2.25 + 1) ÷ 2 + 9).
    [Fact]
    public void Two_methods_that_disagree_leave_the_middle_and_the_spread_of_their_disagreement()
    {
        Derived<Ratio> geometry = Derived.Given("geometry", Ratio.FromPercent(4), Source.Measured, 0.01);
        Derived<Ratio> habit = Derived.Given("habit", Ratio.FromPercent(10), Source.CommonPractice, 0.01);
        Derived<Ratio> both = ForeseenTakeUp.EitherOf("take-up", geometry, habit, 0.5);
        Assert.Equal(0.07, both.Value.Value, 1e-12);
        Assert.Equal(Math.Sqrt(4.25 / 2 + 9) / 100, both.StandardDeviation, 1e-6);
    }

    [Fact]
    public void The_habit_leans_from_balanced_to_faced_without_a_step() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((warp, weft) =>
        {
            double lean = HabitualTakeUp.LeanFraction(warp, weft);
            Assert.InRange(lean, -1, 1);
            Assert.Equal(-lean, HabitualTakeUp.LeanFraction(weft, warp), 1e-12);
            Assert.InRange(HabitualTakeUp.LeanFraction(warp + 0.001, weft) - lean, 0, 0.0041);
        });

    [Fact]
    public void Each_stage_is_closer_than_the_one_before()
    {
        ClothStages stages = ClothStages.Of(Question(SampleYarns.Of(), SampleYarns.Twill, 20));
        Assert.True(stages.OnLoom.Question.Ends.Value < stages.OffLoom.Question.Ends.Value);
        Assert.True(stages.OffLoom.Question.Ends.Value < stages.Washed.Question.Ends.Value);
        Assert.True(stages.OffLoom.Question.Picks.Value < stages.Washed.Question.Picks.Value);
        Assert.True(stages.WashedMass.Value > stages.OffLoomMass.Value);
    }

    [Fact]
    public void Washing_keeps_the_yarn_and_only_the_area_shrinks() =>
        Gen.Select(Gen.Double[8, 24], Gen.Bool).Sample((perInch, twill) =>
        {
            ClothStages stages = ClothStages.Of(Question(SampleYarns.Of(), twill ? SampleYarns.Twill : SampleYarns.Plain, perInch));
            double area = (1 - stages.LengthShrinkage.Value.Value) * (1 - stages.WidthShrinkage.Value.Value);
            Assert.Equal(stages.OffLoomMass.Value.GramsPerSquareMetre, stages.WashedMass.Value.GramsPerSquareMetre * area, 1e-9);
        });

    [Fact]
    public void An_open_cloth_shrinks_more_than_a_close_one() =>
        Assert.True(Shrinkage(12) > Shrinkage(24));

    [Fact]
    public void A_cloth_near_its_jam_cannot_shrink_as_its_fibre_would()
    {
        ClothStages close = ClothStages.Of(Question(SampleYarns.Of(), SampleYarns.Plain, 29));
        Assert.Contains("jam", close.LengthShrinkage.Working.Rule.Name, StringComparison.Ordinal);
        Assert.True(close.LengthShrinkage.Value.Value < 0.06);
        Assert.True(close.LengthShrinkage.Value.Value > 0);
    }

    [Fact]
    public void Wool_that_is_fulled_shrinks_as_felt_does_and_cotton_does_not()
    {
        StagesQuestion wool = Question(SampleYarns.Of("wool-woollen", 250), SampleYarns.Plain, 10) with { ToBeFulled = true };
        Assert.Equal(0.30, ClothStages.Of(wool).LengthShrinkage.Value.Value, 1e-9);
        ClothStages cotton = ClothStages.Of(Question(SampleYarns.Of(), SampleYarns.Plain, 16) with { ToBeFulled = true });
        Assert.True(cotton.LengthShrinkage.Value.Value < 0.15);
    }

    [Fact]
    public void Mixed_yarns_shrink_by_their_share()
    {
        Yarn cotton = SampleYarns.Of();
        Yarn silk = SampleYarns.Of("silk-spun", 100);
        ThreadSystem mixed = new([cotton, silk], ThreadOrder.Of(0, 0, 0, 1));
        double a = cotton.Fibres.WashingShrinkage.Value.Value;
        double b = silk.Fibres.WashingShrinkage.Value.Value;
        Assert.Equal(0.75 * a + 0.25 * b, WashingShrinkage.OfFibres(mixed, "shrinkage").Value.Value, 1e-12);
        Assert.False(WashingShrinkage.Felts(mixed));
    }

    [Fact]
    public void What_her_pieces_taught_takes_the_place_of_the_handbook()
    {
        LearnedValue Learned(double value) => LearnedValue.From(
            Derived.Given($"learned {value}", Ratio.FromValue(0.08), Source.CommonPractice, 10), [Ratio.FromValue(value)], Ratio.FromValue(0.001));
        ClothStages stages = ClothStages.Of(Question(SampleYarns.Of(), SampleYarns.Twill, 20) with
        {
            LearnedWarpTakeUp = Learned(0.11),
            LearnedDrawIn = Learned(0.09),
            LearnedLengthShrinkage = Learned(0.12),
            LearnedWidthShrinkage = Learned(0.13),
        });
        Assert.Equal(0.11, stages.WarpTakeUp.Value.Value, 1e-4);
        Assert.Equal(0.09, stages.DrawIn.Value.Value, 1e-4);
        Assert.Equal(0.12, stages.LengthShrinkage.Value.Value, 1e-4);
        Assert.Equal(0.13, stages.WidthShrinkage.Value.Value, 1e-4);
        Assert.Equal(20 / (1 - 0.09) / (1 - 0.13), stages.Washed.Question.Ends.Value.PerInch, 1e-2);
    }

    private static double Shrinkage(double perInch) =>
        ClothStages.Of(Question(SampleYarns.Of(), SampleYarns.Twill, perInch)).LengthShrinkage.Value.Value;
}
