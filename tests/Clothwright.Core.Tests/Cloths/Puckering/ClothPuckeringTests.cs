using Clothwright.Core.Cloths.Puckering;
using Clothwright.Core.Cloths.Stages;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Tests.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Cloths.Puckering;

public class ClothPuckeringTests
{
    private static ClothPuckering Of(ThreadSystem warp, ThreadSystem weft, Drawdown weave) => ClothPuckering.Of(ClothStages.Of(new StagesQuestion
    {
        Warp = warp,
        Weft = weft,
        Weave = weave,
        EndsInReed = Derived.Decision("ends in the reed", Sett.FromPerInch(20)),
        Picks = Derived.Decision("picks", Sett.FromPerInch(20)),
    }));

    private static ThreadSystem Cotton => ThreadSystem.Of(SampleYarns.Of());

    [Fact]
    public void One_yarn_in_one_weave_lies_flat()
    {
        ClothPuckering twill = Of(Cotton, Cotton, SampleYarns.Twill);
        Assert.Equal(PuckerGrade.Flat, twill.AcrossTheWidth.Grade);
        Assert.Equal(0, twill.AcrossTheWidth.Excess.Value.Value, 1e-9);
        Assert.Equal(0, twill.AlongTheLength.Lift.Value.Millimetres);
    }

    // Stripes of plain weave beside stripes of satin draw in unlike: the trade beams them apart. Common practice, no source.
    [Fact]
    public void Plain_stripes_beside_satin_draw_in_more_and_lift_the_satin()
    {
        Drawdown stripes = Drawdown.From(30, 10, (pick, end) => end < 10 ? (pick + end) % 2 == 0 : (pick * 2 + end) % 5 != 0);
        PuckeringRisk risk = Of(Cotton, Cotton, stripes).AcrossTheWidth;
        Assert.Equal(Enumerable.Range(0, 10), risk.Tightest.Order());
        Assert.Equal(Enumerable.Range(10, 20), risk.Slackest.Order());
        Assert.True(risk.Grade >= PuckerGrade.Ripple, $"{risk.Excess.Value}");
        Assert.Equal(2 / Math.PI * risk.ZoneWidth.Value.Metres * Math.Sqrt(risk.Excess.Value.Value), risk.Lift.Value.Metres, 1e-12);
        Assert.NotEqual(0, risk.Excess.StandardDeviation);
    }

    [Fact]
    public void Stripes_of_wool_beside_silk_pucker_in_the_wash()
    {
        var warp = new ThreadSystem([SampleYarns.Of("merino"), SampleYarns.Of("silk-spun")], ThreadOrder.Of([.. Enumerable.Range(0, 40).Select(i => i / 20)]));
        PuckeringRisk risk = Of(warp, ThreadSystem.Of(SampleYarns.Of("merino")), SampleYarns.Plain).AcrossTheWidth;
        Assert.All(risk.Slackest, end => Assert.InRange(end, 20, 39));
        Assert.True(risk.Grade >= PuckerGrade.Ripple, $"{risk.Excess.Value}");
    }

    [Fact]
    public void Single_threads_that_draw_in_less_are_texture_and_no_pucker()
    {
        Drawdown ribs = Drawdown.From(2, 4, (pick, end) => end == 0 ? pick % 2 == 0 : pick < 2);
        Assert.Equal(PuckerGrade.Flat, Of(Cotton, Cotton, ribs).AcrossTheWidth.Grade);
    }
}
