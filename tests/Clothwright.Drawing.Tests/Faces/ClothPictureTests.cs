using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Drawing.Faces;
using Clothwright.Drawing.Pdf;
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
                AssertSeen(Broken[pick, end] ? Warp : Weft, picture, end * 10 + 5, (3 - pick) * 10 + 5);
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
                AssertSeen(Broken[pick, end] ? Weft : Warp, picture, (4 - end) * 10 + 5, (3 - pick) * 10 + 5);
            }
        }
    }

    [Fact]
    public void Of_clasped_picks_the_place_where_they_meet_is_shown_on_both_sides()
    {
        LookDescription cloth = Pictures.Cloth(Broken, 10, 1);
        ThreadLook clasped = cloth.Picks[0] with { ClaspedWith = cloth.Ends[0], ClaspShare = 0.25 };
        cloth = cloth with { Picks = [clasped], Width = Length.FromCentimetres(20) };
        ClothFrame frame = ClothFrame.Of(cloth, Length.FromCentimetres(6), Length.FromCentimetres(1));
        Assert.Equal(2, frame.Left.Centimetres, 1e-9);

        // A quarter of 20 cm lies in the middle of 2 to 8 cm, seen from either side; right of it, on the front, all is of the warp's colour.
        ClothFrame whole = ClothFrame.Of(cloth, Length.FromCentimetres(30), Length.FromCentimetres(1));
        Assert.Equal((20, 0), (whole.Width.Centimetres, whole.Left.Centimetres));
        AssertSides(cloth, frame, Face.Front, weftIsLeft: true);
        AssertSides(cloth, frame, Face.Back, weftIsLeft: false);
    }

    private static void AssertSides(LookDescription cloth, ClothFrame frame, Face face, bool weftIsLeft)
    {
        using var stream = new MemoryStream();
        ClothPicture.Png(cloth, stream, face, 127, frame);
        using SKBitmap picture = SKBitmap.Decode(stream.ToArray());
        double[] greens = [.. Enumerable.Range(0, 2).Select(half => Enumerable.Range(0, picture.Width / 2 - 4).Average(x => Enumerable.Range(0, picture.Height).Average(y => picture.GetPixel(half * (picture.Width / 2 + 4) + x, y).Green)))];
        Assert.Equal(weftIsLeft, (greens[0] > greens[1]) == (Weft.Green > Warp.Green));
    }

    [Fact]
    public void A_picture_is_as_large_as_the_cloth()
    {
        using SKBitmap picture = Draw(Pictures.Cloth(Broken, 8, 1), Face.Front, 300, 50.8, 25.4);

        Assert.Equal((600, 300), (picture.Width, picture.Height));
    }

    [Fact]
    public void The_picture_for_print_shows_the_same_cloth()
    {
        var frame = new ClothFrame(Length.FromMillimetres(15), Length.FromMillimetres(12));
        LookDescription cloth = Pictures.Cloth(Broken, 10, 1);
        JpegPicture jpeg = ClothPicture.Print(cloth, Face.Front, 254, frame);
        using SKBitmap print = SKBitmap.Decode(jpeg.Bytes);
        using SKBitmap dots = Draw(cloth, Face.Front, 254, 15, 12);
        Assert.Equal((dots.Width, dots.Height), (print.Width, print.Height));
        for (int pick = 0; pick < 4; pick++)
        {
            for (int end = 0; end < 5; end++) AssertSeen(Broken[pick, end] ? Warp : Weft, print, end * 10 + 5, 119 - (pick * 10 + 5));
        }
    }

    [Fact]
    public void A_panel_is_as_large_as_its_cloth_and_its_ticks()
    {
        var frame = new ClothFrame(Length.FromMillimetres(50.8), Length.FromMillimetres(25.4));
        var panel = new ClothPanel(Pictures.Cloth(Broken, 10, 1), Face.Back, frame);
        Assert.Equal(144 + 15, panel.Width, 0.01);
        Assert.Equal(72 + 28, ClothPanel.HeightOf(frame), 0.01);
    }

    [Fact]
    public void A_cloth_without_threads_is_refused()
    {
        LookDescription cloth = Pictures.Cloth(Broken, 10, 1) with { Ends = [] };

        Assert.Throws<ArgumentException>(() => ClothPicture.Png(cloth, Stream.Null, Face.Front));
    }

    // Threads are shaded; which of the two is seen is told by what lies nearer.
    private static void AssertSeen(SrgbColour thread, SKBitmap picture, int x, int y)
    {
        SrgbColour seen = Pictures.At(picture, x, y);
        SrgbColour other = thread == Warp ? Weft : Warp;
        double toThread = ColourDifference.Ciede2000(CieLab.From(seen), CieLab.From(thread));
        Assert.True(toThread < ColourDifference.Ciede2000(CieLab.From(seen), CieLab.From(other)), $"{seen} at {x}, {y} where {thread} should be.");
    }
}
