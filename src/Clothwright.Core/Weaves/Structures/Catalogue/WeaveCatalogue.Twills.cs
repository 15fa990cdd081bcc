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
        new("diamond twill", "twills", "Threading and treadling both pointed; diamonds.", ["diamond", "diamonds"], [Figures("2/2")],
            c => DiamondTwill.Of(c.Twill("base"))),
        new("birdseye twill", "twills", "The smallest diamonds, each with a dot.", ["birdseye", "bird's-eye", "bird's eye", "bird's-eye twill", "bird's eye twill"], [Figures("2/2")],
            c => DiamondTwill.Birdseye(c.Twill("base"))),
        new("rosepath", "twills", "Point one end beyond the last shaft, treadled as drawn in.", ["rosepath twill", "rose path"], [Figures("2/2")],
            c => DiamondTwill.Rosepath(c.Twill("base"))),
        new("goose-eye", "twills", "Several runs between the points: diamond within diamond.", ["goose-eye twill", "goose eye", "goose eye twill"],
            [Figures("2/2"), WeaveParameter.Number("runs", "runs of all shafts between the points", 2, 1, 16)],
            c => DiamondTwill.GooseEye(c.Twill("base"), c.Number("runs"))),
        new("honeycomb", "twills", "Cells with raised ridges and hollow middles; thick and soft.", ["waffle", "waffle weave", "honeycomb weave"],
            [WeaveParameter.Number("shafts", "shafts, one more than half the threads of a cell", 5, 4, 32)],
            c => Honeycomb.Of(c.Number("shafts"))),
    ];

    private static WeaveParameter Figures(string preset) =>
        new("base", "ends up and down by turns, warp first", WeaveParameterKind.Figures, preset);
}
