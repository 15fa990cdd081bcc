using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> Laces()
    {
        WeaveParameter half = WeaveParameter.Number("half", "threads in a half unit, an odd number", 5, 3, 11);
        return
        [
            new("huckaback", "laces", "Weft floats in one half unit, warp floats in the other; drinks water.", ["huck", "huck weave"],
                [half, WeaveParameter.Choice("floats", "which threads float", "both", "warp", "weft")],
                c => Huck.Of(c.Choice("floats") switch { "warp" => HuckForm.Warp, "weft" => HuckForm.Lace, _ => HuckForm.Huckaback }, c.Number("half"))),
            new("huck lace", "laces", "Weft floats in alternate half units both ways.", [], [half],
                c => Huck.Of(HuckForm.Lace, c.Number("half"))),
            new("bronson lace", "laces", "Units of six whose blocks weave lace or plain by themselves.", ["bronson"],
                [Blocks("AB"), Shown()],
                c => BronsonLace.Of(c.Profile(26))),
        ];
    }
}
