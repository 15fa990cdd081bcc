using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Tests.Publishing;

/// <summary>Plans to publish.</summary>
internal static class Plans
{
    public static PlanResult Scarves(Func<Worksheet, Worksheet>? change = null)
    {
        var worksheet = new Worksheet
        {
            Title = "Two reedbed scarves",
            Looms =
            [
                new LoomEntry { Id = "table", Name = "table loom", Kind = LoomKind.Table, WeavingWidth = Length.FromCentimetres(60), Shafts = 8 },
                new LoomEntry { Id = "floor", Name = "floor loom", Kind = LoomKind.Floor, WeavingWidth = Length.FromCentimetres(120), Shafts = 4, Treadles = 6, Shed = ShedAction.Rising },
                new LoomEntry { Id = "rigid", Name = "rigid heddle loom", Kind = LoomKind.RigidHeddle, WeavingWidth = Length.FromCentimetres(80), RigidHeddles = 2 },
            ],
            Reeds = [new Reed("10-dent", Sett.FromPerInch(10))],
            Heddles = [new RigidHeddle("10-dent heddle", Sett.FromPerInch(10), 2)],
            Shelf = [Yarn("tide", "8/2 bamboo, tide blue", 0x2f5d86), Yarn("marsh", "8/2 bamboo, saltmarsh", 0x7d8545)],
            LoomId = "table",
            Weave = new WeaveDecision.Named("2/2 twill"),
            Sett = Sett.FromPerInch(20),
            Warp = WarpOrder.Of("tide"),
            FloatingSelvedges = true,
            Sample = Length.FromCentimetres(15),
            Pieces = [Scarf("first scarf", "marsh"), Scarf("second scarf", "tide")],
        };
        return (change is null ? worksheet : change(worksheet)).Plan().Value;
    }

    public static PieceEntry Scarf(string name, string weft, int strands = 1) => new(new Piece
    {
        Name = name,
        Kind = PieceKind.Scarf,
        Width = Length.FromCentimetres(21),
        Length = Length.FromCentimetres(180),
        Fringe = FringeStyle.Twisted,
        FringeLength = Length.FromCentimetres(12),
        Weft = [new WeftRun(weft, 1) { Strands = strands }],
    });

    public static YarnEntry Yarn(string id, string name, int colour) => new()
    {
        Id = id,
        Name = name,
        Count = "8/2",
        CountSystem = "cotton",
        Fibres = [new FibreEntry("bamboo-viscose", Ratio.FromValue(1))],
        Colour = new SrgbColour((byte)(colour >> 16), (byte)(colour >> 8), (byte)colour),
    };

    public static ImmutableArray<PieceEntry> Only(PieceEntry entry, Func<Piece, Piece> change) => [entry with { Piece = change(entry.Piece) }];
}
