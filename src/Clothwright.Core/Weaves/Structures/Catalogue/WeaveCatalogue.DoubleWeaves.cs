using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> DoubleWeaves()
    {
        WeaveParameter start = WeaveParameter.Choice("start", "the side from which the first pick is thrown", "left", "right");
        WeaveParameter fold = WeaveParameter.Choice("fold", "the side of the first fold", "right", "left");
        return
        [
            new("double weave", "double weaves", "Separate cloths one above the other, a shuttle for each.", ["two layers", "two cloths", "doubleweave", "separate layers"],
                [WeaveParameter.Number("layers", "cloths one above the other", 2, 2, 8)],
                c => SeparateLayers.Of(c.Number("layers"))),
            new("tube", "double weaves", "Two layers joined on both sides.", ["tubular weave", "tubular"], [start],
                c => Tube.Of(c.Edge("start"))) { AtSize = (c, size) => Tube.Of(size, c.Edge("start")) },
            new("double width", "double weaves", "Two layers joined on one side: opened, the cloth is twice as wide, the fold in the middle.", ["doublewidth", "double width weave"], [fold],
                c => MultipleWidth.Of(2, c.Edge("fold"))) { AtSize = (c, size) => MultipleWidth.Of(size, 2, c.Edge("fold")) },
            new("triple width", "double weaves", "Three layers joined by turns: opened, three times as wide.", ["triple weave", "multiple width"],
                [WeaveParameter.Number("layers", "layers", 3, 2, 8), fold],
                c => MultipleWidth.Of(c.Number("layers"), c.Edge("fold"))) { AtSize = (c, size) => MultipleWidth.Of(size, c.Number("layers"), c.Edge("fold")) },
            new("layers exchanging", "double weaves", "Two layers that change places from block to block.", ["exchanged double weave", "double weave exchange", "double weave blocks"],
                [Blocks("AABB"), Shown()],
                c => ExchangedLayers.Of(c.Profile(16))),
            new("stitched double weave", "double weaves", "Two layers caught together here and there.", ["stitched double cloth", "double cloth"],
                [WeaveParameter.Number("every", "units of four threads from one stitch to the next", 1, 1, 16)],
                c => StitchedDoubleWeave.Of(c.Number("every"))),
            new("deflected double weave", "double weaves", "Two systems of threads that bend round each other in the wash.", ["deflected doubleweave"],
                [
                    WeaveParameter.Number("group", "threads in a group, an even number", 4, 2, 12),
                    WeaveParameter.Choice("wefts", "whether each system's weft passes over or under the other's ends", "over", "under"),
                ],
                c => DeflectedDoubleWeave.Of(c.Number("group"), c.Choice("wefts") == "over", c.Choice("wefts") == "over")),
        ];
    }
}
