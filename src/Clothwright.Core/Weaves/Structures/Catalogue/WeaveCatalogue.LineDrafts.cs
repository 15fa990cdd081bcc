using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> LineDrafts() =>
    [
        new("network draft", "drawn lines", "A curve drawn on many shafts, laid on the net of a small threading.", ["network", "network drafting", "networked twill"],
            [
                Figures("3/1/1/3"),
                WeaveParameter.Numbers("initial", "rows of the small threading, from 1", "1 2 3 4", 1, ShaftSet.Highest),
                WeaveParameter.Numbers("line", "height of the line at each end, from 1", "1 1 2 2 3 4 5 6 7 8 8 9 9 9 9 8 8 7 6 5 4 3 2 2", 1, 1000),
                WeaveParameter.Choice("treadling", "whether treadled straight or along the line", "straight", "as drawn in"),
            ],
            c => NetworkDraft.Of(c.Numbers("initial"), c.Numbers("line"), c.Twill("base"), c.Choice("treadling") == "as drawn in")),
        new("name draft", "drawn lines", "The letters of a name as an overshot threading.", ["name drafting"],
            [
                new WeaveParameter("name", "a name or a sentence", WeaveParameterKind.Words, "MARSH"),
                WeaveParameter.Choice("mirrored", "whether it runs back again for a balanced figure", "yes", "no"),
            ],
            c => NameDraft.Of(c.Words("name"), c.Yes("mirrored"))),
    ];
}
