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
            [],
            _ => PlainWeave.Of() with
            {
                Name = "clasped weft",
                Rule = ClaspedWeft.Rule,
                Notes = ["Each pick holds two strands: count the weft yarn double and open the sett for the thicker pick."],
            }),
    ];
}
