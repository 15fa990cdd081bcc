using Clothwright.Core.Setts.Limits;
using CsCheck;

namespace Clothwright.Core.Tests.Setts;

public class SettLimitProperties
{
    private static readonly Gen<double> Diameter = Gen.Double[0.05, 3];
    private static readonly Gen<double> Float = Gen.Double[1, 12];

    [Fact]
    public void A_finer_yarn_can_be_set_closer_by_every_method() =>
        Gen.Select(Diameter, Gen.Double[1.01, 4], Float).Sample((d, coarser, m) =>
        {
            Assert.True(AshenhurstIntersections.Spacing(d, d, m) < AshenhurstIntersections.Spacing(d * coarser, d * coarser, m));
            Assert.True(AshenhurstCurvature.Spacing(d, d, m) < AshenhurstCurvature.Spacing(d * coarser, d * coarser, m));
            Assert.True(PeirceJam.EndSpacing(d, d, m, m, 1) < PeirceJam.EndSpacing(d * coarser, d * coarser, m, m, 1));
        });

    [Fact]
    public void More_intersections_open_the_sett_by_every_method() =>
        Gen.Select(Diameter, Diameter, Float, Gen.Double[0.05, 5]).Sample((d1, d2, m, more) =>
        {
            Assert.True(AshenhurstIntersections.Spacing(d1, d2, m) > AshenhurstIntersections.Spacing(d1, d2, m + more));
            Assert.True(AshenhurstCurvature.Spacing(d1, d1, m) > AshenhurstCurvature.Spacing(d1, d1, m + more));
            Assert.True(PeirceJam.EndSpacing(d1, d1, m, m, 1) > PeirceJam.EndSpacing(d1, d1, m + more, m + more, 1));
        });

    [Fact]
    public void With_one_yarn_the_rules_take_their_published_forms() =>
        Gen.Select(Diameter, Float).Sample((d, m) =>
        {
            Assert.Equal((m + 1) / m * d, AshenhurstIntersections.Spacing(d, d, m), 1e-12);
            Assert.Equal((m + Math.Sqrt(3) - 1) / m * d, AshenhurstCurvature.Spacing(d, d, m), 1e-12);
        });

    [Fact]
    public void In_a_square_cloth_of_one_yarn_the_jam_is_the_curvature_theory() =>
        Gen.Select(Diameter, Float).Sample((d, m) =>
            Assert.Equal(AshenhurstCurvature.Spacing(d, d, m), PeirceJam.EndSpacing(d, d, m, m, 1), 1e-9 * d));

    [Fact]
    public void Ends_and_picks_jammed_together_lie_on_the_locus() =>
        Gen.Select(Diameter, Diameter, Float, Float, Gen.Double[0.4, 2.5]).Sample((d1, d2, m1, m2, ratio) =>
        {
            double end = PeirceJam.EndSpacing(d1, d2, m1, m2, ratio);
            double pick = end / ratio;
            double closest = PeirceJam.OtherSpacing(end, d1, m1, d2, m2);
            // Where ends or picks already touch each other the locus lies closer still.
            if (end > d1 * 1.000001 && pick > d2 * 1.000001) Assert.Equal(closest, pick, 1e-6 * (d1 + d2));
            else Assert.True(pick >= closest - 1e-6 * (d1 + d2));
        });

    [Fact]
    public void Tightness_falls_as_both_spacings_grow_alike() =>
        Gen.Select(Diameter, Diameter, Float, Gen.Double[1, 5], Gen.Double[1.01, 3]).Sample((d1, d2, m, spacing, wider) =>
        {
            double close = PeirceJam.Tightness(d1, d2, m, m, spacing * d1, spacing * d2);
            double open = PeirceJam.Tightness(d1, d2, m, m, spacing * wider * d1, spacing * wider * d2);
            Assert.Equal(close / wider, open, 1e-6);
        });

    [Fact]
    public void A_system_wide_apart_sets_no_limit_on_the_other() =>
        Assert.Equal(0.5, PeirceJam.OtherSpacing(10, 0.5, 1, 0.5, 1), 1e-12);

    [Fact]
    public void Threads_of_a_float_that_touch_give_back_their_pitch() =>
        Gen.Select(Gen.Double[0.1, 5], Diameter, Float).Sample((spacing, d, m) =>
            Assert.Equal(spacing, PeirceJam.Spacing(PeirceJam.CrossingPitch(spacing, d, m), d, m), 1e-9));

    [Fact]
    public void Brierley_agrees_with_itself_in_a_square_cloth() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[10, 500]).Sample((square, tex) =>
            Assert.Equal(square, Brierley.Picks(square, square, tex, tex), 1e-9));

    // Law's allowances, from memory of Robinson & Marks, low confidence: 5 % above float 2 in twills, 5.5 % in satins, 9.5 % above 1 in hopsacks.
    [Theory]
    [InlineData(WeaveFamily.Plain, 1, 1)]
    [InlineData(WeaveFamily.Twill, 2, 1)]
    [InlineData(WeaveFamily.Twill, 3, 1.05)]
    [InlineData(WeaveFamily.Satin, 4, 1.11)]
    [InlineData(WeaveFamily.Hopsack, 2, 1.095)]
    public void Law_allows_for_long_floats(WeaveFamily family, double meanFloat, double factor) =>
        Assert.Equal(factor, LawRule.Allowance(family, meanFloat), 1e-12);
}
