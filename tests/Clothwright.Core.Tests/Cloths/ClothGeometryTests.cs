using Clothwright.Core.Calibration;
using Clothwright.Core.Cloths;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Tests.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Cloths;

public class ClothGeometryTests
{
    private static ClothQuestion Question(Drawdown weave, double ends = 20, double picks = 20, Yarn? warp = null, Yarn? weft = null) => ClothQuestion.About(
        warp ?? SampleYarns.Of(), weft ?? warp ?? SampleYarns.Of(), weave, Sett.FromPerInch(ends), Sett.FromPerInch(picks));

    [Fact]
    public void Every_number_of_a_cloth_shows_its_working_and_its_spread()
    {
        ClothGeometry cloth = ClothGeometry.Of(Question(SampleYarns.Plain));
        Assert.All(
            new IDerived[] { cloth.WarpCrimp, cloth.WeftCrimp, cloth.WarpTakeUp, cloth.WeftTakeUp, cloth.Thickness, cloth.Mass, cloth.WarpCover, cloth.Cover, cloth.Tightness },
            d =>
            {
                Assert.NotEmpty(d.Working.Inputs);
                Assert.NotEmpty(d.Working.Rule.Formula);
                Assert.True(d.Working.Spread.StandardDeviation > 0, d.Working.Label);
            });
    }

    [Fact]
    public void A_balanced_cloth_takes_up_alike_both_ways()
    {
        ClothGeometry cloth = ClothGeometry.Of(Question(SampleYarns.Twill));
        Assert.Equal(cloth.WarpCrimp.Value.Value, cloth.WeftCrimp.Value.Value, 1e-9);
        Assert.Equal(cloth.WarpCrimp.Value.Value / (1 + cloth.WarpCrimp.Value.Value), cloth.WarpTakeUp.Value.Value, 1e-12);
    }

    [Fact]
    public void On_the_loom_the_stretched_warp_takes_less_and_the_weft_more()
    {
        ClothGeometry rest = ClothGeometry.Of(Question(SampleYarns.Plain));
        ClothGeometry loom = ClothGeometry.Of(Question(SampleYarns.Plain) with { Sharing = CrimpSharing.OnLoom });
        Assert.True(loom.WarpTakeUp.Value < rest.WarpTakeUp.Value);
        Assert.True(loom.WeftTakeUp.Value > rest.WeftTakeUp.Value);
    }

    [Fact]
    public void Floats_take_up_less_than_plain_weave() => Assert.True(
        ClothGeometry.Of(Question(SampleYarns.Satin5)).WarpTakeUp.Value < ClothGeometry.Of(Question(SampleYarns.Plain)).WarpTakeUp.Value);

    [Fact]
    public void Crimp_goes_to_nothing_as_the_cloth_opens() =>
        Gen.Select(Gen.Double[0.5, 2], Gen.Bool).Sample((perInch, twill) =>
            Assert.InRange(ClothGeometry.Of(Question(twill ? SampleYarns.Twill : SampleYarns.Plain, perInch, perInch)).WarpCrimp.Value.Value, 0, 0.001));

    // Handweaving habit gives the warp of a weft-faced cloth 2 to 5 % (common practice, no source). Packed picks leave it room for no
    // more than 6 %; a balance of bending leaves it straight.
    [Fact]
    public void In_a_weft_faced_cloth_the_warp_lies_nearly_straight()
    {
        ClothQuestion question = Question(SampleYarns.Plain, ends: 8, picks: 48);
        ClothGeometry rug = ClothGeometry.Of(question);
        Assert.InRange(rug.WarpTakeUp.Value.Value, 0.02, 0.06);
        Assert.True(rug.WeftTakeUp.Value.Value > 0.02);
        Assert.True(rug.WeftCover.Value.Value > 0.85);
        Assert.True(ClothGeometry.Of(question with { Sharing = CrimpSharing.BendingBalance }).WarpTakeUp.Value.Value < 0.01);
    }

    // Handweaving habit lets a warp-faced cloth take up to 30 % of the warp, common practice, no source.
    [Fact]
    public void In_a_warp_faced_cloth_the_warp_takes_up_much_and_the_weft_little()
    {
        ClothGeometry band = ClothGeometry.Of(Question(SampleYarns.Plain, ends: 48, picks: 18));
        Assert.InRange(band.WarpTakeUp.Value.Value, 0.12, 0.30);
        Assert.True(band.WeftTakeUp.Value.Value < 0.07);
    }

