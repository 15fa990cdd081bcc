using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Hand;
using Clothwright.Core.Quantities;
using Clothwright.Core.Tests.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Cloths;

public class ClothHandTests
{
    private static ClothGeometry Cloth(double perInch, Drawdown? weave = null, string fibre = "cotton", double tex = 147.6) => ClothGeometry.Of(ClothQuestion.About(
        SampleYarns.Of(fibre, tex), SampleYarns.Of(fibre, tex), weave ?? SampleYarns.Plain, Sett.FromPerInch(perInch), Sett.FromPerInch(perInch)));

    [Theory]
    [InlineData(10, "open")]
    [InlineData(17, "falls softly")]
    [InlineData(22, "supple")]
    [InlineData(27, "firm")]
    [InlineData(30, "stiff")]
    [InlineData(40, "closer than")]
    public void Words_go_from_open_to_stiff_as_the_sett_closes(double perInch, string word) =>
        Assert.StartsWith(word, Cloth(perInch).Hand.Words, StringComparison.Ordinal);

    [Theory]
    [InlineData(20, "light")]
    [InlineData(120, "middling")]
    [InlineData(250, "heavy")]
    [InlineData(600, "very heavy")]
    public void Weight_is_told_too(double tex, string word) => Assert.Contains(word, Cloth(18, tex: tex).Hand.Words, StringComparison.Ordinal);

    [Fact]
    public void Floats_that_catch_are_warned_of()
    {
        Assert.DoesNotContain(Cloth(20, SampleYarns.Twill).Hand.Reasons, r => r.Contains("catch", StringComparison.Ordinal));
        ClothGeometry long8 = Cloth(12, SampleYarns.Weave("11111100/01111110/00111111/10011111/11001111/11100111/11110011/11111001"));
        Assert.Equal(6 * 25.4 / 12, FloatLengths.Longest(long8).Warp.Millimetres, 1e-9);
        Assert.Contains(long8.Hand.Reasons, r => r.Contains("catch", StringComparison.Ordinal));
    }

    [Fact]
    public void Linen_is_ranked_stiffer_than_wool_and_a_close_cloth_stiffer_than_an_open_one()
    {
        Assert.True(Cloth(18, fibre: "linen").Hand.BendingLength!.Value > Cloth(18, fibre: "merino").Hand.BendingLength!.Value);
        Assert.Null(Cloth(18, fibre: "metallised-film").Hand.BendingLength);
        Assert.Contains("rank", Cloth(18).Hand.BendingLength!.Working.Rule.Formula, StringComparison.Ordinal);
    }

    [Fact]
    public void Most_fibres_can_be_ranked() =>
        Assert.All(FibreCatalogue.All.Where(f => f.Id != "metallised-film"), f => Assert.NotNull(Cloth(18, fibre: f.Id).Hand.BendingLength));

    [Fact]
    public void Rigidity_and_bending_length_undo_each_other() =>
        Gen.Select(Gen.Double[30, 900], Gen.Double[5, 90]).Sample((grams, millimetres) => Assert.Equal(
            millimetres, BendingTest.BendingLengthMillimetres(grams, BendingTest.RigidityMicronewtonMetre(grams, millimetres)), 1e-9));

    // The factor w of floats runs from 1 for plain weave to √3 for endless floats, from Ashenhurst's curvature theory.
    [Fact]
    public void The_geometric_weave_factor_runs_from_one_to_root_three()
    {
        Assert.Equal(1, WeaveFirmness.GeometricFactor(1), 1e-12);
        Assert.Equal(1.268, WeaveFirmness.GeometricFactor(2), 1e-3);
        Assert.Equal(Math.Sqrt(3), WeaveFirmness.GeometricFactor(1e9), 1e-6);
        Assert.Equal(WeaveFirmness.GeometricFactor(3), WeaveFirmness.GeometricFactor(3, 3), 1e-12);
    }
}
