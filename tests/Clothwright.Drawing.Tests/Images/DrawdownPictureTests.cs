using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Pictures;
using Clothwright.Drawing.Images;
using CsCheck;
using SkiaSharp;

namespace Clothwright.Drawing.Tests.Images;

public sealed class DrawdownPictureTests
{
    private static readonly Drawdown Twill = Drawdown.Parse("11001100/01100110/00110011/10011001/11001100/01100110").Value;

    private static readonly Drawdown Basket = Drawdown.Parse("11001100/11001100/00110011/00110011").Value;

    // No two neighbouring ends, and no two neighbouring picks, work alike throughout: otherwise a picture without lines cannot show that they are two.
    private static readonly Gen<Drawdown> Cloth =
        (from ends in Gen.Int[2, 24]
         from picks in Gen.Int[2, 24]
         from up in Gen.Bool.Array[ends * picks]
         select Drawdown.From(ends, picks, (pick, end) => up[pick * ends + end]))
        .Where(ShowsEveryThread);

    [Fact]
    public void Whatever_is_drawn_without_lines_is_read_at_any_cell_size() => Gen.Select(Cloth, Gen.Int[1, 12]).Sample(
        (cloth, size) => Assert.Equal(cloth, Read(new TestPicture(cloth) { CellWidth = size, CellHeight = size }).Drawdown),
        iter: 150);

    [Fact]
    public void Whatever_is_drawn_with_lines_and_a_margin_is_read() => Gen.Select(Cloth, Gen.Int[7, 14], Gen.Int[7, 14], Gen.Int[0, 40]).Sample(
        (cloth, width, height, margin) => Assert.Equal(
            cloth, Read(new TestPicture(cloth) { CellWidth = width, CellHeight = height, Line = 1, Margin = margin }).Drawdown),
        iter: 150);

    [Fact]
    public void Plain_weave_with_lines_is_told_from_its_margin()
    {
        // No two neighbours are of one tone inside, and the margin happens to be as wide as two cells and high as one and a half.
        Drawdown plain = Drawdown.Parse("10/01").Value;
        DrawdownPictureReading reading = Read(new TestPicture(plain) { CellWidth = 10, CellHeight = 14, Line = 1, Margin = 21 });
        Assert.Equal(plain, reading.Drawdown);
        Assert.True(reading.HasGridLines);
    }

    [Fact]
    public void Cells_of_three_pixels_are_not_taken_for_half_of_larger_ones()
    {
        Drawdown cloth = Drawdown.Parse("001111/010100/100101/101011/111111/100111/001111/101100/110011/010101/001010/000100/000000").Value;
        Assert.Equal(cloth, Read(new TestPicture(cloth) { CellWidth = 3, CellHeight = 3 }).Drawdown);
    }

    [Theory]
    [InlineData(1.37f, false)]
    [InlineData(0.63f, false)]
    [InlineData(1.37f, true)]
    [InlineData(2.5f, true)]
    [InlineData(0.8f, true)]
    public void A_scaled_picture_is_read(float scale, bool smooth)
    {
        Assert.Equal(Twill, Read(new TestPicture(Twill) { Scale = scale, Smooth = smooth }).Drawdown);
        Assert.Equal(Twill, Read(new TestPicture(Twill) { CellWidth = 19, CellHeight = 19, Line = 2, Scale = scale, Smooth = smooth }).Drawdown);
    }

    [Fact]
    public void Lines_of_the_dark_tone_are_not_taken_for_threads()
    {
        DrawdownPictureReading reading = Read(new TestPicture(Twill) { Line = 1, LineColour = SKColors.Black, Margin = 25 });
        Assert.Equal(Twill, reading.Drawdown);
        Assert.True(reading.HasGridLines);
        Assert.Equal(11, reading.CellWidthPixels, 0.2);
    }

    [Fact]
    public void A_basket_is_a_basket_with_lines_and_a_plain_weave_without()
    {
        Assert.Equal(Basket, Read(new TestPicture(Basket) { Line = 1 }).Drawdown);
        Assert.Equal("1010/0101", Read(new TestPicture(Basket)).Drawdown.ToString());
        Assert.Equal(Basket, Read(new TestPicture(Basket), new DrawdownPictureOptions { Ends = 8, Picks = 4 }).Drawdown);
    }

