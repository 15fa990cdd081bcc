using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Tests.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Cloths;

public class FusedColoursTests
{
    private static readonly Gen<double> Part = Gen.Double[0, 1];
    private static readonly Gen<LinearColour> Light = Gen.Select(Part, Part, Part, (r, g, b) => new LinearColour(r, g, b));

    [Fact]
    public void Warp_weft_and_hole_make_the_whole_and_turning_the_cloth_over_exchanges_the_crossings() =>
        Gen.Select(Part, Part, Part).Sample((f, k1, k2) =>
        {
            VisibleShares face = VisibleShares.Of(f, k1, k2);
            VisibleShares turned = VisibleShares.Of(1 - f, k2, k1);
            Assert.Equal(1, face.Warp + face.Weft + face.Gap, 1e-12);
            Assert.Equal(face.Warp, turned.Weft, 1e-12);
        });

    [Fact]
    public void Fused_light_is_the_mean_over_the_crossings_one_by_one() =>
        Gen.Select(Gen.Bool.Array[24], Light.Array[6], Light.Array[4], Part, Part).Sample((cells, warp, weft, k1, k2) =>
        {
            Drawdown weave = Drawdown.From(6, 4, (pick, end) => cells[pick * 6 + end]);
            LinearColour behind = new(0.3, 0.6, 0.1);
            FusedColours fused = FusedColours.Of(weave, e => warp[e], p => weft[p], k1, k2, behind);
            LinearColour sum = default;
            for (int pick = 0; pick < 4; pick++)
            {
                for (int end = 0; end < 6; end++)
                {
                    bool up = weave[pick, end];
                    sum += warp[end] * (up ? k1 : k1 * (1 - k2)) + weft[pick] * (up ? k2 * (1 - k1) : k2) + behind * ((1 - k1) * (1 - k2));
                }
            }

            Near(sum * (1 / 24.0), fused.Face.Colour);
            VisibleShares shares = VisibleShares.Of(weave.WarpFaceFraction, k1, k2);
            Assert.Equal(shares.Warp, fused.Face.Shares.Warp, 1e-9);
            Assert.Equal(shares.Weft, fused.Face.Shares.Weft, 1e-9);
            VisibleShares back = VisibleShares.Of(1 - weave.WarpFaceFraction, k1, k2);
            Assert.Equal(back.Warp, fused.Back.Shares.Warp, 1e-9);
        });

    [Fact]
    public void Holes_are_shared_out_to_the_threads_when_nothing_is_behind()
    {
        LinearColour grey = new(0.5, 0.5, 0.5);
        FusedColours fused = FusedColours.Of(SampleYarns.Plain, _ => grey, _ => grey, 0.4, 0.4);
        Near(grey, fused.Face.Colour);
        Near(grey, fused.Back.Warp);
    }

    [Fact]
    public void A_satin_shows_its_warp_on_one_face_and_its_weft_on_the_other()
    {
        LinearColour red = new(1, 0, 0);
        LinearColour blue = new(0, 0, 1);
        FusedColours fused = FusedColours.Of(SampleYarns.Satin5, _ => red, _ => blue, 1, 1);
        Near(new LinearColour(0.2, 0, 0.8), fused.Face.Colour);
        Near(new LinearColour(0.8, 0, 0.2), fused.Back.Colour);
    }

    [Fact]
    public void A_cloth_fuses_in_its_yarns_own_colours_and_order()
    {
        Yarn dark = SampleYarns.Of() with { Colour = new SrgbColour(0, 0, 0) };
        Yarn pale = SampleYarns.Of(id: "pale") with { Colour = new SrgbColour(255, 255, 255) };
        ClothQuestion question = ClothQuestion.About(dark, dark, SampleYarns.Plain, Sett.FromPerInch(53), Sett.FromPerInch(53)) with
        {
            Warp = new ThreadSystem([dark, pale], ThreadOrder.Of(0, 1)),
        };
        FusedFace face = ClothGeometry.Of(question).FusedColours().Face;
        Assert.Equal(face.Shares.Warp / 2 / (face.Shares.Warp + face.Shares.Weft), face.Colour.Green, 1e-9);
        Near(new LinearColour(0.5, 0.5, 0.5), face.Warp);
    }

    private static void Near(LinearColour expected, LinearColour actual)
    {
        Assert.Equal(expected.Red, actual.Red, 1e-9);
        Assert.Equal(expected.Green, actual.Green, 1e-9);
        Assert.Equal(expected.Blue, actual.Blue, 1e-9);
    }
}
