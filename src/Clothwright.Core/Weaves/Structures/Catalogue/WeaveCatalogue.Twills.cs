using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> Twills() =>
    [
        new("twill", "twills", "The same figures on every pick, moved on by one end.", ["straight twill", "twill weave"],
            [Figures("2/2"), WeaveParameter.Choice("hand", "which way the line runs as picks go up: Z to the right, S to the left", "Z", "S")],
            c => Twill.Of(c.Twill("base"), c.Choice("hand") == "S" ? TwillHand.S : TwillHand.Z)),
        new("pointed twill", "twills", "Drawn up and down again; zigzags run across the cloth.", ["point twill", "chevron twill", "zigzag twill"], [Figures("2/2")],
            c => PointedTwill.Of(c.Twill("base"))),
        new("broken twill", "twills", "The second half of each run is drawn backwards, so that no line forms.", ["false satin", "turned broken twill"], [Figures("2/2")],
            c => BrokenTwill.Of(c.Twill("base")))
        { ImpliedBy = name => name == "false satin" ? ("base", "1/3") : null },
        new("advancing twill", "twills", "Short runs, each starting a little further on.", ["advancing points"],
            [
                Figures("2/2"),
                WeaveParameter.Number("run", "ends in a run", 4, 2, ShaftSet.Highest),
                WeaveParameter.Number("advance", "shafts by which each run starts further on", 1, 1, ShaftSet.Highest - 1),
                WeaveParameter.Choice("form", "whether each run is a line or a point", "line", "point"),
                WeaveParameter.Choice("treadling", "whether treadled straight or in the order of the threading", "straight", "as drawn in"),
            ],
            c => AdvancingTwill.Of(c.Twill("base"), c.Number("run"), c.Number("advance"), c.Choice("form") == "point", c.Choice("treadling") == "as drawn in"))
        { ImpliedBy = name => name == "advancing points" ? ("form", "point") : null },
        new("diamond twill", "twills", "Threading and treadling both pointed; diamonds.", ["diamond", "diamonds"], [Figures("2/2")],
            c => DiamondTwill.Of(c.Twill("base"))),
        new("birdseye twill", "twills", "The smallest diamonds, each with a dot.", ["birdseye", "bird's-eye", "bird's eye", "bird's-eye twill", "bird's eye twill"], [Figures("2/2")],
            c => DiamondTwill.Birdseye(c.Twill("base"))),
        new("rosepath", "twills", "Point one end beyond the last shaft, treadled as drawn in.", ["rosepath twill", "rose path"], [Figures("2/2")],
            c => DiamondTwill.Rosepath(c.Twill("base"))),
        new("goose-eye", "twills", "Several runs between the points: diamond within diamond.", ["goose-eye twill", "goose eye", "goose eye twill"],
            [Figures("2/2"), WeaveParameter.Number("runs", "runs of all shafts between the points", 2, 1, 16)],
            c => DiamondTwill.GooseEye(c.Twill("base"), c.Number("runs"))),
    ];

    private static WeaveParameter Figures(string preset) =>
        new("base", "ends up and down by turns, warp first", WeaveParameterKind.Figures, preset);
}
