using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Tilts;
using Clothwright.Core.Colours;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Cloths.Look.Tilts;

public class TiltTests
{
    private static readonly TiltedSection Round = new(1, 1, 0.7, 0.7, 0.7, 0.7, 0.7, 0.7);

    [Fact]
    public void Widths_are_those_that_show_the_wanted_shares() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0.3, 1], Gen.Double[0.3, 1], Gen.Double[0.4, 1.3]).Sample((up, k1, k2, ratio) =>
        {
            VisibleShares flat = VisibleShares.Of(up, k1, k2);
            var seen = new TiltedShares(flat.Warp, flat.Weft);
            var aside = new TiltedShares(flat.Warp * ratio, Math.Min(1 - flat.Warp * ratio, flat.Weft * 1.1));
            if (aside.WeftShare < 0.02 || aside.WarpShare < 0.02) return;
            TiltedWidths widths = TiltedWidths.Of(up, k1, k2, seen, aside);
            (double w1, double w2) = (k1 * widths.WarpFactor, k2 * widths.WeftFactor);
            Assert.InRange(w1, 0, 1 + 1e-9);
            Assert.InRange(w2, 0, 1 + 1e-9);
            if (w1 > 1 - 1e-6 || w2 > 1 - 1e-6) return; // what no width can show is shown as nearly as it can be
            VisibleShares shown = VisibleShares.Of(up, w1, w2);
            Assert.Equal(aside.WarpShare, shown.Warp, 1e-6);
            Assert.Equal(aside.WeftShare, shown.Weft, 1e-6);
        });

    [Fact]
    public void A_quarter_turn_exchanges_warp_and_weft() =>
        Gen.Select(Gen.Double[-1.5, 1.5], Gen.Double[-1.5, 1.5]).Sample(
            (across, along) =>
            {
                TiltedShares one = TiltedShares.Of(Round, 2, 2, (c, r) => (c + r) % 2, across, along);
                TiltedShares turned = TiltedShares.Of(Round, 2, 2, (c, r) => 1 - (c + r) % 2, along, across);
                Assert.Equal(one.WarpShare, turned.WeftShare, 0.03);
                Assert.Equal(one.WeftShare, turned.WarpShare, 0.03);
            },
            iter: 10);

    [Fact]
    public void Flat_cloth_seen_from_above_shows_the_areas_of_its_threads()
    {
        TiltedShares seen = TiltedShares.Of(Round, 2, 2, (c, r) => (c + r) % 2, 0, 0);
        VisibleShares areas = VisibleShares.Of(0.5, 0.7, 0.7);
        Assert.Equal(areas.Warp, seen.WarpShare, 0.02);
        Assert.Equal(areas.Weft, seen.WeftShare, 0.02);
    }

    // Tilted away along the warp the picks' crowns hide the ends, and the other way round: the cloth takes the colour of the other set.
    [Theory]
    [InlineData(Face.Front)]
    [InlineData(Face.Back)]
    public void A_tilted_cloth_takes_the_colour_of_the_set_that_crosses_the_line_of_sight(Face face)
    {
        double flat = WeftColour(face, 0, 0);
        Assert.True(WeftColour(face, 0, 0.9) > flat);
        Assert.True(WeftColour(face, 0.9, 0) < flat);
    }

    // Near by and from afar a tilted cloth has one colour, within what is just seen.
    [Theory]
    [InlineData("10/01", 0.5, 0)]
    [InlineData("10/01", 0, 0.9)]
    [InlineData("1100/0110/0011/1001", 0.4, -0.7)]
    [InlineData("1110/0111/1011/1101", -0.8, 0.2)]
    public void Near_and_far_agree_when_tilted(string weave, double across, double along)
    {
        Lustre still = Lustres.Cotton with { Slub = 0 };
        LookDescription cloth = PaintedCloth.Of(PaintedCloth.Weave(weave), still, still, 0.8);
        Lighting lighting = Lighting.Window.Tilted(across, along);
        int repeat = cloth.Weave.Ends;
        LinearColour near = PaintedCloth.Mean(PaintedCloth.Paint(cloth, 12, 12 * repeat, 12 * repeat, lighting));
        LinearColour far = PaintedCloth.Mean(PaintedCloth.Paint(cloth, 1, 4 * repeat, 4 * repeat, lighting));
        double difference = ColourDifference.Ciede2000(PaintedCloth.Lab(near), PaintedCloth.Lab(far));
        Assert.True(difference <= 1, $"near {PaintedCloth.Lab(near)}, far {PaintedCloth.Lab(far)}, {difference:0.00} apart.");
    }

    // Blue, the colour of the weft, as a share of blue and of red, the colour of the warp; the lamp stands still, so that only the eye moves.
    private static double WeftColour(Face face, double across, double along)
    {
        Drawdown plain = PaintedCloth.Weave("10/01");
        Lustre still = Lustres.Wool with { Slub = 0, Fuzz = 0 };
        var lamp = Lighting.Window;
        var eye = new Lighting(lamp.Lamp, Direction.OffTheFace.FromTilted(across, along));
        LookDescription cloth = PaintedCloth.Of(plain, still, still, 0.7) with
        {
            Ends = [PaintedCloth.Thread(new SrgbColour(0xd0, 0x10, 0x10), still, 0.7)],
            Picks = [PaintedCloth.Thread(new SrgbColour(0x10, 0x10, 0xd0), still, 0.7)],
        };
        LinearColour mean = PaintedCloth.Mean(PaintedCloth.Paint(cloth, 1, 12, 12, eye, face));
        return mean.Blue / (mean.Red + mean.Blue);
    }
}
