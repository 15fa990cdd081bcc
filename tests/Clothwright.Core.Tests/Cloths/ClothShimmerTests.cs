using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Tests.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Cloths;

public class ClothShimmerTests
{
    private static double Shimmer(string warp, string weft, string fibre, Drawdown weave, YarnConstruction construction = YarnConstruction.Spun, double perInch = 40)
    {
        Yarn Of(string colour) => SampleYarns.Of(fibre, 40, construction) with { Colour = SrgbColour.Parse(colour).Value };
        return ClothShimmer.Of(ClothGeometry.Of(ClothQuestion.About(Of(warp), Of(weft), weave, Sett.FromPerInch(perInch), Sett.FromPerInch(perInch)))).Value.Value;
    }

    // Shot cloth, common practice, no source: plain weave of filament silk in two strong colours changes as it moves, the more the straighter its
    // threads lie; wool, whose fibres point every way, less.
    [Fact]
    public void Shot_silk_whose_threads_lie_nearly_straight_shimmers_more_than_wool()
    {
        double open = Shimmer("#5b2a86", "#e86a17", "silk-reeled", SampleYarns.Plain, YarnConstruction.Reeled, perInch: 20);
        Assert.True(open > Shimmer("#5b2a86", "#e86a17", "silk-reeled", SampleYarns.Plain, YarnConstruction.Reeled, perInch: 44));
        Assert.True(open > 1.2 * Shimmer("#5b2a86", "#e86a17", "merino", SampleYarns.Plain, perInch: 20), $"{open}");
    }

    [Fact]
    public void Two_strong_colours_shimmer_more_than_one() =>
        Assert.True(Shimmer("#5b2a86", "#e86a17", "silk-reeled", SampleYarns.Plain, YarnConstruction.Reeled) > Shimmer("#5b2a86", "#5b2a86", "silk-reeled", SampleYarns.Plain, YarnConstruction.Reeled));

    [Fact]
    public void Warp_and_weft_changed_over_shimmer_alike() =>
        Assert.Equal(Shimmer("#5b2a86", "#e86a17", "cotton", SampleYarns.Plain), Shimmer("#e86a17", "#5b2a86", "cotton", SampleYarns.Plain), 1e-6);
}
