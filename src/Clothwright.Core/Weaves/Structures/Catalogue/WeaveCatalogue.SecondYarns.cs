using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> SecondYarns() =>
    [
        new("supplementary weft", "second yarns", "A pattern weft between the picks of a plain ground.", ["extra weft"],
            [WeaveParameter.Number("group", "ends in a group, an even number", 6, 2, 40)],
            c => SupplementaryWeft.Of(c.Number("group"))),
        new("supplementary warp", "second yarns", "Pattern ends between the ends of a plain ground.", ["extra warp"],
            [WeaveParameter.Number("group", "picks in a group, an even number", 6, 2, 40)],
            c => SupplementaryWarp.Of(c.Number("group"))),
        new("clasped weft", "second yarns", "Plain weave in which two yarns meet in each shed and turn back.", ["clasped"],
            [Line("width from the left, from the first pick to the last", "20 70 40 70 20")],
            c => ClaspedPlan.Weft(c.Numbers("line"), null)) { AtSize = (c, size) => ClaspedPlan.Weft(c.Numbers("line"), size) },
        new("clasped warp", "second yarns", "Plain weave in which two yarns meet along each end and turn back, wound so.", [],
            [Line("length from the front, from the first end to the last", "30 60 45 60 30")],
            c => ClaspedPlan.Warp(c.Numbers("line"), null)) { AtSize = (c, size) => ClaspedPlan.Warp(c.Numbers("line"), size) },
    ];

    private static WeaveParameter Line(string along, string preset) =>
        WeaveParameter.Numbers("line", $"places of the join at even steps, per cent of the {along}", preset, 0, 100);
}
