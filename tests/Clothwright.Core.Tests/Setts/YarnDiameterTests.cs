using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Setts;

public class YarnDiameterTests
{
    // K by a handweaving essay citing Ashenhurst and Watson: 0.92 cotton, linen, silk; 0.90 worsted; 0.84 woollen.
    [Theory]
    [InlineData("cotton", 0.92)]
    [InlineData("linen", 0.92)]
    [InlineData("silk-spun", 0.92)]
    [InlineData("bamboo-viscose", 0.92)]
    [InlineData("lyocell", 0.92)]
    [InlineData("wool-worsted", 0.90)]
    [InlineData("merino", 0.90)]
    [InlineData("wool-woollen", 0.84)]
    public void K_follows_the_fibre(string fibre, double k) => Assert.Equal(k, AshenhurstK.Of(SampleYarns.Of(fibre)).Value.Value, 1e-12);

    [Fact]
    public void Every_fibre_of_the_catalogue_has_a_sensible_diameter()
    {
        foreach (Fibre fibre in FibreCatalogue.All)
        {
            var k = AshenhurstK.Of(SampleYarns.Of(fibre.Id));
            Assert.InRange(k.Value.Value, 0.6, 1.2);
            Assert.True(k.StandardDeviation > 0, fibre.Id);
        }
    }

    [Fact]
    public void A_light_fibre_without_a_published_K_makes_a_thicker_yarn() =>
        Assert.True(YarnDiameter.Of(SampleYarns.Of("acrylic")).Value > YarnDiameter.Of(SampleYarns.Of("cotton")).Value);

    [Fact]
    public void A_blend_lies_between_its_fibres()
    {
        Yarn blend = SampleYarns.Of() with { Fibres = FibreBlend.Of((FibreCatalogue.Get("cotton"), 1), (FibreCatalogue.Get("wool-woollen"), 1)) };
        Assert.InRange(AshenhurstK.Of(blend).Value.Value, 0.8401, 0.9199);
        Assert.Equal(1 / Math.Sqrt(0.5 / (0.92 * 0.92) + 0.5 / (0.84 * 0.84)), AshenhurstK.Of(blend).Value.Value, 1e-9);
        Assert.Equal(2, AshenhurstK.Of(blend).Working.Inputs.Length);
    }

    [Fact]
    public void Measured_wraps_take_the_place_of_every_rule()
    {
        Derived<Sett> wraps = Derived.Given("wraps", Sett.FromPerInch(30), Source.Measured);
        Yarn yarn = SampleYarns.Of();
        Length byHand = YarnDiameter.Of(yarn with { MeasuredWraps = wraps }).Value;
        Length geometric = YarnDiameter.Of(yarn with { MeasuredWraps = wraps, WrapMeasure = WrapMeasure.Geometric }).Value;
        Assert.Equal(25.4 / 30, geometric.Millimetres, 1e-9);
        Assert.Equal(0.7 * 25.4 / 30, byHand.Millimetres, 1e-9);
        Assert.Equal(30, WrapsDiameter.ByHand(YarnDiameter.Of(yarn with { MeasuredWraps = wraps })).Value.PerInch, 1e-9);
    }

    [Fact]
    public void Each_rule_gives_its_reading_by_name_the_chosen_one_first()
    {
        Yarn yarn = SampleYarns.Of();
        Assert.Equal(
            ["Ashenhurst, diameters per inch", "fibre density and packing", "Peirce, cotton"],
            YarnDiameter.Readings(yarn).Select(r => r.Rule));
        Yarn wrapped = yarn with { MeasuredWraps = Derived.Given("wraps", Sett.FromPerInch(33), Source.Measured) };
        Assert.Equal("measured wraps, by hand", YarnDiameter.Readings(wrapped)[0].Rule);
        Assert.Equal(4, YarnDiameter.Readings(wrapped).Length);
        DiameterReading first = YarnDiameter.Readings(yarn)[0];
        Assert.Equal(1, first.Wraps.Value.PerMetre * first.Diameter.Value.Metres, 1e-9);
    }

