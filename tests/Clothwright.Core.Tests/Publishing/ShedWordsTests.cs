using Clothwright.Core.Plans;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Publishing.Composing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Tests.Publishing;

public class ShedWordsTests
{
    private static HandoutStep Step(PlanResult plan, string title) => HandoutComposer.Compose(plan).Sections
        .SelectMany(s => s.Blocks).OfType<StepsBlock>().Single().Steps.Single(s => s.Title.StartsWith(title, StringComparison.Ordinal));

    [Fact]
    public void A_table_loom_is_told_the_shafts_to_raise()
    {
        PlanResult plan = Plans.Scarves();

        Assert.Contains("One repeat from the left, by shafts: 1 2 3 4.", Step(plan, "Thread").Details);
        Assert.Contains("Shafts to raise from the first pick: 1+2, 2+3, 3+4, 1+4, over and over.", Step(plan, "Weave: first scarf").Details);
    }

    [Fact]
    public void A_treadle_loom_is_told_the_treadles() =>
        Assert.Contains("Treadles from the first pick: 1 2 3 4, over and over.", Step(Plans.Scarves(w => w with { LoomId = "floor" }), "Weave: first scarf").Details);

    [Fact]
    public void Two_rigid_heddles_are_told_where_they_are_held()
    {
        PlanResult plan = Plans.Scarves(w => w with { LoomId = "rigid", Weave = new WeaveDecision.Named("2/1 twill"), Sett = Sett.FromPerInch(10) });
        HandoutStep weave = Step(plan, "Weave: first scarf");

        Assert.Contains("One repeat from the left: an eye of heddle 1, an eye of heddle 2 and slots of both.", Step(plan, "Thread the heddle").Details);
        string sheds = Assert.Single(weave.Details, d => d.StartsWith("Sheds from the first pick: ", StringComparison.Ordinal));
        Assert.Equal(3, sheds.Split("; ").Count(s => s.Contains("heddle", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_weave_of_very_many_picks_is_left_to_the_draft()
    {
        PlanResult plan = Plans.Scarves();
        PlanResult longer = plan with { LoomDraft = plan.LoomDraft with { TieUp = [], Treadling = [], LiftPlan = [.. Enumerable.Range(0, 41).Select(i => plan.LoomDraft.Lift(i % 4))] } };

        Assert.Null(ShedWords.Picks(longer));
    }
}
