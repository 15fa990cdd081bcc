using System.Numerics;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Pictures;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Microsoft.Playwright;

namespace Clothwright.Browser.Tests.Cloths;

/// <summary>The graphics card and the processor paint one cloth.</summary>
public class CardAgreementTests(CardPainter card) : IClassFixture<CardPainter>
{
    private const int Size = 72;
    private static readonly SrgbColour Plum = new(0x5b, 0x2a, 0x86);
    private static readonly SrgbColour Rosehip = new(0xe8, 0x6a, 0x17);
    private static readonly LinearColour Behind = new(0.92, 0.88, 0.78);

    // Rounding to a code and arithmetic in 32 bits: no code differs by more than 1 on a card imitated in software.
    // A point on the very edge of a thread may fall to either side of it: at most one pixel in 2,000, one ninth of whose light it is.
    [Theory]
    [InlineData("silk twill")]
    [InlineData("wool plain")]
    [InlineData("chenille")]
    [InlineData("metallic stripe")]
    [InlineData("double cloth")]
    [InlineData("pattern weft")]
    [InlineData("variegated weft")]
    [InlineData("clasped weft")]
    public async Task Card_and_processor_paint_the_same_picture_of(string name)
    {
        IPage page = await card.OpenAsync();
        LookNumbers numbers = LookNumbers.Of(Cloth(name));
        foreach ((string where, ClothView view) in Views())
        {
            byte[] painted = await CardPainter.PaintAsync(page, numbers, view);
            byte[] reckoned = Reckon(numbers, view);
            int[] apart = [.. painted.Zip(reckoned, (a, b) => Math.Abs(a - b))];
            int beyond = Enumerable.Range(0, Size * Size).Count(p => apart[4 * p] > 1 || apart[4 * p + 1] > 1 || apart[4 * p + 2] > 1);
            Assert.True(beyond <= Size * Size / 2000, $"{name}, {where}: {beyond} pixels differ by more than 1 code, at most {apart.Max()}, on the mean {apart.Average():0.000}.");
            Assert.True(apart.Average() <= 0.6, $"{name}, {where}: on the mean {apart.Average():0.000} codes apart.");
        }

        await page.CloseAsync();
    }

    private static IEnumerable<(string Where, ClothView View)> Views()
    {
        yield return ("near", Of(Face.Front, 0.07, Lighting.Window));
        yield return ("near, tilted", Of(Face.Front, 0.09, Lighting.Window.Tilted(0.6, -0.3)));
        yield return ("near, back", Of(Face.Back, 0.08, Lighting.Window));
        yield return ("in the hand", Of(Face.Front, 0.26, Lighting.Window));
        yield return ("between near and far", Of(Face.Back, 0.45, Lighting.Window));
        yield return ("far, tilted", Of(Face.Front, 1.3, Lighting.Window.Tilted(0.2, 0.7)));
    }

    private static ClothView Of(Face face, double perPixel, Lighting lighting) => new(face, 3.1, 2.3, perPixel, Size, Size, lighting, Behind);

    private static byte[] Reckon(LookNumbers numbers, ClothView view)
    {
        var painter = new ClothPainter(numbers, view);
        var row = new Vector3[Size];
        byte[] bytes = new byte[Size * Size * 4];
        for (int y = 0; y < Size; y++)
        {
            painter.Row(Size - 1 - y, row);
            for (int x = 0; x < Size; x++)
            {
                SrgbColour colour = new LinearColour(row[x].X, row[x].Y, row[x].Z).ToSrgb();
                new byte[] { colour.Red, colour.Green, colour.Blue, 255 }.CopyTo(bytes, (y * Size + x) * 4);
            }
        }

        return bytes;
    }

    private static LookDescription Cloth(string name) => name switch
    {
        "silk twill" => Plain("1100/0110/0011/1001", Thread(Plum, Lustres.SilkReeled, 0.5, 0.06), Thread(Rosehip, Lustres.SilkReeled, 0.6, 0.06)),
        "wool plain" => Plain("10/01", Thread(Plum, Lustres.Wool, 0.55, -0.2), Thread(Rosehip, Lustres.Wool, 0.45, -0.25)),
        "chenille" => Plain("10/01", Thread(Plum, Lustres.Chenille, 0.6, 0), Thread(Rosehip, Lustres.Cotton, 0.5, -0.2)),
        "metallic stripe" => Plain("10/01", Thread(Plum, Lustres.Cotton, 0.5, -0.2), Thread(Rosehip, Lustres.Linen, 0.5, 0.3)) with
        {
            Ends = [Thread(Plum, Lustres.Cotton, 0.5, -0.2), Thread(new SrgbColour(0xc8, 0xa9, 0x51), Lustres.Metal, 0.3, 0), Thread(Plum, Lustres.Viscose, 0.7, -0.2)],
        },
        "double cloth" => Plain("1000/1110/0010/1011", Thread(Plum, Lustres.CottonMercerised, 0.5, -0.2), Thread(Rosehip, Lustres.CottonMercerised, 0.5, -0.2)) with
        {
            Ends = [Thread(Plum, Lustres.CottonMercerised, 0.5, -0.2), Thread(Rosehip, Lustres.Wool, 0.5, -0.2)],
            SharedEnds = [false, true],
            SharedPicks = [false, true],
        },
        "pattern weft" => Plain("101010/000111/010101/000111", Thread(Plum, Lustres.Cotton, 0.4, -0.2), Thread(Rosehip, Lustres.Cotton, 0.3, -0.2)) with
        {
            Picks = [Thread(Rosehip, Lustres.Cotton, 0.3, -0.2), Thread(Plum, Lustres.Wool, 0.9, -0.2)],
            SharedPicks = [false, true],
        },
        "variegated weft" => Plain("100/010/001", Thread(Plum, Lustres.Lyocell, 0.5, 0.2), Thread(Rosehip, Lustres.Lyocell, 0.5, 0.2) with
        {
            Stretches = [new ColourStretch(Rosehip, Length.FromMillimetres(23)), new ColourStretch(Plum, Length.FromMillimetres(11)), new ColourStretch(new SrgbColour(240, 230, 210), Length.FromMillimetres(17))],
        }),
        _ => Plain("10/01", Thread(Plum, Lustres.Cotton, 0.5, -0.2), Thread(Rosehip, Lustres.Cotton, 0.5, -0.2) with { ClaspedWith = Thread(Plum, Lustres.Cotton, 0.4, 0.2), ClaspShare = 0.13 }),
    };

    private static ThreadLook Thread(SrgbColour colour, Lustre lustre, double millimetres, double twist) => new(colour, Length.FromMillimetres(millimetres))
    {
        Lustre = lustre,
        TwistRadians = twist,
        PlySpacing = Math.Abs(twist) > 0.1 && !lustre.IsPile ? Length.FromMillimetres(1.3) : Length.Zero,
    };

    private static LookDescription Plain(string weave, ThreadLook warp, ThreadLook weft) => new(
        Drawdown.Parse(weave).Value, [warp], [weft], Sett.FromPerCentimetre(17), Sett.FromPerCentimetre(15))
    {
        Width = Length.FromMillimetres(61),
        Length = Length.FromMillimetres(83),
        WarpRise = 0.42,
        WeftYarnPerLength = 1.07,
        WarpYarnPerLength = 1.04,
    };
}
