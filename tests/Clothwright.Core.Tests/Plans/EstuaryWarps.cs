using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Tests.Yarns;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Plans;

/// <summary>Requests of the studio on the estuary, for tests.</summary>
internal static class EstuaryWarps
{
    public static Yarn Foam { get; } = EstuaryYarns.Make("foam", "8/2", CountSystem.Cotton, "cotton");

    public static Loom Table8 { get; } = new("table-8", "table loom", LoomKind.Table, Length.FromCentimetres(70), 8, 0, ShedAction.Levers, LoomWaste.Customary(LoomKind.Table, 8, ShedAction.Levers));

    public static Loom Heddle(int heddles) => new(
        "heddle", "rigid heddle loom", LoomKind.RigidHeddle, Length.FromCentimetres(60), heddles + 1, 0, ShedAction.Levers, LoomWaste.Customary(LoomKind.RigidHeddle, heddles + 1, ShedAction.Levers))
    {
        RigidHeddles = heddles,
    };

    public static Loom Floor(int shafts, int treadles) => new(
        "floor", "floor loom", LoomKind.Floor, Length.FromCentimetres(120), shafts, treadles, ShedAction.Rising, LoomWaste.Customary(LoomKind.Floor, shafts, ShedAction.Rising));

    public static Piece Scarf { get; } = new()
    {
        Name = "scarf",
        Kind = PieceKind.Scarf,
        Width = Length.FromCentimetres(20),
        Length = Length.FromCentimetres(180),
        Fringe = FringeStyle.Twisted,
        FringeLength = Length.FromCentimetres(12),
        Weft = [new WeftRun("foam", 1)],
    };

    /// <summary>One scarf in 8/2 cotton twill, 20 to the inch on the table loom.</summary>
    public static PlanRequest OneScarf { get; } = new()
    {
        Title = "One scarf",
        Bench = new Bench([Table8], [new Reed("10-dent", Sett.FromPerInch(10))], [new RigidHeddle("10-dent", Sett.FromPerInch(10), 2), new RigidHeddle("7.5-dent", Sett.FromPerInch(7.5), 1)]),
        LoomId = "table-8",
        Shelf = [Foam, EstuaryYarns.Merino, EstuaryYarns.Bamboo],
        Pieces = [Scarf],
        Weave = Weave("2/2 twill"),
        Warp = WarpOrder.Of("foam"),
        Purpose = ClothPurpose.Drape,
    };

    public static Weave Weave(string name) => WeaveCatalogue.Make(name).Value;

    public static PlanRequest On(this PlanRequest request, Loom loom) => request with { Bench = request.Bench with { Looms = [loom] }, LoomId = loom.Id };

    public static PlanRequest With(this PlanRequest request, Piece piece) => request with { Pieces = [piece] };

    public static PlanResult Planned(this PlanRequest request) => WarpPlanner.Plan(request).Value;
}
