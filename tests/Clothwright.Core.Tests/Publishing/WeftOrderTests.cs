using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Publishing.Composing;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Tests.Publishing;

public class WeftOrderTests
{
    [Fact]
    public void Pattern_and_ground_picks_take_their_wefts_by_turns()
    {
        var draft = new Draft
        {
            Shafts = 4,
            Threading = [ShaftSet.Of(1), ShaftSet.Of(2), ShaftSet.Of(3), ShaftSet.Of(4)],
            TieUp = [ShaftSet.Of(1, 3), ShaftSet.Of(2, 4), ShaftSet.Of(1, 2), ShaftSet.Of(3, 4)],
            Treadling = [ShaftSet.Of(1), ShaftSet.Of(3), ShaftSet.Of(2), ShaftSet.Of(4)],
        };
        PlanResult plan = Plans.Scarves(w => w with
        {
            Weave = new WeaveDecision.Drawn(draft) { PatternPicks = PatternPicks.Even },
            Pieces = Plans.Only(Plans.Scarf("scarf", "tide"), p => p with { PatternWeft = [new WeftRun("marsh", 1), new WeftRun("tide", 2)] }),
        });
        ImmutableArray<WeftRun> picks = WeftOrder.Picks(plan, plan.Pieces[0].Piece);

        // Two pattern picks a round, three in their order: all begin again together after three rounds of four picks.
        Assert.Equal(
            ["tide", "marsh", "tide", "tide", "tide", "tide", "tide", "marsh", "tide", "tide", "tide", "tide"],
            picks.Select(p => p.YarnId));
        Assert.Equal(
            ["Ground weft: 8/2 bamboo, tide blue.", "Pattern weft: 1 pick of 8/2 bamboo, saltmarsh; 2 picks of 8/2 bamboo, tide blue; over and over."],
            WeftOrder.Lines(plan, plan.Pieces[0].Piece));
    }
}
