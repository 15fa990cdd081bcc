using Clothwright.Core.Calibration;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Setts;

public class SettAdviceTests
{
    private static SettAdvice Advise(Drawdown weave, ClothPurpose purpose = ClothPurpose.Everyday, Yarn? warp = null, Yarn? weft = null) =>
        SettAdvice.For(SettQuestion.About(warp ?? SampleYarns.Of(), weave, purpose, weft));

    [Fact]
    public void Purposes_run_from_open_to_close()
    {
        double[] setts = [.. new[] { ClothPurpose.Airy, ClothPurpose.Drape, ClothPurpose.Everyday, ClothPurpose.Firm, ClothPurpose.WarpFaced }
            .Select(p => Advise(SampleYarns.Plain, p).Ends.Value.PerInch)];
        Assert.Equal(setts.Order(), setts);
        Assert.True(Advise(SampleYarns.Plain, ClothPurpose.WeftFaced).Ends.Value.PerInch < setts[1]);
    }

    [Fact]
    public void The_advised_sett_lies_in_its_range_and_below_the_maximum() =>
        Gen.Select(Gen.Double[15, 900], Gen.Enum<ClothPurpose>(), Gen.Int[0, 3].Select(i => new[] { SampleYarns.Plain, SampleYarns.Twill, SampleYarns.Satin5, SampleYarns.WarpRib }[i]))
            .Sample((tex, purpose, weave) =>
            {
                SettAdvice advice = Advise(weave, purpose, SampleYarns.Of(tex: tex));
                Assert.True(advice.EndsRange.Holds(advice.Ends.Value));
                Assert.True(advice.PicksRange.Holds(advice.Picks.Value));
                if (purpose != ClothPurpose.WarpFaced) Assert.True(advice.Ends.Value < advice.MaximumEnds.Value);
                Assert.True(advice.Ends.StandardDeviation > 0);
                Assert.NotEmpty(advice.Ends.Working.Inputs);
            });

    [Fact]
    public void A_finer_yarn_is_advised_closer_as_the_root_of_its_count() =>
        Gen.Select(Gen.Double[20, 800], Gen.Double[1.05, 9]).Sample((tex, finer) =>
        {
            double coarse = Advise(SampleYarns.Twill, warp: SampleYarns.Of(tex: tex)).Ends.Value.PerInch;
            double fine = Advise(SampleYarns.Twill, warp: SampleYarns.Of(tex: tex / finer)).Ends.Value.PerInch;
            Assert.Equal(Math.Sqrt(finer), fine / coarse, 1e-6);
        });

    [Fact]
    public void One_yarn_in_a_balanced_weave_is_beaten_square()
    {
        SettAdvice advice = Advise(SampleYarns.Twill);
        Assert.Equal(advice.Ends.Value.PerInch, advice.Picks.Value.PerInch, 1e-9);
        Assert.Equal(advice.Picks.Value.PerInch / 2, advice.PicksBeside(Derived.Decision("ends", advice.Ends.Value * 0.5)).Value.PerInch, 1e-9);
    }

    [Fact]
    public void A_thicker_weft_opens_the_warp_and_in_floats_takes_fewer_picks_than_ends()
    {
        SettAdvice same = Advise(SampleYarns.Twill);
        SettAdvice thick = Advise(SampleYarns.Twill, weft: SampleYarns.Of(tex: 590.4));
        Assert.Equal(2, thick.WeftDiameter.Value / thick.WarpDiameter.Value, 1e-9);
        Assert.True(thick.Ends.Value < same.Ends.Value);
        // Ends take d + 2d/2, picks 2d + d/2.
        Assert.Equal(2.0 / 2.5, thick.Picks.Value.PerInch / thick.Ends.Value.PerInch, 1e-9);
        // In plain weave each thread has one of the other beside it, whichever is the thicker.
        SettAdvice plain = Advise(SampleYarns.Plain, weft: SampleYarns.Of(tex: 590.4));
        Assert.Equal(plain.Ends.Value.PerInch, plain.Picks.Value.PerInch, 1e-9);
    }

    [Fact]
    public void Ribs_part_ends_from_picks()
    {
        SettAdvice rib = Advise(SampleYarns.WarpRib);
        Assert.Equal(1, rib.Counts.MeanEndFloat);
        Assert.Equal(2, rib.Counts.MeanPickFloat);
        Assert.True(rib.MaximumPicks.Value > rib.MaximumEnds.Value);
    }

    [Fact]
    public void Limits_stand_side_by_side_by_name()
    {
        string[] plain = [.. Advise(SampleYarns.Plain).Limits.Select(l => l.Method)];
        string[] twill = [.. Advise(SampleYarns.Twill).Limits.Select(l => l.Method)];
        string[] irregular = [.. Advise(SampleYarns.Weave("101010/010101/101010/010101/111000/000111")).Limits.Select(l => l.Method)];
        Assert.Equal([AshenhurstIntersections.Method, AshenhurstCurvature.Method, PeirceJam.Method], irregular);
        Assert.Equal([.. irregular, Brierley.Method], plain);
        Assert.Equal([.. plain, LawRule.Method], twill);
        Assert.Contains("low confidence", LawRule.Method, StringComparison.Ordinal);
        Assert.All(Advise(SampleYarns.Hopsack).Limits, l => Assert.NotEmpty(l.Note));
    }

