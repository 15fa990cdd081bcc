using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> FloatWeaves() =>
    [
        new("overshot", "blocks", "Pattern weft floating over four blocks on a plain ground, with half-tones.", [],
            [
                Blocks("ABCD"),
                WeaveParameter.Number("size", "ends in a block that has no length of its own, shared ends counted", 4, 2, 60),
                WeaveParameter.Choice("fashion", "order of the blocks in the weft", "star", "rose"),
            ],
            c => Overshot.Of(c.Blocks(4, c.Number("size")), c.Choice("fashion") == "rose" ? OvershotFashion.Rose : OvershotFashion.Star)),
        new("crackle", "blocks", "Short points on three shafts: pattern all over, no float over more than three ends.", ["crackle weave", "jeans weave"],
            [
                Blocks("ABCD"),
                WeaveParameter.Number("picks", "pattern picks for each unit", 1, 1, 16),
            ],
            c => Crackle.Of(c.Blocks(4, 1), c.Number("picks"))),
        new("monk's belt", "blocks", "Two blocks on opposite pairs, woven with a floating pattern weft.", ["monksbelt"],
            [
                WeaveParameter.Numbers("ends", "ends in block A, B, A, B …, even numbers", "6 6", 2, 200),
                WeaveParameter.Number("picks", "pattern picks for each block", 2, 1, 64),
            ],
            c => MonksBelt.Of(c.Numbers("ends"), c.Number("picks"))),
        new("m's and o's", "blocks", "Cords beside plain weave, exchanging places.", ["m's & o's"],
            [
                Blocks("AB"),
                WeaveParameter.Number("cord", "ends in a cord, an even number", 4, 4, 12),
            ],
            c => MsAndOs.Of(c.Blocks(2, 1), c.Number("cord"))),
    ];
}
