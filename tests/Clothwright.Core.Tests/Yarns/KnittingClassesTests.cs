using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class KnittingClassesTests
{
    [Fact]
    public void Every_gauge_from_1_to_40_stitches_has_a_class() =>
        Gen.Double[1, 40].Sample(stitches => Assert.NotEmpty(KnittingClasses.FromGauge(stitches)));

    [Fact]
    public void Every_yarn_has_exactly_one_class_by_grist() =>
        Gen.Double[5, 5000].Sample(tex => Assert.Single(KnittingClasses.FromGrist(LinearDensity.FromTex(tex))));

    [Fact]
    public void A_finer_yarn_has_no_higher_class() =>
        Gen.Select(Gen.Double[5, 5000], Gen.Double[5, 5000]).Sample((a, b) =>
            Assert.True(Number(Math.Min(a, b)) <= Number(Math.Max(a, b))));

    [Theory]
    [InlineData("DK", 3)]
    [InlineData("fingering weight", 1)]
    [InlineData("Aran", 4)]
    [InlineData("worsted", 4)]
    public void A_name_is_found_in_every_region_that_uses_it(string name, int number) =>
        Assert.All(KnittingClasses.FromName(name).Value, n => Assert.Equal(number, n.Classes.Single().Number));

    [Fact]
    public void A_name_that_charts_disagree_on_has_all_its_classes() =>
        Assert.Equal([4, 5], KnittingClasses.FromName("12 ply", KnittingRegion.Australia).Value.Single().Classes.Select(c => c.Number));

    [Fact]
    public void A_name_carries_the_thickness_seen_under_it()
    {
        KnittingName dk = KnittingClasses.FromName("dk", KnittingRegion.UnitedKingdom).Value.Single();
        // 200 to 250 m in 100 g are 500 to 400 tex (ply-name charts).
        Assert.Equal(450, dk.LinearDensity.Value.Tex, 6);
        Assert.Equal(100 / Math.Sqrt(12), dk.LinearDensity.StandardDeviation, 6);
    }

    [Fact]
    public void A_mistyped_name_suggests_the_nearest() =>
        Assert.Contains("fingering", KnittingClasses.FromName("fingerring").Problem!.Mend, StringComparison.Ordinal);

    [Fact]
    public void A_name_of_another_region_is_not_taken() =>
        Assert.Contains("in the United States", KnittingClasses.FromName("double knitting", KnittingRegion.UnitedStates).Problem!.What, StringComparison.Ordinal);

    private static int Number(double tex) => KnittingClasses.FromGrist(LinearDensity.FromTex(tex)).Single().Number;
}
