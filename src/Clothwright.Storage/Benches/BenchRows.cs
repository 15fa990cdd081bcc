using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Rows;

namespace Clothwright.Storage.Benches;

/// <summary>The bench as it stands in the tables, and back.</summary>
internal static class BenchRows
{
    public static BenchRow Row(BenchDocument bench, int version, bool demo) => new()
    {
        Version = version,
        IsDemo = demo,
        Looms = [.. bench.Looms.Select(LoomRow)],
        Reeds = [.. bench.Reeds.Select((r, i) => new ReedRow { Place = i, Name = r.Name, DentsPerMetre = r.Dents.PerMetre })],
        Heddles = [.. bench.Heddles.Select((h, i) => new HeddleRow { Place = i, Name = h.Name, SpacesPerMetre = h.Spaces.PerMetre, Count = h.Count })],
        WarpingTools = [.. bench.WarpingTools.Select(ToolRow)],
    };

    public static BenchDocument Bench(BenchRow row) => new()
    {
        Looms = [.. row.Looms.OrderBy(l => l.Place).Select(Loom)],
        Reeds = [.. row.Reeds.OrderBy(r => r.Place).Select(r => new Reed(r.Name, Sett.FromPerMetre(r.DentsPerMetre)))],
        Heddles = [.. row.Heddles.OrderBy(h => h.Place).Select(h => new RigidHeddle(h.Name, Sett.FromPerMetre(h.SpacesPerMetre), h.Count))],
        WarpingTools = [.. row.WarpingTools.OrderBy(t => t.Place).Select(Tool)],
    };

    private static LoomRow LoomRow(LoomEntry loom, int place) => new()
    {
        Place = place,
        Id = loom.Id,
        Name = loom.Name,
        Kind = loom.Kind.ToString(),
        WeavingWidthMetres = loom.WeavingWidth.Metres,
        Shafts = loom.Shafts,
        Treadles = loom.Treadles,
        Shed = loom.Shed.ToString(),
        RigidHeddles = loom.RigidHeddles,
        WarpBeams = loom.WarpBeams,
        HeddlesPerShaft = loom.HeddlesPerShaft,
        WasteMetres = loom.Waste?.Metres,
    };

    private static LoomEntry Loom(LoomRow row) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Kind = Enum.Parse<LoomKind>(row.Kind),
        WeavingWidth = Length.FromMetres(row.WeavingWidthMetres),
        Shafts = row.Shafts,
        Treadles = row.Treadles,
        Shed = Enum.Parse<ShedAction>(row.Shed),
        RigidHeddles = row.RigidHeddles,
        WarpBeams = row.WarpBeams,
        HeddlesPerShaft = row.HeddlesPerShaft,
        Waste = row.WasteMetres is { } waste ? Length.FromMetres(waste) : null,
    };

    private static WarpingToolRow ToolRow(WarpingTool tool, int place) => new()
    {
        Place = place,
        Id = tool.Id,
        Name = tool.Name,
        Kind = tool.Kind.ToString(),
        LongestWarpMetres = tool.LongestWarpMetres,
        TurnCentimetres = tool.TurnCentimetres,
        SectionCentimetres = tool.SectionCentimetres,
    };

    private static WarpingTool Tool(WarpingToolRow row) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Kind = Enum.Parse<WarpingToolKind>(row.Kind),
        LongestWarpMetres = row.LongestWarpMetres,
        TurnCentimetres = row.TurnCentimetres,
        SectionCentimetres = row.SectionCentimetres,
    };
}