    [Fact]
    public void The_mean_of_the_threads_is_the_crimp_of_the_cloth_in_an_open_weave()
    {
        ClothGeometry cloth = ClothGeometry.Of(Question(SampleYarns.Weave("101010/010101/101010/010101/111000/000111"), 14, 14));
        Assert.Equal(cloth.WarpCrimp.Value.Value, cloth.CrimpPerEnd.Average(), 1e-9);
        Assert.Equal(cloth.WeftCrimp.Value.Value, cloth.CrimpPerPick.Average(), 1e-9);
        Assert.True(cloth.CrimpPerPick[4] < cloth.CrimpPerPick[0]);
    }

    [Fact]
    public void A_thread_that_never_interlaces_lies_straight() =>
        Assert.Equal(0, ClothGeometry.Of(Question(SampleYarns.Weave("101/011/101/011"))).CrimpPerEnd[2]);

    [Fact]
    public void Mass_is_that_of_the_yarn_in_a_square_metre() =>
        Gen.Select(Gen.Double[5, 25], Gen.Double[5, 25], Gen.Double[20, 160]).Sample((ends, picks, tex) =>
        {
            ClothGeometry cloth = ClothGeometry.Of(Question(SampleYarns.Twill, ends, picks, SampleYarns.Of(tex: tex)));
            double metresOfWarp = ends / 0.0254 * (1 + cloth.WarpCrimp.Value.Value);
            double metresOfWeft = picks / 0.0254 * (1 + cloth.WeftCrimp.Value.Value);
            Assert.Equal((metresOfWarp + metresOfWeft) * tex / 1000, cloth.Mass.Value.GramsPerSquareMetre, 1e-6);
        });

    // Clasped weft lays two strands in each shed, all the way across where the yarns overlap at their turn.
    [Fact]
    public void A_doubled_weft_makes_a_heavier_and_thicker_cloth()
    {
        ClothGeometry single = ClothGeometry.Of(Question(SampleYarns.Plain));
        ClothGeometry doubled = ClothGeometry.Of(Question(SampleYarns.Plain, 20, 20, SampleYarns.Of(), SampleYarns.Of(tex: 2 * 147.6)));
        Assert.True(doubled.Mass.Value.GramsPerSquareMetre > 1.45 * single.Mass.Value.GramsPerSquareMetre);
        Assert.True(doubled.Thickness.Value > single.Thickness.Value);
        Assert.True(doubled.Cover.Value > single.Cover.Value);
    }

    [Fact]
    public void Equal_crimp_is_equal_and_measured_crimp_is_the_measured_one()
    {
        ClothQuestion unlike = Question(SampleYarns.Twill, 24, 16);
        ClothGeometry equal = ClothGeometry.Of(unlike with { Sharing = CrimpSharing.EqualCrimp });
        Assert.Equal(equal.WarpCrimp.Value.Value, equal.WeftCrimp.Value.Value, 1e-6);
        ClothGeometry measured = ClothGeometry.Of(unlike with
        {
            Sharing = CrimpSharing.MeasuredWarpCrimp,
            MeasuredWarpCrimp = Derived.Given("warp crimp", Ratio.FromPercent(4), Source.Measured, 0.005),
        });
        Assert.Equal(0.04, measured.WarpCrimp.Value.Value, 1e-6);
        Assert.Equal(0.005, measured.WarpCrimp.StandardDeviation, 1e-3);
    }

    [Fact]
    public void In_a_bending_balance_the_stiffer_system_bends_less()
    {
        ClothGeometry cloth = ClothGeometry.Of(Question(SampleYarns.Plain, 16, 16, SampleYarns.Of(tex: 300), SampleYarns.Of(tex: 100)) with { Sharing = CrimpSharing.BendingBalance });
        // Equal spans: h1 ÷ h2 = T2 ÷ T1.
        Assert.Equal(0.25, cloth.WarpShare.Value.Value, 1e-6);
    }

