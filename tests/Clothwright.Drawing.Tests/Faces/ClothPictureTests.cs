using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Drawing.Faces;
using CsCheck;
using SkiaSharp;

namespace Clothwright.Drawing.Tests.Faces;

public class ClothPictureTests
{
    private static readonly SrgbColour Warp = Pictures.TideBlue;
    private static readonly SrgbColour Weft = Pictures.Saltmarsh;

    // A broken 2/2 twill: no two rows or columns alike when mirrored, so that left and right, up and down can be told apart.
    private static readonly Drawdown Broken = Drawdown.From(5, 4, (pick, end) => (new[] { 0b00011, 0b00110, 0b11000, 0b01101 }[pick] >> end & 1) != 0);

    private static SKBitmap Draw(LookDescription cloth, Face face, double dotsPerInch, double widthMillimetres, double heightMillimetres)
    {
        using var stream = new MemoryStream();
        ClothPicture.Png(cloth, stream, face, dotsPerInch, new ClothFrame(Length.FromMillimetres(widthMillimetres), Length.FromMillimetres(heightMillimetres)));
        return SKBitmap.Decode(stream.ToArray());
    }

    // Ten threads a centimetre, 1 mm wide: at 254 dots per inch each crossing takes 10 by 10 dots.
    [Fact]
    public void Each_crossing_of_the_front_has_the_colour_of_the_thread_on_top_first_pick_at_the_bottom()
    {
        using SKBitmap picture = Draw(Pictures.Cloth(Broken, 10, 1), Face.Front, 254, 5, 4);

        Assert.Equal((50, 40), (picture.Width, picture.Height));
        for (int pick = 0; pick < 4; pick++)
        {
            for (int end = 0; end < 5; end++)
            {
                Assert.Equal(Broken[pick, end] ? Warp : Weft, Pictures.At(picture, end * 10 + 5, (3 - pick) * 10 + 5));
            }
        }
    }

    [Fact]
    public void The_back_is_the_front_turned_over_left_to_right_with_warp_and_weft_exchanged()
    {
        using SKBitmap picture = Draw(Pictures.Cloth(Broken, 10, 1), Face.Back, 254, 5, 4);

        for (int pick = 0; pick < 4; pick++)
        {
            for (int end = 0; end < 5; end++)
            {
                Assert.Equal(Broken[pick, end] ? Weft : Warp, Pictures.At(picture, (4 - end) * 10 + 5, (3 - pick) * 10 + 5));
            }
        }
    }

    [Fact]
    public void A_gap_between_threads_shows_the_ground()
    {
        using SKBitmap picture = Draw(Pictures.Cloth(Broken, 10, 0.4), Face.Front, 254, 5, 4);

        Assert.Equal(Clothwright.Drawing.Figures.Palette.Linen, Pictures.At(picture, 10, 10));
    }

