using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> UnitWeaves() =>
    [
        new("turned twill", "blocks", "Blocks of twill in both faces, cut cleanly.", ["twill blocks", "turned twill blocks", "twill diaper"],
            [WeaveParameter.Number("ends", "ends in a unit", 4, 3, 16), Blocks("AABB"), Shown()],
            c => TurnedBlocks.Of(c.Number("ends"), 1, c.Profile(16))),
        new("turned satin", "blocks", "Blocks of satin and sateen side by side, as in damask.", ["satin blocks", "turned satin blocks", "damask"],
            [
                WeaveParameter.Number("ends", "ends in a unit", 5, 5, 16),
                WeaveParameter.Number("step", "step of the satin", null, 2, 14),
                Blocks("AABB"),
                Shown(),
            ],
            c => TurnedBlocks.Of(c.Number("ends"), c.NumberOrNone("step") ?? SatinSteps.Best(c.Number("ends")) ?? 0, c.Profile(12))),
        new("summer and winter", "blocks", "Light figures on dark on one face, dark on light on the other.", ["summer & winter"],
            [Blocks("AABB"), Shown(), WeaveParameter.Numbers("tie", "tie-downs on successive pattern picks", "1 2", 1, 2)],
            c => SummerAndWinter.Of(c.Profile(26), c.Numbers("tie"))),
        new("tied weave", "blocks", "Independent blocks on tie-down shafts, with pattern weft and tabby.", ["tied unit weave"],
            [
                WeaveParameter.Number("ties", "tie-down shafts", 3, 2, 4),
                Blocks("AABB"),
                Shown(),
                WeaveParameter.Numbers("tie", "tie-downs on successive pattern picks; each once if not given", "", 1, 4),
            ],
            c => TiedWeave.Of(c.Profile(26), c.Number("ties"), c.IsGiven("tie") ? c.Numbers("tie") : null)),
        new("block substitution", "blocks", "A profile filled with any two weaves, by name or one's own: one where a block shows, the other elsewhere.", ["profile draft", "profile"],
            [
                new("unit", "the weave where a block shows: rows of 0 and 1, or the name of a weave", WeaveParameterKind.Cloth, "1/3 twill"),
                new("other", "the weave where it does not", WeaveParameterKind.Cloth, "3/1 twill"),
                Blocks("AABB"),
                Shown(),
            ],
            c => BlockSubstitution.Of(c.Cloth("unit"), c.Cloth("other"), c.Profile(26))),
    ];

    private static WeaveParameter Blocks(string preset) =>
        new("blocks", "blocks across, by letters, with a length behind a letter where it is wanted", WeaveParameterKind.Blocks, preset);

    private static WeaveParameter Shown() =>
        new("shown", "blocks that show on each line, - for none; as drawn in if not given", WeaveParameterKind.Blocks, "");
}
