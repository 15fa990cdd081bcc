using Clothwright.Core.Colours;
using Clothwright.Core.Photographs.Palettes;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.TestKit.Photographs;
using CsCheck;

namespace Clothwright.Core.Tests.Photographs.Palettes;

public class PaletteReaderTests
{
    private const int Side = 320;

    private static readonly SrgbColour Tide = new(0x3b, 0x7a, 0x78);

    private static readonly SrgbColour Heather = new(0x5b, 0x2a, 0x86);

    // Five flat colours at known shares with noise of 3 codes come back within 1 ΔE00 and 1 % of the area: the yardstick of the method.
    [Fact]
    public void Flat_colours_come_back_with_their_shares() =>
        Gen.ULong.Sample(
            seed =>
            {
                var chance = new SeededChance(seed);
                var colours = new List<SrgbColour>();
                while (colours.Count < 5)
                {
                    var next = new SrgbColour((byte)chance.Between(40, 225), (byte)chance.Between(40, 225), (byte)chance.Between(40, 225));
                    if (colours.All(c => Difference(c, next) > 18)) colours.Add(next);
                }

                double[] ends = [0.34, 0.60, 0.79, 0.92, 1];
                Photograph photo = Picture((x, _) => colours[Array.FindIndex(ends, e => (x + 0.5) / Side <= e)], noise: 3, seed);
                PhotoPalette palette = PaletteReader.Read(photo, new PaletteQuestion()).Value;
                Assert.Equal(5, palette.Colours.Length);
                for (int i = 0; i < 5; i++)
                {
                    PaletteColour found = palette.Colours.MinBy(c => ColourDifference.Ciede2000(c.Lab, CieLab.From(colours[i])))!;
                    Assert.InRange(ColourDifference.Ciede2000(found.Lab, CieLab.From(colours[i])), 0, 1);
                    Assert.Equal(ends[i] - (i == 0 ? 0 : ends[i - 1]), found.AreaShare, 0.01);
                }
            },
            iter: 8);

    [Fact]
    public void A_white_patch_takes_the_lamp_out()
    {
        // Lamplight: the red whole, three quarters of the green, two fifths of the blue; paper in the upper left quarter.
        Photograph photo = Picture((x, y) => Lit(x < Side / 2 && y < Side / 2 ? new LinearColour(0.88, 0.88, 0.88) : LinearColour.From(Tide)), noise: 1, 4);
        var question = new PaletteQuestion { Area = (new PhotoPoint(10, 180), new PhotoPoint(310, 310)) };
        PaletteColour seen = PaletteReader.Read(photo, question).Value.Colours.Single();
        PhotoPalette corrected = PaletteReader.Read(photo, question with { NeutralPlace = new PhotoPoint(80, 80) }).Value;
        Assert.True(ColourDifference.Ciede2000(seen.Lab, CieLab.From(Tide)) > 8);
        Assert.InRange(ColourDifference.Ciede2000(corrected.Colours.Single().Lab, CieLab.From(Tide)), 0, 1);
        Assert.True(corrected.LightKnown);
        Assert.Empty(corrected.Notes);
    }

