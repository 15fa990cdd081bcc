using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> ColourEffects() =>
    [
        new("shadow weave", "colour and weave", "Dark and light by turns both ways, each light thread opposite its neighbour.", ["shadow"],
            [
                WeaveParameter.Number("shafts", "shafts, an even number", 4, 4, ShaftSet.Highest),
                WeaveParameter.Choice("numbering", "how the shafts are numbered; the cloth is the same", "opposite", "neighbouring"),
            ],
            c => ShadowWeave.Of(c.Number("shafts"), c.Choice("numbering") == "neighbouring")),
        new("log cabin", "colour and weave", "Plain weave in dark and light; stripes across in one block, along in the next.", ["logcabin"],
            [WeaveParameter.Number("block", "threads in a block", 4, 2, 200)],
            c => LogCabin.Of(c.Number("block"))),
        new("dogtooth", "colour and weave", "2/2 twill, four dark and four light both ways.", ["houndstooth", "hound's tooth", "dog's tooth"], [],
            c => Effect("dogtooth", "2/2", "4A 4B", "4A 4B")),
        new("shepherd's check", "colour and weave", "2/2 twill, six dark and six light both ways.", ["shepherd check"], [],
            c => Effect("shepherd's check", "2/2", "6A 6B", "6A 6B")),
        new("hairline", "colour and weave", "Plain weave, dark and light by turns: fine stripes.", ["hairline stripes", "hairline stripe"],
            [WeaveParameter.Choice("stripes", "which way the stripes run", "along", "across")],
            c => Effect("hairline", "1/1", "A B", c.Choice("stripes") == "along" ? "B A" : "A B")),
        new("colour and weave", "colour and weave", "Any twill in any order of colours.", ["colour-and-weave", "color and weave"],
            [
                Figures("2/2"),
                new WeaveParameter("warp", "order of the ends", WeaveParameterKind.Order, "2A 2B"),
                new WeaveParameter("weft", "order of the picks", WeaveParameterKind.Order, "2A 2B"),
            ],
            c => ColourAndWeave.Of("colour and weave", Twill.Of(c.Twill("base")), c.Order("warp"), c.Order("weft"))),
    ];

    private static Weave Effect(string name, string figures, string warp, string weft) =>
        ColourAndWeave.Of(name, Twill.Of(TwillBase.Parse(figures).Value), ThreadOrder.Parse(warp).Value, ThreadOrder.Parse(weft).Value);
}
