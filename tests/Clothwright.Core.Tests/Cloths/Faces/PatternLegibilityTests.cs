using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Tests.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Cloths.Faces;

public class PatternLegibilityTests
{
    private static readonly Length ArmsLength = Length.FromMetres(0.6);

    private static Yarn Of(string colour) => SampleYarns.Of() with { Colour = SrgbColour.Parse(colour).Value };

    private static ClothGeometry Cloth(string warp, string weft, Drawdown? weave = null, double perInch = 20) => ClothGeometry.Of(
        ClothQuestion.About(Of(warp), Of(weft), weave ?? SampleYarns.Twill, Sett.FromPerInch(perInch), Sett.FromPerInch(perInch)));

    private static Drawdown Blocks => Drawdown.From(24, 24, (pick, end) => pick / 12 == end / 12);

    [Theory]
    [InlineData("#101820", "#f4f0e6", LegibilityGrade.Bold)]
    [InlineData("#3b7a78", "#3f7d7a", LegibilityGrade.Lost)]
    public void Blocks_of_dark_on_light_are_bold_and_of_like_on_like_are_lost(string warp, string weft, LegibilityGrade grade) =>
        Assert.Equal(grade, PatternLegibility.Of(Cloth(warp, weft, Blocks, perInch: 36), front: true, ArmsLength).Grade);

    [Fact]
    public void A_closer_cloth_and_larger_figures_show_more_of_the_pattern()
    {
        double R(Drawdown weave, double perInch) => PatternLegibility.Of(Cloth("#101820", "#f4f0e6", weave, perInch), front: true, ArmsLength).NoticedDifferences.Value.Value;
        Assert.True(R(SampleYarns.Twill, 30) > R(SampleYarns.Twill, 20));
        Assert.True(R(Blocks, 30) > R(SampleYarns.Twill, 30));
    }

    [Fact]
    public void In_two_colours_the_parts_are_the_crossings_of_warp_and_of_weft()
    {
        PatternLegibility face = PatternLegibility.Of(Cloth("#101820", "#f4f0e6", SampleYarns.Weave("1110/0111/1011/1101")), front: true, ArmsLength);
        PatternLegibility back = PatternLegibility.Of(Cloth("#101820", "#f4f0e6", SampleYarns.Weave("1110/0111/1011/1101")), front: false, ArmsLength);
        Assert.Equal(0.25, face.LighterShare, 1e-9);
        Assert.Equal(0.75, back.LighterShare, 1e-9);
        Assert.Equal(face.NoticedDifferences.Value.Value, back.NoticedDifferences.Value.Value, 1e-9);
    }

    // Two reds and greens of one lightness: the pattern reads by hue alone, and not for eyes without middle-wave cones.
    [Fact]
    public void A_pattern_of_hues_alone_is_said_to_go_in_dim_light_and_for_some_eyes()
    {
        ClothGeometry cloth = Cloth("#b0503c", "#5d7d3c", Blocks, perInch: 36);
        PatternLegibility usual = PatternLegibility.Of(cloth, front: true, ArmsLength);
        PatternLegibility deutan = PatternLegibility.Of(cloth, front: true, ArmsLength, ColourVision.Deutan);
        Assert.True(usual.LightnessDifference < 5, $"{usual.LightnessDifference}");
        Assert.Contains("dim light", usual.Words, StringComparison.Ordinal);
        Assert.True(deutan.NoticedDifferences.Value < usual.NoticedDifferences.Value);
        Assert.True(deutan.Grade < usual.Grade);
    }

    [Fact]
    public void Farther_away_a_pattern_reads_less() =>
        Gen.Select(Gen.Double[0.3, 3], Gen.Double[1.1, 4]).Sample((near, times) =>
        {
            ClothGeometry cloth = Cloth("#5b2a86", "#e86a17");
            Assert.True(
                PatternLegibility.Of(cloth, front: true, Length.FromMetres(near)).NoticedDifferences.Value
                > PatternLegibility.Of(cloth, front: true, Length.FromMetres(near * times)).NoticedDifferences.Value);
        });

    [Fact]
    public void Stripes_of_a_warp_faced_cloth_are_seen_by_their_own_width()
    {
        ClothGeometry cloth = ClothGeometry.Of(ClothQuestion.About(Of("#101820"), Of("#f4f0e6"), SampleYarns.Plain, Sett.FromPerInch(50), Sett.FromPerInch(12)) with
        {
            Warp = new ThreadSystem([Of("#101820"), Of("#f4f0e6")], ThreadOrder.Of(0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1)),
            Weft = ThreadSystem.Of(Of("#808080")),
        });
        PatternLegibility stripes = PatternLegibility.Of(cloth, front: true, ArmsLength);
        Assert.Equal(0.5, stripes.LighterShare, 1e-9);
        Assert.Equal(8 / 50.0 * 25.4, stripes.FigureWidth.Value.Millimetres, 1e-6);
        Assert.Equal(LegibilityGrade.Bold, stripes.Grade);
    }

    [Fact]
    public void A_cloth_of_one_colour_has_no_pattern()
    {
        PatternLegibility none = PatternLegibility.Of(Cloth("#3b7a78", "#3b7a78"), front: true, ArmsLength);
        Assert.Equal(0, none.NoticedDifferences.Value.Value, 1e-9);
        Assert.Equal(LegibilityGrade.Lost, none.Grade);
    }
}