    [Theory]
    [InlineData(YarnConstruction.Chenille, true)]
    [InlineData(YarnConstruction.Boucle, true)]
    [InlineData(YarnConstruction.Ribbon, true)]
    [InlineData(YarnConstruction.Soft, true)]
    [InlineData(YarnConstruction.Spun, false)]
    [InlineData(YarnConstruction.Reeled, false)]
    public void A_build_no_rule_foretells_is_less_sure_and_should_be_measured(YarnConstruction construction, bool measure)
    {
        Assert.Equal(measure, AshenhurstK.ShouldBeMeasured(construction));
        if (construction == YarnConstruction.Spun) return;
        Assert.True(AshenhurstK.Of(SampleYarns.Of(construction: construction)).StandardDeviation > AshenhurstK.Of(SampleYarns.Of()).StandardDeviation);
    }

    [Fact]
    public void A_single_filament_is_solid() => Assert.Equal(
        Math.Sqrt(4 * 50 / (1000 * Math.PI * FibreCatalogue.Get("nylon").Density.Value.GramsPerCubicCentimetre)),
        YarnDiameter.Of(SampleYarns.Of("nylon", 50, YarnConstruction.Monofilament)).Value.Millimetres,
        1e-6);

    // Hand-knitting classes (one web table): 16 to 18 wraps at 2000 to 2400 yards per pound, 9 to 11 at 800 to 1000, 6 to 8 at 400 to 500.
    [Theory]
    [InlineData(17, 2200)]
    [InlineData(10, 900)]
    [InlineData(7, 450)]
    public void A_knitting_yarn_lies_between_its_wraps_at_rest_and_the_same_count_spun_for_weaving(double wrapsPerInch, double yardsPerPound)
    {
        Yarn soft = SampleYarns.Of("wool-worsted", LinearDensity.TexOfOneYardPerPound / yardsPerPound, YarnConstruction.Soft);
        Length atRest = YarnDiameter.Of(soft with { MeasuredWraps = Derived.Decision("wraps", Sett.FromPerInch(wrapsPerInch)), WrapMeasure = WrapMeasure.Hand }).Value;
        Length woven = YarnDiameter.Of(soft with { Construction = YarnConstruction.Spun }).Value;
        Derived<Length> softly = YarnDiameter.Of(soft);
        Assert.InRange(softly.Value.Millimetres, woven.Millimetres, atRest.Millimetres);

        // The rule says so itself: the yarn at rest lies at the edge of what it holds possible, an even range of ±1.73 standard deviations.
        Assert.InRange(softly.Value.Millimetres + 1.73 * 1000 * softly.StandardDeviation, 0.75 * atRest.Millimetres, 1.1 * atRest.Millimetres);
    }

    [Fact]
    public void Yarns_of_one_count_in_different_fibres_are_told_apart_with_numbers()
    {
        YarnComparison comparison = YarnComparison.Of([SampleYarns.Of("cotton"), SampleYarns.Of("bamboo-viscose"), SampleYarns.Of("lyocell"), SampleYarns.Of("wool-worsted")]);
        ComparedProperty wet = comparison.Properties.Single(p => p.Name.Contains("wet", StringComparison.Ordinal));
        Assert.Equal(0, wet.Differences[0]);
        Assert.True(wet.Differences[1] < -0.4);
        ComparedProperty diameter = comparison.Properties.Single(p => p.Name == "diameter by Ashenhurst's K");
        // Ashenhurst's K alone: 0.92 ÷ 0.90.
        Assert.Equal(0.92 / 0.90 - 1, diameter.Differences[3], 1e-9);
        Assert.All(comparison.Properties, p => Assert.Equal(4, p.Values.Length));
        Assert.Throws<ArgumentException>(() => YarnComparison.Of([]));
    }
}