    [Fact]
    public void The_same_picture_gives_the_same_colours_and_only_the_wanted_number()
    {
        Photograph photo = Picture((x, y) => new SrgbColour((byte)(x / 2 + 40), (byte)(y / 2 + 40), 120), noise: 2, 9);
        PhotoPalette one = PaletteReader.Read(photo, new PaletteQuestion { Most = 3 }).Value;
        PhotoPalette again = PaletteReader.Read(photo, new PaletteQuestion { Most = 3 }).Value;
        Assert.Equal(3, one.Colours.Length);
        Assert.Equal(one.Colours.ToArray(), again.Colours.ToArray());
        Assert.Contains(one.Notes, n => n.Contains("further colours", StringComparison.Ordinal));
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(0, one.Between(i, i), 1e-9);
            Assert.True(i == 0 || one.Between(0, i) >= 5);
        }
    }

    [Fact]
    public void Two_colours_side_by_side_do_not_make_a_third()
    {
        PhotoPalette palette = PaletteReader.Read(Picture((x, _) => x / 37 % 2 == 0 ? Tide : Heather, noise: 2, 3, blur: 1), new PaletteQuestion()).Value;
        Assert.Equal(2, palette.Colours.Length);
        Assert.InRange(palette.Colours.Sum(c => c.AreaShare), 0.99, 1.0001);
    }

    [Theory]
    [InlineData(14, true)]
    [InlineData(1, false)]
    public void A_blurred_picture_is_refused_and_a_sharp_one_is_not(int blur, bool refused)
    {
        Photograph photo = Picture((x, _) => x / 29 % 2 == 0 ? new SrgbColour(210, 190, 120) : Heather, noise: 2, 3, blur);
        Parsed<PhotoPalette> read = PaletteReader.Read(photo, new PaletteQuestion());
        Assert.Equal(refused, !read.Succeeded);
        if (refused) Assert.Contains("blurred", read.Problem!.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(255, "burnt out")]
    [InlineData(1, "too dark")]
    public void What_holds_no_colour_is_refused(byte code, string why)
    {
        Photograph photo = Picture((x, _) => x < 80 ? Tide : new SrgbColour(code, code, code), noise: 0, 1);
        Parsed<PhotoPalette> read = PaletteReader.Read(photo, new PaletteQuestion());
        Assert.Contains(why, read.Problem!.What, StringComparison.Ordinal);
        Assert.True(PaletteReader.Read(photo, new PaletteQuestion { Area = (new PhotoPoint(4, 4), new PhotoPoint(76, 300)) }).Succeeded);
    }

    [Fact]
    public void A_part_burnt_out_is_left_aside_and_said()
    {
        Photograph photo = Picture((x, _) => x < 220 ? Tide : new SrgbColour(255, 255, 255), noise: 0, 1);
        PhotoPalette palette = PaletteReader.Read(photo, new PaletteQuestion()).Value;
        Assert.Single(palette.Colours);
        Assert.Contains(palette.Notes, n => n.Contains("burnt out", StringComparison.Ordinal));
        Assert.Equal(100.0 / Side, palette.BurntShare, 0.02);
    }

    [Theory]
    [InlineData(255, 255, 255, "burnt out")]
    [InlineData(8, 8, 8, "too dark")]
    [InlineData(220, 60, 40, "no light of a room")]
    public void A_spot_that_is_no_neutral_one_is_refused(byte red, byte green, byte blue, string why)
    {
        Photograph photo = Picture((x, y) => x < 100 && y < 100 ? new SrgbColour(red, green, blue) : Tide, noise: 0, 1);
        InputProblem problem = PaletteReader.Read(photo, new PaletteQuestion { NeutralPlace = new PhotoPoint(50, 50) }).Problem!;
        Assert.Equal("neutral", problem.Where);
        Assert.Contains(why, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Places_beside_the_picture_are_refused()
    {
        Photograph photo = Picture((_, _) => Tide, noise: 0, 1);
        Assert.Equal("neutral", PaletteReader.Read(photo, new PaletteQuestion { NeutralPlace = new PhotoPoint(900, 10) }).Problem!.Where);
        Assert.Equal("area", PaletteReader.Read(photo, new PaletteQuestion { Area = (new PhotoPoint(400, 400), new PhotoPoint(900, 900)) }).Problem!.Where);
    }

    private static double Difference(SrgbColour one, SrgbColour other) => ColourDifference.Ciede2000(CieLab.From(one), CieLab.From(other));

    private static SrgbColour Lit(LinearColour light) => new LinearColour(light.Red, light.Green * 0.75, light.Blue * 0.4).ToSrgb();

    // Blur: the mean over a square in codes, near enough to a lens out of focus.
    private static Photograph Picture(Func<int, int, SrgbColour> colour, double noise, ulong seed, int blur = 0)
    {
        var chance = new SeededChance(seed);
        byte[] rgba = new byte[Side * Side * 4];
        for (int y = 0; y < Side; y++)
        {
            for (int x = 0; x < Side; x++)
            {
                (double red, double green, double blue, int count) = (0, 0, 0, 0);
                for (int dx = -blur; dx <= blur; dx++)
                {
                    SrgbColour one = colour(Math.Clamp(x + dx, 0, Side - 1), y);
                    (red, green, blue, count) = (red + one.Red, green + one.Green, blue + one.Blue, count + 1);
                }

                int at = (y * Side + x) * 4;
                double[] sums = [red, green, blue];
                for (int c = 0; c < 3; c++) rgba[at + c] = (byte)Math.Clamp(Math.Round(sums[c] / count + (noise == 0 ? 0 : noise * chance.Normal())), 0, 255);
                rgba[at + 3] = 255;
            }
        }

        return Photograph.FromRgba(Side, Side, rgba);
    }
}
