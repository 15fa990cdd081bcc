using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

public static partial class WeaveCatalogue
{
    private static ImmutableArray<WeaveEntry> BrokenTwills() =>
    [
        new("broken twill", "twills", "The second half of each run is drawn backwards, so that no line forms.", ["false satin"], [Figures("2/2")],
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
        new("herringbone", "twills", "Runs up and down with a clean break, so that no float grows.", ["herringbone twill", "broken herringbone"],
            [Figures("2/2"), WeaveParameter.Number("runs", "runs of all shafts on each side", 2, 1, 16)],
            c => Herringbone.Of(c.Twill("base"), c.Number("runs"))),
        new("dornik", "twills", "The smallest herringbone: one run a side, broken cleanly.", ["dornik twill", "dornick", "dornick twill"],
            [Figures("2/2"), WeaveParameter.Number("runs", "runs of all shafts on each side", 1, 1, 16)],
            c => Herringbone.Of(c.Twill("base"), c.Number("runs"))),
        new("skip twill", "twills", "Draw some, miss some; each restart opposes its neighbour.", ["skip draw"],
            [
                Figures("3/3"),
                WeaveParameter.Number("draw", "ends drawn in turn", 3, 1, ShaftSet.Highest),
                WeaveParameter.Number("miss", "shafts missed, half the shafts less one if not given", null, 1, ShaftSet.Highest),
            ],
            c => SkipTwill.Of(c.Twill("base"), c.Number("draw"), c.NumberOrNone("miss"))),
        new("undulating twill", "twills", "Shafts repeated here and single there, so that the line flattens and steepens.", ["curved twill", "waved twill"],
            [Figures("2/2"), WeaveParameter.Numbers("ends", "ends on each shaft in turn, 0 to skip one", "2 2 2 2 1 1 1 1", 0, 8)],
            c => UndulatingTwill.Of(c.Twill("base"), c.Numbers("ends"))),
    ];
}
