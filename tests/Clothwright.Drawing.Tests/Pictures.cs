using System.Collections.Immutable;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using SkiaSharp;

namespace Clothwright.Drawing.Tests;

/// <summary>Drafts and cloths to draw.</summary>
internal static class Pictures
{
    public static SrgbColour TideBlue { get; } = new(0x2f, 0x5d, 0x86);

    public static SrgbColour Saltmarsh { get; } = new(0x7d, 0x85, 0x45);

    public static SrgbColour DrySand { get; } = new(0xd9, 0xc7, 0x9a);

    public static ImmutableArray<ShaftSet> Straight(int shafts, int threads) =>
        [.. Enumerable.Range(0, threads).Select(i => ShaftSet.Of(i % shafts + 1))];

    public static Draft Twill(int ends, int picks) => new()
    {
        Shafts = 4,
        Name = "2/2 twill",
        Threading = Straight(4, ends),
        TieUp = [ShaftSet.Of(1, 2), ShaftSet.Of(2, 3), ShaftSet.Of(3, 4), ShaftSet.Of(1, 4)],
        Treadling = Straight(4, picks),
    };

    /// <summary>A cloth of one warp and one weft colour.</summary>
    public static LookDescription Cloth(Drawdown weave, double sett, double threadMillimetres) => new(
        weave,
        [new ThreadLook(TideBlue, Length.FromMillimetres(threadMillimetres))],
        [new ThreadLook(Saltmarsh, Length.FromMillimetres(threadMillimetres))],
        Sett.FromPerCentimetre(sett),
        Sett.FromPerCentimetre(sett));

    public static SrgbColour At(SKBitmap picture, int x, int y)
    {
        SKColor colour = picture.GetPixel(x, y);
        return new SrgbColour(colour.Red, colour.Green, colour.Blue);
    }
}
