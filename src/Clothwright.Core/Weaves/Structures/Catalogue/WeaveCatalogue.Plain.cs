using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> PlainWeaves()
    {
        WeaveParameter figures = new("base", "threads in each group", WeaveParameterKind.Figures, "2/2");
        return
        [
            new("plain weave", "plain weaves", "Every thread over one, under one.", ["plain", "tabby", "tabby weave"],
                [WeaveParameter.Number("shafts", "shafts over which the ends are shared out, an even number", 2, 2, ShaftSet.Highest)],
                c => PlainWeave.Of(c.Number("shafts"))),
            new("basket", "plain weaves", "Plain weave with groups of ends and picks working as one.", ["basket weave", "hopsack", "hopsack weave"],
                [
                    figures,
                    new("ends", "ends in each group where they differ from the picks", WeaveParameterKind.Figures, ""),
                    new("picks", "picks in each group where they differ from the ends", WeaveParameterKind.Figures, ""),
                ],
                c => Basket.Of(c.Groups(c.IsGiven("ends") ? "ends" : "base"), c.Groups(c.IsGiven("picks") ? "picks" : "base"))),
            new("warp rib", "plain weaves", "Several picks in each shed; ribs run across.", ["rib across", "cross rib", "rib", "rib weave"], [figures],
                c => Rib.Warp(c.Groups("base"))),
            new("weft rib", "plain weaves", "Several ends work as one; ribs run along the cloth.", ["rib along"], [figures],
                c => Rib.Weft(c.Groups("base"))),
        ];
    }
}
