using System.Text;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Csv;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Wif;

namespace Clothwright.Fuzzing;

/// <summary>Sound files to begin from, and pieces that mean something to the readers.</summary>
internal static class FuzzSeeds
{
    private static readonly WovenDraft Twill = Woven(8, 8, true, liftPlan: false);

    private static readonly WovenDraft Sinking = Woven(40, 30, false, liftPlan: true);

    public static IReadOnlyList<byte[]> Wif { get; } =
    [
        WifWriter.WriteBytes(WifConversion.ToDocument(Twill)),
        WifWriter.WriteBytes(WifConversion.ToDocument(Sinking)),
        WifWriter.WriteBytes(Crowded(WifConversion.ToDocument(Woven(12, 12, true, liftPlan: true)))),
        "[WIF]\n[THREADING]\n1=1\n[LIFTPLAN]\n1=1\n"u8.ToArray(),
    ];

    public static IReadOnlyList<byte[]> WifWords { get; } = Bytes(
        "\n[WARP]\n", "\n[THREADING]\n", "\n[COLOR TABLE]\n", "\n[PRIVATE A B]\n", "\n[CONTENTS]\n", "\n[NOTES]\n", "[", "]", "[]", "=", ";", ",", "\r", "\n", "\r\n\r\n", "\0", "\uFEFF",
        "\nThreads=2000000000\n", "\nShafts=99\n", "\nRange=0,1\n", "\nRange=5,5\n", "\nEntries=65536\n", "\n0=0,0,0\n", "\n65536=1,2,3\n", "\nColor=7,1,2,3\n", "\nColor=0\n", "\nUnits=miles\n",
        "\nSpacing=0,25\n", "\nSpacing=1e-300\n", "\nRising Shed=false\n", "\n9=1,2,3,4,5,6,7,8,64\n", "\n-1=1\n", "\n20000=1\n", "\n=1\n", "\nTitle=\u00E9\u00DF\uD83C\uDF0A\n", "\n[warp colors]\n1=9\n2=0\n", "\n[WEFT SYMBOL TABLE]\n3=';'\n", "9999999999");

    public static IReadOnlyList<byte[]> Grids { get; } = Bytes(
        "1100\n0110\n0011\n1001\n", "; first pick last\n##..\n.##.\n..##\n#..#\n", "XX  \n XX \n  XX\nX  X\n", "1100/0110/0011/1001");

    public static IReadOnlyList<byte[]> GridWords { get; } = Bytes("1", "0", "#", ".", "X", " ", "/", "\n", "\r", "; first pick first\n", ";", "\t", "█", "\0", "1111111111", "\n\n");

    public static IReadOnlyList<byte[]> Tables { get; } = [.. new[] { Twill, Sinking }.Select(woven => Encoding.UTF8.GetBytes(DraftTable.Write(woven)))];

    public static IReadOnlyList<byte[]> TableWords { get; } = Bytes(
        ",", "\"", "\"\"", "\n", ";", "\t", "'", "=1+1", "end,9,1,,,\n", "pick,1,1,,,\n", "lift,2,1 2,#ffffff,0.5,0.5\n", "shafts,,64,,,\n", "shed,,sinking,,,\n", "treadle,2000000000,1,,,\n", "name,,\"a\nb\",,,\n", "\0", "part,number,value\n");

    private static IReadOnlyList<byte[]> Bytes(params string[] words) => [.. words.Select(Encoding.UTF8.GetBytes)];

    private static WovenDraft Woven(int ends, int picks, bool rising, bool liftPlan)
    {
        var draft = new Draft
        {
            Name = "Ebb and flow",
            Shafts = 4,
            RisingShed = rising,
            Threading = [.. Enumerable.Range(0, ends).Select(e => e % 7 == 6 ? ShaftSet.Of(1, 3) : ShaftSet.Of(e % 4 + 1))],
            TieUp = [ShaftSet.Of(1, 2), ShaftSet.Of(2, 3), ShaftSet.Of(3, 4), ShaftSet.Of(1, 4)],
            Treadling = [.. Enumerable.Range(0, picks).Select(p => p % 5 == 4 ? ShaftSet.None : ShaftSet.Of(p % 4 + 1))],
            LiftPlan = liftPlan ? [.. Enumerable.Range(0, picks).Select(p => ShaftSet.Of(p % 4 + 1, (p + 1) % 4 + 1))] : [],
        };
        return new WovenDraft(draft, Threads(ends), Threads(picks));
    }

    private static WovenThreads Threads(int count) => new()
    {
        Colours = [.. Enumerable.Range(0, count).Select(i => i % 3 == 0 ? new SrgbColour(59, 122, 120) : new SrgbColour(233, 225, 207))],
        Spacings = [.. Enumerable.Range(0, count).Select(i => Length.FromMillimetres(i % 9 == 8 ? 2.5 : 1.25))],
        Thicknesses = [.. Enumerable.Range(0, count).Select(i => Length.FromMillimetres(i % 6 == 5 ? 0.8 : 0.6))],
    };

    private static WifDocument Crowded(WifDocument document) => document with
    {
        Notes = WifNumbered.Of([KeyValuePair.Create(1, "a note; with marks"), KeyValuePair.Create(7, "")]),
        Warp = document.Warp with
        {
            Symbol = "';'",
            SymbolNumber = 1,
            SymbolEntries = 2,
            SymbolTable = WifNumbered.Of([KeyValuePair.Create(2, "'='")]),
            Symbols = WifNumbered.Of([KeyValuePair.Create(3, "'#'")]),
            SpacingZoom = 2,
            SpacingZooms = WifNumbered.Of([KeyValuePair.Create(4, 3)]),
        },
        ExtraKeys = [new WifExtraKey("WEAVING", "Loom", "table")],
        KeptSections = [new WifSection("PRIVATE Saltings THREADING", ["1=9", "; theirs", " odd"]), new WifSection("BITMAP FILE", ["1=marsh.png"])],
    };
}
