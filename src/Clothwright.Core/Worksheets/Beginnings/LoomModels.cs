using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Worksheets.Beginnings;

/// <summary>Looms with which a worksheet begins where none is on the bench: kinds and sizes in common use, no maker's.</summary>
internal static class LoomModels
{
    public static ImmutableArray<LoomEntry> Looms { get; } =
    [
        new LoomEntry { Id = "heddle-50", Name = "rigid heddle loom, 50 cm", Kind = LoomKind.RigidHeddle, WeavingWidth = Length.FromCentimetres(50), RigidHeddles = 1 },
        new LoomEntry { Id = "table-4", Name = "table loom, 4 shafts", Kind = LoomKind.Table, WeavingWidth = Length.FromCentimetres(60), Shafts = 4 },
        new LoomEntry { Id = "table-8", Name = "table loom, 8 shafts", Kind = LoomKind.Table, WeavingWidth = Length.FromCentimetres(70), Shafts = 8 },
        new LoomEntry { Id = "floor-4", Name = "floor loom, 4 shafts", Kind = LoomKind.Floor, WeavingWidth = Length.FromCentimetres(100), Shafts = 4, Treadles = 6, Shed = ShedAction.Counterbalance },
        new LoomEntry { Id = "floor-8", Name = "floor loom, 8 shafts", Kind = LoomKind.Floor, WeavingWidth = Length.FromCentimetres(150), Shafts = 8, Treadles = 10, Shed = ShedAction.Countermarche },
    ];

    public static ImmutableArray<Reed> Reeds { get; } = [.. new[] { "8-dent", "10-dent", "12-dent", "15-dent" }.Select(r => Reed.Parse(r).Value)];

    public static ImmutableArray<RigidHeddle> Heddles { get; } = [.. new[] { "7.5-dent", "10-dent", "12.5-dent" }.Select(h => RigidHeddle.Parse(h).Value)];
}
