using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Tests.Photographs;

public class PhotoScaleTests
{
    [Theory]
    [InlineData("50mm=612px", 12.24)]
    [InlineData("5 cm = 612", 12.24)]
    [InlineData("2 in = 508 px", 10)]
    public void A_scale_is_read_as_it_is_typed(string text, double pixelsPerMillimetre) =>
        Assert.Equal(pixelsPerMillimetre, PhotoScaleText.Parse(text).Value.Mapping.PixelsPerMillimetreAt(new PhotoPoint(5, 5)), 1e-9);

    [Theory]
    [InlineData("")]
    [InlineData("612px")]
    [InlineData("50mm=0px")]
    [InlineData("50mm=-3px")]
    [InlineData("50mm=wide")]
    [InlineData("0mm=100px")]
    [InlineData("50=100px")]
    [InlineData("50mm=612px=1")]
    public void A_scale_that_is_none_says_what_to_type(string text)
    {
        InputProblem problem = PhotoScaleText.Parse(text, "--scale").Problem!;
        Assert.Equal("--scale", problem.Where);
        Assert.NotEmpty(problem.Mend);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, false)]
    [InlineData(3, true)]
    public void A_card_may_be_marked_from_any_corner_either_way_around(int first, bool backwards)
    {
        PhotoPoint[] corners = [new(100, 80), new(956, 80), new(956, 619.8), new(100, 619.8)];
        if (backwards) Array.Reverse(corners);
        PhotoScale scale = PhotoScale.FromCard([.. corners[first..], .. corners[..first]]).Value;
        Assert.True(scale.KnowsPlane);
        Assert.Equal(10, scale.Mapping.PixelsPerMillimetreAt(new PhotoPoint(500, 300)), 1e-6);
    }

    [Fact]
    public void A_card_standing_upright_is_known_by_its_longer_side()
    {
        PhotoScale scale = PhotoScale.FromCard([new(0, 0), new(539.8, 0), new(539.8, 856), new(0, 856)]).Value;
        Assert.Equal(10, scale.Mapping.PixelsPerMillimetreAt(new PhotoPoint(200, 300)), 1e-6);
    }

    [Fact]
    public void Corners_that_cross_are_no_card()
    {
        Parsed<PhotoScale> crossed = PhotoScale.FromCard([new(0, 0), new(800, 500), new(800, 0), new(0, 500)]);
        Assert.Contains("do not lie around a card", crossed.Problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_mark_makes_a_surer_scale() =>
        Assert.True(PhotoScale.FromLength(Length.FromMillimetres(100), 1200).RelativeDeviation < PhotoScale.FromLength(Length.FromMillimetres(10), 120).RelativeDeviation);

    [Theory]
    [InlineData("10,20 30.5,40", 2)]
    [InlineData("1,2", 1)]
    public void Places_are_read_in_pixels(string text, int count) => Assert.Equal(count, PhotoScaleText.Places(text, count, "--area").Value.Length);

    [Theory]
    [InlineData("10,20", 2)]
    [InlineData("10 20", 1)]
    [InlineData("a,b", 1)]
    [InlineData("1,2 3,4 5,6", 2)]
    public void Places_that_are_none_say_how_to_write_them(string text, int count) =>
        Assert.Contains("x,y", PhotoScaleText.Places(text, count, "--area").Problem!.Mend, StringComparison.Ordinal);
}
