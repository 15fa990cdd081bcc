using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.TestKit.Photographs;

namespace Clothwright.Core.Tests.Photographs;

public class WrapCounterTests
{
    private static (Photograph Photograph, PhotoScale Scale) Rod(double wrapsPerCentimetre, double cover)
    {
        SyntheticSwatch rod = RodPainter.Rod(wrapsPerCentimetre, cover);
        return (Photograph.FromRgba(rod.Side, rod.Side, RodPainter.Rgba(rod)), PhotoScale.FromLength(Length.FromMillimetres(50), 50 * rod.PixelsPerMillimetre));
    }

    [Theory]
    [InlineData(6.5)]
    [InlineData(12)]
    [InlineData(18.5)]
    public void Wraps_side_by_side_are_counted_and_give_the_diameter(double wrapsPerCentimetre)
    {
        (Photograph photograph, PhotoScale scale) = Rod(wrapsPerCentimetre, cover: 0.97);
        WrapCount count = WrapCounter.Count(photograph, scale, new PhotoBand(new PhotoPoint(40, 300), new PhotoPoint(560, 300), 60)).Value;
        Assert.Equal(wrapsPerCentimetre, count.Wraps.Value.PerCentimetre, 0.02 * wrapsPerCentimetre);
        Assert.True(count.Touching);
        Assert.Equal(10 / wrapsPerCentimetre, count.Diameter!.Value.Millimetres, 0.02 * 10 / wrapsPerCentimetre);
    }

    [Fact]
    public void Wraps_with_the_rod_between_them_give_no_diameter()
    {
        (Photograph photograph, PhotoScale scale) = Rod(8, cover: 0.6);
        WrapCount count = WrapCounter.Count(photograph, scale, new PhotoBand(new PhotoPoint(40, 300), new PhotoPoint(560, 300), 60)).Value;
        Assert.Equal(8, count.Wraps.Value.PerCentimetre, 0.16);
        Assert.False(count.Touching);
        Assert.Null(count.Diameter);
    }

    [Fact]
    public void Fewer_than_twenty_wraps_are_too_few_to_be_sure()
    {
        (Photograph photograph, PhotoScale scale) = Rod(6.5, cover: 0.97);
        WrapCount count = WrapCounter.Count(photograph, scale, new PhotoBand(new PhotoPoint(200, 300), new PhotoPoint(380, 300), 60)).Value;
        Assert.Contains(count.Questions, q => q.Kind == CountQuestionKind.TooFew);
        Assert.NotEqual(Certainty.Sure, count.Certainty);
    }

    [Theory]
    [InlineData(-50, 300, 560, 300, 60)]
    [InlineData(300, 300, 305, 300, 60)]
    [InlineData(40, 300, 560, 300, 1)]
    public void A_band_that_shows_no_wraps_is_refused(double x1, double y1, double x2, double y2, double depth)
    {
        (Photograph photograph, PhotoScale scale) = Rod(8, cover: 0.97);
        Assert.Equal("band", WrapCounter.Count(photograph, scale, new PhotoBand(new PhotoPoint(x1, y1), new PhotoPoint(x2, y2), depth)).Problem!.Where);
    }
}
