using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Tests.Weaves;

public class DraftCheckTests
{
    private static readonly Draft Twill = DraftNotation.Parse("1234 | 1:12 2:23 3:34 4:14 | 1234").Value;

    [Fact]
    public void A_draft_that_can_be_woven_has_no_problems()
    {
        Assert.Empty(DraftCheck.Problems(Twill));
        Assert.Same(Twill, DraftCheck.Checked(Twill).Value);
    }

    [Fact]
    public void A_shaft_beyond_the_count_is_named_with_its_end_and_the_mend()
    {
        InputProblem problem = Assert.Single(DraftCheck.Problems(Twill with { Threading = [ShaftSet.Of(1), ShaftSet.Of(6), ShaftSet.Of(5)] }));

        Assert.Equal("End 2 uses shaft 6, but there are 4 shafts (1 more like it).", problem.What);
        Assert.Equal("threading, end 2", problem.Where);
        Assert.Contains("give the draft 6 shafts", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Ties_treadles_and_lifts_beyond_the_count_are_named()
    {
        Assert.Equal("tie-up, treadle 1", Only(Twill with { TieUp = [ShaftSet.Of(5), .. Twill.TieUp[1..]] }).Where);
        Assert.Equal("treadling, pick 1", Only(Twill with { Treadling = [ShaftSet.Of(5), .. Twill.Treadling[1..]] }).Where);
        Assert.Equal("lift plan, pick 2", Only(Twill.AsLiftPlan() with { LiftPlan = [ShaftSet.Of(1), ShaftSet.Of(9)] }).Where);
    }

    [Fact]
    public void A_lift_plan_of_another_length_than_the_treadling_is_refused() =>
        Assert.Contains("3 picks, the treadling 4", Only(Twill with { LiftPlan = [ShaftSet.Of(1), ShaftSet.Of(2), ShaftSet.Of(3)] }).What, StringComparison.Ordinal);

    [Fact]
    public void Nothing_threaded_nothing_treadled_and_no_shafts_are_each_said()
    {
        string[] places = [.. DraftCheck.Problems(new Draft { Shafts = 0, Threading = [] }).Select(p => p.Where)];

        Assert.Equal(["shafts", "threading", "treadling"], places);
    }

    [Fact]
    public void Lists_left_at_their_default_are_taken_as_empty() =>
        Assert.Equal(2, DraftCheck.Problems(new Draft { Shafts = 4, Threading = default, TieUp = default, Treadling = default, LiftPlan = default }).Length);

    [Fact]
    public void A_draft_beyond_all_looms_is_refused()
    {
        Assert.Equal("threading", Only(Twill.Repeated(DraftLimits.Ends + 1, 4)).Where);
        Assert.Equal("treadling", Only(Twill.Repeated(4, DraftLimits.Picks + 1)).Where);
        Assert.Equal("draft", Only(Twill.Repeated(DraftLimits.Ends, 50_000)).Where);
        Assert.Contains(DraftCheck.Problems(Twill with { TieUp = [.. Enumerable.Repeat(ShaftSet.Of(1), 65)] }), p => p.Where == "tie-up");
    }

    private static InputProblem Only(Draft draft) => Assert.Single(DraftCheck.Problems(draft));
}