    [Fact]
    public void A_rib_without_lines_is_told_by_its_square_cells()
    {
        Drawdown rib = Drawdown.Parse("1010/1010/0101/0101").Value;
        Assert.Equal(rib, Read(new TestPicture(rib)).Drawdown);
    }

    [Fact]
    public void Any_two_tones_will_do_and_the_other_way_round()
    {
        var picture = new TestPicture(Twill) { Dark = new SKColor(59, 122, 120), Light = new SKColor(233, 225, 207) };
        Assert.Equal(Twill, Read(picture).Drawdown);
        Assert.Equal("00110011", Read(picture, new DrawdownPictureOptions { DarkIsWarp = false }).Drawdown.RowText(0));
        Assert.Equal("01100110", Read(picture, new DrawdownPictureOptions { FirstPickAtTop = true }).Drawdown.RowText(0));
        Assert.Equal(Twill, Read(picture with { Light = SKColors.Transparent }).Drawdown);
        Assert.Equal(Twill, Read(picture with { Format = SKEncodedImageFormat.Jpeg, Dark = SKColors.Black }).Drawdown);
    }

    [Fact]
    public void A_picture_of_one_tone_is_refused() =>
        Assert.Contains("one tone", Problem(new TestPicture(Twill) { Dark = SKColors.White }.File()).What, StringComparison.Ordinal);

    [Fact]
    public void A_shaded_picture_is_refused()
    {
        using var bitmap = new SKBitmap(64, 64);
        for (int y = 0; y < 64; y++)
        {
            for (int x = 0; x < 64; x++) bitmap.SetPixel(x, y, new SKColor((byte)((x * 37 + y * 91) % 256), (byte)(x * 4), (byte)(y * 4)));
        }

        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        Assert.Contains("two tones", Problem(data.ToArray()).What, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_picture_is_refused()
    {
        byte[] sound = new TestPicture(Twill).File();
        Assert.Contains("empty", Problem([]).What, StringComparison.Ordinal);
        Assert.Contains("not a picture", Problem("1100/0110"u8.ToArray()).What, StringComparison.Ordinal);
        Assert.Contains("damaged", Problem(sound[..(sound.Length / 2)]).What, StringComparison.Ordinal);
        Assert.Contains("bytes", Problem(sound, new DrawdownPictureOptions { MaxBytes = 10 }).What, StringComparison.Ordinal);
        Assert.Contains("80 × 60 pixels", Problem(sound, new DrawdownPictureOptions { MaxPixels = 100 }).What, StringComparison.Ordinal);
        Assert.Contains("8 ends", Problem(sound, new DrawdownPictureOptions { MaxEnds = 4 }).What, StringComparison.Ordinal);
        Assert.Contains("too few", Problem(sound, new DrawdownPictureOptions { Ends = 81 }).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Damaged_pictures_are_read_or_refused_and_nothing_else()
    {
        byte[] sound = new TestPicture(Twill) { Line = 1 }.File();
        Gen.Select(Gen.Int[0, sound.Length - 1], Gen.Byte, Gen.Int[1, sound.Length]).Sample(
            (at, value, length) =>
            {
                byte[] damaged = sound[..Math.Max(length, at + 1)];
                damaged[at] = value;
                Parsed<DrawdownPictureReading> read = DrawdownPicture.Read(damaged);
                Assert.True(read.Succeeded || read.Problem.Mend.Length > 0);
            },
            iter: 500);
    }

    private static DrawdownPictureReading Read(TestPicture picture, DrawdownPictureOptions? options = null) => DrawdownPicture.Read(picture.File(), options).Value;

    private static InputProblem Problem(byte[] file, DrawdownPictureOptions? options = null) => DrawdownPicture.Read(file, options).Problem!;

    private static bool ShowsEveryThread(Drawdown cloth) =>
        Enumerable.Range(1, cloth.Ends - 1).All(end => Enumerable.Range(0, cloth.Picks).Any(pick => cloth[pick, end] != cloth[pick, end - 1]))
        && Enumerable.Range(1, cloth.Picks - 1).All(pick => !cloth.Row(pick).SequenceEqual(cloth.Row(pick - 1)));
}