    [Fact]
    public void With_one_yarn_the_jam_is_the_curvature_theory_in_the_advice_too()
    {
        var limits = Advise(SampleYarns.Twill).Limits;
        Assert.Equal(limits[1].Ends.Value.PerInch, limits[2].Ends.Value.PerInch, 1e-6);
        Assert.Equal(limits[1].Picks.Value.PerInch, limits[2].Picks.Value.PerInch, 1e-6);
    }

    [Fact]
    public void Tight_lines_are_found_and_warned_of()
    {
        SettAdvice advice = Advise(SampleYarns.Weave("11110000/00001111/11110000/10101010"), ClothPurpose.Firm);
        Assert.Equal((3, 8), (advice.TightestPick.Thread, advice.TightestPick.Changes));
        Assert.True(advice.TightestPick.Limit.Value < advice.Ends.Value);
        Assert.Contains(advice.Notes, n => n.StartsWith("Pick 4 ", StringComparison.Ordinal));
    }

    [Fact]
    public void In_an_even_weave_the_tightest_line_is_the_limit_itself()
    {
        SettAdvice advice = Advise(SampleYarns.Twill);
        Assert.Equal(advice.MaximumEnds.Value.PerInch, advice.TightestPick.Limit.Value.PerInch, 1e-9);
        Assert.Equal(advice.MaximumPicks.Value.PerInch, advice.TightestEnd.Limit.Value.PerInch, 1e-9);
    }

    [Fact]
    public void Wide_and_fulled_cloth_is_set_more_open()
    {
        SettQuestion scarf = SettQuestion.About(SampleYarns.Of("wool-woollen", 250), SampleYarns.Plain, ClothPurpose.Drape);
        double usual = SettAdvice.For(scarf).Ends.Value.PerInch;
        double wide = SettAdvice.For(scarf with { Width = Length.FromCentimetres(120) }).Ends.Value.PerInch;
        double narrow = SettAdvice.For(scarf with { Width = Length.FromCentimetres(40) }).Ends.Value.PerInch;
        double fulled = SettAdvice.For(scarf with { ToBeFulled = true }).Ends.Value.PerInch;
        Assert.Equal(usual, narrow, 1e-9);
        Assert.Equal(0.925, wide / usual, 1e-9);
        Assert.Equal(0.80, fulled / usual, 1e-9);
    }

    [Fact]
    public void Her_own_cloths_take_the_place_of_the_charts()
    {
        Derived<Ratio> prior = Derived.Given("share", Ratio.FromValue(0.6), Source.CommonPractice, 0.1);
        LearnedValue learned = LearnedValue.From(prior, [Ratio.FromValue(0.5), Ratio.FromValue(0.52), Ratio.FromValue(0.51)]);
        SettQuestion question = SettQuestion.About(SampleYarns.Of(), SampleYarns.Twill, ClothPurpose.Drape) with { LearnedShare = learned };
        SettAdvice advice = SettAdvice.For(question);
        Assert.Equal(learned.Value.Value.Value, advice.Ends.Value.PerInch / advice.MaximumEnds.Value.PerInch, 1e-9);
        Assert.True(advice.EndsRange.Holds(advice.Ends.Value));
    }

    [Fact]
    public void Layers_share_the_reed()
    {
        SettQuestion question = SettQuestion.About(SampleYarns.Of(), SampleYarns.Plain, ClothPurpose.Drape) with { Layers = 2, Reeds = [Reed.Parse("10").Value] };
        SettAdvice advice = SettAdvice.For(question);
        Assert.Equal(2 * advice.Ends.Value.PerInch, advice.EndsOnLoom.Value.PerInch, 1e-9);
        Assert.Equal(advice.EndsOnLoom.Value.PerInch * (1 + advice.Reeds[0].Error.Value), advice.Reeds[0].Sett.PerInch, 1e-9);
        Assert.Contains(advice.Notes, n => n.Contains("2 layers", StringComparison.Ordinal));
    }

    // Double plain weave: ends 1, 3 and picks 1, 3 make the upper layer, the others the lower one.
    [Fact]
    public void A_double_weave_is_taken_apart_into_its_layers()
    {
        Drawdown doubled = SampleYarns.Weave("1000/1110/0010/1011");
        Yarn fine = SampleYarns.Of();
        Yarn coarse = SampleYarns.Of(tex: 300);
        SettAdvice both = Advise(doubled);
        SettAdvice plain = Advise(SampleYarns.Plain);
        Assert.Equal(2, both.Question.Layers);
        Assert.Equal(plain.Ends.Value.PerInch, both.Ends.Value.PerInch, 1e-9);
        Assert.Equal(2 * plain.Ends.Value.PerInch, both.EndsOnLoom.Value.PerInch, 1e-9);

        SettAdvice unlike = SettAdvice.For(SettQuestion.About(fine, doubled, ClothPurpose.Everyday) with { Warp = new ThreadSystem([fine, coarse], ThreadOrder.Of(0, 1)) });
        Assert.True(unlike.Question.Warp.IsOneYarn);
    }

