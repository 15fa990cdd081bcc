using Clothwright.Core.Photographs.Pictures;
using Clothwright.TestKit.Photographs;
using CsCheck;

namespace Clothwright.Core.Tests.Photographs;

public class PlaneMappingTests
{
    private static readonly ClothPoint[] Card = [new(0, 0), new(85.60, 0), new(85.60, 53.98), new(0, 53.98)];

    [Fact]
    public void Four_corners_lie_where_they_were_marked()
    {
        PhotoPoint[] seen = [new(100, 80), new(955, 95), new(940, 630), new(90, 615)];
        PlaneMapping mapping = PlaneMapping.FromFour(Card, seen)!;
        for (int i = 0; i < 4; i++) Assert.Equal(0, mapping.ToPhoto(Card[i]).PixelsTo(seen[i]), 1e-6);
    }

    [Fact]
    public void A_place_goes_to_the_photograph_and_comes_back() =>
        Gen.Select(Gen.Double[-30, 30], Gen.Double[-30, 30], Gen.Double[0, 80], Gen.Double[0, 50]).Sample((dx, dy, x, y) =>
        {
            PlaneMapping mapping = PlaneMapping.FromFour(Card, [new(100 + dx, 80 + dy), new(955 - dy, 95 + dx), new(940, 630), new(90, 615)])!;
            ClothPoint back = mapping.ToCloth(mapping.ToPhoto(new ClothPoint(x, y)));
            return Math.Abs(back.XMillimetres - x) < 1e-6 && Math.Abs(back.YMillimetres - y) < 1e-6;
        });

    // The painter's pinhole camera is another way of writing the same geometry.
    [Fact]
    public void A_card_before_a_slanted_camera_gives_the_camera_s_own_geometry()
    {
        var swatch = new SyntheticSwatch { Name = "card", EndsPerCentimetre = 8, PicksPerCentimetre = 8, PixelsPerMillimetre = 8, TiltDegrees = 12, TiltTowardsDegrees = 40, TurnDegrees = 7 };
        var camera = new CameraView(swatch);
        PhotoPoint Seen(double x, double y)
        {
            (double px, double py) = camera.OnPicture(x - 40, 25 - y);
            return new PhotoPoint(px, py);
        }

        PlaneMapping mapping = PlaneMapping.FromFour(Card, [.. Card.Select(c => Seen(c.XMillimetres, c.YMillimetres))])!;
        Assert.Equal(0, mapping.ToPhoto(new ClothPoint(31, 17)).PixelsTo(Seen(31, 17)), 1e-6);
        Assert.Equal(0, mapping.ToPhoto(new ClothPoint(-20, 70)).PixelsTo(Seen(-20, 70)), 1e-6);
    }

    [Fact]
    public void Three_corners_in_line_fix_no_plane() =>
        Assert.Null(PlaneMapping.FromFour(Card, [new(0, 0), new(50, 50), new(100, 100), new(0, 100)]));

    [Fact]
    public void A_scale_alone_is_the_same_everywhere()
    {
        PlaneMapping mapping = PlaneMapping.FromScale(12.24);
        Assert.Equal(12.24, mapping.PixelsPerMillimetreAt(new PhotoPoint(10, 900)), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => PlaneMapping.FromScale(0));
    }
}