    [Fact]
    public void Swatches_take_the_place_of_the_geometry()
    {
        LearnedValue takeUp = LearnedValue.From(
            Derived.Given("warp take-up", Ratio.FromPercent(8), Source.CommonPractice, 0.02), [Ratio.FromPercent(11), Ratio.FromPercent(12)]);
        LearnedValue share = LearnedValue.From(Derived.Given("share", Ratio.FromValue(0.5), Source.CommonPractice, 0.07), [Ratio.FromValue(0.4)]);
        ClothGeometry cloth = ClothGeometry.Of(Question(SampleYarns.Plain) with { LearnedWarpTakeUp = takeUp, LearnedWeftTakeUp = takeUp, LearnedWarpShare = share });
        Assert.Equal(takeUp.Value.Value, cloth.WarpTakeUp.Value);
        Assert.Equal(takeUp.Value.Value, cloth.WeftTakeUp.Value);
        Assert.Equal(share.Value.Value, cloth.WarpShare.Value);
    }

    [Fact]
    public void A_flattened_thread_covers_more_and_makes_a_thinner_cloth()
    {
        ClothGeometry round = ClothGeometry.Of(Question(SampleYarns.Plain, 16, 16));
        ClothGeometry flat = ClothGeometry.Of(Question(SampleYarns.Plain, 16, 16) with { WarpFlattening = Ratio.FromValue(1.4), WeftFlattening = Ratio.FromValue(1.4) });
        Assert.True(flat.Cover.Value > round.Cover.Value);
        Assert.True(flat.Thickness.Value < round.Thickness.Value);
    }

    [Fact]
    public void A_cloth_closer_than_its_yarns_is_called_jammed_and_still_described()
    {
        ClothGeometry jammed = ClothGeometry.Of(Question(SampleYarns.Plain, 60, 60));
        Assert.True(jammed.IsJammed);
        Assert.True(jammed.Tightness.Value.Value > 1);
        Assert.Contains("closer than", jammed.Hand.Words, StringComparison.Ordinal);
        Assert.True(double.IsFinite(jammed.WarpCrimp.Value.Value));
        Assert.False(ClothGeometry.Of(Question(SampleYarns.Plain)).IsJammed);
    }

    [Fact]
    public void No_sett_or_yarn_breaks_the_geometry() =>
        Gen.Select(Gen.Double[0.5, 120], Gen.Double[0.5, 120], Gen.Double[5, 2000], Gen.Double[5, 2000], Gen.Int[0, 3]).Sample((ends, picks, warp, weft, weave) =>
        {
            Drawdown drawdown = new[] { SampleYarns.Plain, SampleYarns.Twill, SampleYarns.WarpRib, SampleYarns.Satin5 }[weave];
            ClothGeometry cloth = ClothGeometry.Of(Question(drawdown, ends, picks, SampleYarns.Of(tex: warp), SampleYarns.Of(tex: weft)));
            Assert.InRange(cloth.WarpTakeUp.Value.Value, -1e-9, 1);
            Assert.InRange(cloth.WeftTakeUp.Value.Value, -1e-9, 1);
            Assert.InRange(cloth.Cover.Value.Value, 0, 1);
            Assert.InRange(cloth.WarpShare.Value.Value, 0, 1);
        });

    [Fact]
    public void Questions_that_cannot_be_answered_name_field_and_mend()
    {
        ClothQuestion good = Question(SampleYarns.Plain);
        Assert.Equal("weave", Problem(good with { Weave = SampleYarns.Weave("10/10") }).Where);
        Assert.Equal("warpFlattening", Problem(good with { WarpFlattening = Ratio.FromValue(0.5) }).Where);
        Assert.Equal("weftFlattening", Problem(good with { WeftFlattening = Ratio.FromValue(11) }).Where);
        Assert.Equal("measuredWarpCrimp", Problem(good with { Sharing = CrimpSharing.MeasuredWarpCrimp }).Where);
        Assert.Equal("warp", Problem(good with { Warp = new ThreadSystem([], ThreadOrder.OneYarn) }).Where);
        Assert.Equal("weft", Problem(good with { Weft = new ThreadSystem([], ThreadOrder.OneYarn) }).Where);

        static InputProblem Problem(ClothQuestion question) => Assert.Throws<InputProblemException>(() => ClothGeometry.Of(question)).Problem;
    }
}