    [Fact]
    public void Mixed_warps_are_set_by_the_mean_and_uneven_ends_are_told_how_to_sley()
    {
        Yarn thin = SampleYarns.Of(tex: 50);
        Yarn thick = SampleYarns.Of(tex: 600, construction: YarnConstruction.Chenille);
        SettQuestion question = SettQuestion.About(thin, SampleYarns.Plain, ClothPurpose.Everyday) with { Warp = new ThreadSystem([thin, thick], ThreadOrder.Of(0, 0, 0, 1)) };
        SettAdvice mixed = SettAdvice.For(question);
        double d1 = Advise(SampleYarns.Plain, warp: thin).WarpDiameter.Value.Millimetres;
        double d2 = Advise(SampleYarns.Plain, warp: thick).WarpDiameter.Value.Millimetres;
        Assert.Equal((3 * d1 + d2) / 4, mixed.WarpDiameter.Value.Millimetres, 1e-9);
        Assert.Contains(mixed.Notes, n => n.Contains("one to a dent", StringComparison.Ordinal));
        Assert.Contains(mixed.Notes, n => n.Contains("double", StringComparison.Ordinal));
        Assert.Contains(mixed.Notes, n => n.Contains("pile", StringComparison.Ordinal));
        Assert.Contains(mixed.Notes, n => n.Contains("ruler", StringComparison.Ordinal));
    }

    [Fact]
    public void A_monofilament_is_warped_with_another_yarn() => Assert.Contains(
        Advise(SampleYarns.Plain, warp: SampleYarns.Of("metallised-film", 20, YarnConstruction.Monofilament)).Notes,
        n => n.Contains("only together with another yarn", StringComparison.Ordinal));

    [Fact]
    public void A_thread_that_never_interlaces_is_reported() => Assert.Contains(
        Advise(SampleYarns.Weave("101/011/101/011")).Notes, n => n.Contains("never change face", StringComparison.Ordinal));

    [Fact]
    public void A_weft_that_does_not_cross_evenly_counts_where_it_crosses()
    {
        // Pattern picks float over three, tabby picks interlace every end: the tabby decides the room between the ends.
        Drawdown weave = SampleYarns.Weave("1010/1110/0101/1011");
        Yarn fine = SampleYarns.Of(tex: 40);
        Yarn thick = SampleYarns.Of(tex: 160);
        SettQuestion thickPattern = SettQuestion.About(fine, weave, ClothPurpose.Everyday) with { Weft = new ThreadSystem([fine, thick], ThreadOrder.Of(0, 1)) };
        SettQuestion thickTabby = thickPattern with { Weft = new ThreadSystem([fine, thick], ThreadOrder.Of(1, 0)) };
        Assert.True(SettAdvice.For(thickPattern).MaximumEnds.Value > SettAdvice.For(thickTabby).MaximumEnds.Value);
    }

    [Fact]
    public void Questions_that_cannot_be_answered_name_field_and_mend()
    {
        SettQuestion good = SettQuestion.About(SampleYarns.Of(), SampleYarns.Plain, ClothPurpose.Everyday);
        Assert.Equal("weave", Problem(good with { Weave = SampleYarns.Weave("11/11") }).Where);
        Assert.Equal("layers", Problem(good with { Layers = 0 }).Where);
        Assert.Equal("warp", Problem(good with { Warp = new ThreadSystem([], ThreadOrder.OneYarn) }).Where);
        Assert.Contains("yarn B", Problem(good with { Weft = new ThreadSystem([SampleYarns.Of()], ThreadOrder.Of(0, 1)) }).What, StringComparison.Ordinal);

        static InputProblem Problem(SettQuestion question) => Assert.Throws<InputProblemException>(() => SettAdvice.For(question)).Problem;
    }

    [Theory]
    [InlineData("Airy", ClothPurpose.Airy)]
    [InlineData("weft-faced", ClothPurpose.WeftFaced)]
    [InlineData("Weft Faced", ClothPurpose.WeftFaced)]
    [InlineData(" warpfaced ", ClothPurpose.WarpFaced)]
    public void A_purpose_is_read(string text, ClothPurpose purpose)
    {
        Assert.Equal(purpose, ClothPurposeText.Parse(text).Value);
        Assert.Equal(purpose, ClothPurposeText.Parse(ClothPurposeText.Word(purpose)).Value);
    }

    [Fact]
    public void An_unknown_purpose_is_answered_with_the_known_ones() =>
        Assert.Contains("drape", ClothPurposeText.Parse("lunch").Problem!.Mend, StringComparison.Ordinal);

    [Fact]
    public void A_face_of_one_system_has_no_balanced_share() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PurposeShare.Balanced(ClothPurpose.WarpFaced));

    [Fact]
    public void A_range_reads_with_units() =>
        Assert.Equal("8.0 per cm to 9.0 per cm", new SettRange(Sett.FromPerCentimetre(8), Sett.FromPerCentimetre(9)).ToString());
}