    [Fact]
    public void From_far_away_a_cloth_is_the_mean_light_of_its_areas()
    {
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[0, int.MaxValue]).Sample((ends, picks, seed) =>
        {
            Drawdown weave = Drawdown.From(ends, picks, (pick, end) => ((seed >> ((pick * 7 + end * 3) % 29)) & 1) != 0);
            double warpShare = Enumerable.Range(0, picks).Average(p => Enumerable.Range(0, ends).Average(e => weave[p, e] ? 1.0 : 0.0));
            SrgbColour expected = (LinearColour.From(Warp) * warpShare + LinearColour.From(Weft) * (1 - warpShare)).ToSrgb();

            // One dot takes one whole repeat: 1 mm threads, so a repeat is ends by picks millimetres.
            LookDescription cloth = Pictures.Cloth(weave, 10, 1);
            var side = new ClothSide(cloth, Face.Front, new ClothFrame(Length.FromMillimetres(3 * ends), Length.FromMillimetres(2 * picks)));
            byte[] dots = ClothRaster.Render(side, 3, 2);
            return Enumerable.Range(0, 6).All(i => Near(dots, i, expected));
        }, iter: 200);
    }

    [Fact]
    public void From_far_away_gaps_count_with_their_area()
    {
        // 0.6 mm threads at 10 per cm: 64 % × 1/... each crossing 0.36 thread on thread, 0.24 warp alone, 0.24 weft alone, 0.16 ground.
        Drawdown plain = Drawdown.From(2, 2, (pick, end) => (pick + end) % 2 == 0);
        SrgbColour expected = (LinearColour.From(Warp) * (0.18 + 0.24) + LinearColour.From(Weft) * (0.18 + 0.24)
            + LinearColour.From(Clothwright.Drawing.Figures.Palette.Linen) * 0.16).ToSrgb();
        var side = new ClothSide(Pictures.Cloth(plain, 10, 0.6), Face.Front, new ClothFrame(Length.FromMillimetres(20), Length.FromMillimetres(20)));

        Assert.True(Near(ClothRaster.Render(side, 1, 1), 0, expected));
    }

    [Fact]
    public void A_picture_is_as_large_as_the_cloth()
    {
        using SKBitmap picture = Draw(Pictures.Cloth(Broken, 8, 1), Face.Front, 300, 50.8, 25.4);

        Assert.Equal((600, 300), (picture.Width, picture.Height));
    }

    [Fact]
    public void A_thick_weft_takes_a_wider_share_of_the_length()
    {
        var cloth = new LookDescription(
            Drawdown.From(1, 2, (_, _) => false),
            [new ThreadLook(Warp, Length.FromMillimetres(0.5))],
            [new ThreadLook(Weft, Length.FromMillimetres(1.5)), new ThreadLook(Pictures.DrySand, Length.FromMillimetres(0.5))],
            Sett.FromPerCentimetre(10),
            Sett.FromPerCentimetre(10));
        ThreadAxis axis = ThreadAxis.Lay(cloth.Picks, cloth.PickSett, Length.FromMillimetres(4));

        Assert.Equal(4, axis.Count);
        Assert.Equal([0, 1.5, 2, 3.5, 4], axis.Edges.Select(e => Math.Round(e * 1000, 9)));
    }

    [Fact]
    public void Shadow_leaves_the_middle_of_a_thread_and_fine_threads_alone()
    {
        Assert.Equal(1, new ThreadShade(20).Light(0.5, 0.5));
        Assert.True(new ThreadShade(20).Light(0.02, 0.5) < 0.8);
        Assert.Equal(1, new ThreadShade(2).Light(0.02, 0.02));
    }

    [Fact]
    public void The_drawing_in_lines_shows_the_same_cloth_as_the_dots()
    {
        foreach (Face face in Enum.GetValues<Face>())
        {
            var frame = new ClothFrame(Length.FromMillimetres(15), Length.FromMillimetres(12));
            LookDescription cloth = Pictures.Cloth(Broken, 10, 1);
            using var stream = new MemoryStream();
            Clothwright.Drawing.Figures.FigureCanvas.WritePng(ClothFigure.Draw(cloth, face, frame), stream, 254);
            using SKBitmap lines = SKBitmap.Decode(stream.ToArray());
            using SKBitmap dots = Draw(cloth, face, 254, 15, 12);
            for (int x = 5; x < 150; x += 10)
            {
                for (int y = 5; y < 120; y += 10) Assert.Equal(Pictures.At(dots, x, y), Pictures.At(lines, x, y));
            }
        }
    }

    [Fact]
    public void A_cloth_without_threads_is_refused()
    {
        LookDescription cloth = Pictures.Cloth(Broken, 10, 1) with { Ends = [] };

        Assert.Throws<ArgumentException>(() => ClothPicture.Png(cloth, Stream.Null, Face.Front));
    }

    private static bool Near(byte[] dots, int dot, SrgbColour expected) =>
        Math.Abs(dots[3 * dot] - expected.Red) <= 1 && Math.Abs(dots[3 * dot + 1] - expected.Green) <= 1 && Math.Abs(dots[3 * dot + 2] - expected.Blue) <= 1;
}
