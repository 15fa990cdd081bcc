using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using static Clothwright.Interchange.Tests.Samples.SampleArithmetic;

namespace Clothwright.Interchange.Tests.Samples;

// Each sample is reckoned again by hand: the rates (take-up, draw-in, shrinkage, picks per length) are taken from the plan, all that
// follows from them is worked out in plain arithmetic. Tolerances: rounding of what is written out, unless a reason stands beside.
public class SamplePlanTests
{
    private const double Rounding = 1e-6;

    [Fact]
    public void Two_reedbed_scarves_by_hand()
    {
        PlanResult plan = SamplePlans.Of("reedbed-scarves");
        PiecePlan reed = plan.Pieces[0];
        PiecePlan dusk = plan.Pieces[1];

        // 10-dent reed, two ends a dent: 20 to the inch. 47 repeats of 4 and two floating selvedges.
        Assert.Equal(20, plan.Sett.Value.PerInch, 1e-9);
        Assert.Equal(47 * 4 + 2, plan.Ends.Total.Value.Count);
        Assert.Equal(190 / 20.0 * 2.54, plan.ReedWidth.Value.Centimetres, Rounding);

        double s = reed.ShrinkageInLength.Value.Value;
        double t = reed.WarpTakeUp.Value.Value;
        double warp = 0.04 + 0.15 / (1 - t) + 0.03 + 2 * (WarpFor(1.80, s, t) + TwistedFringes(0.12)) + 0.03 + 0.60;
        Assert.Equal(warp, plan.WarpLength.Value.Metres, 1e-3); // the second scarf's take-up differs in the fourth digit

        // 8/2 by the cotton count: 590.54 / 8 × 2 = 147.64 tex.
        YarnNeed blue = plan.Yarn("tide-blue");
        Assert.Equal(190 * plan.WarpLength.Value.Metres, blue.Warp.Value.Metres, Rounding);
        Assert.Equal(blue.Warp.Value.Metres * 147.635 / 1000, blue.Mass.Value.Grams, 0.01);

        double picks = Math.Ceiling(reed.GroundPicks.Value.PerCentimetre * 180 / (1 - s));
        Assert.Equal(picks, reed.Picks.Value.Count);
        double weft = WeftFor(picks, plan.ReedWidth.Value.Metres, reed.DrawIn.Value.Value, reed.WeftTakeUp.Value.Value);
        double sample = WeftFor(Math.Ceiling(reed.GroundPicks.Value.PerCentimetre * 15), plan.ReedWidth.Value.Metres, reed.DrawIn.Value.Value, reed.WeftTakeUp.Value.Value);
        Assert.Equal((weft + sample) * 1.04, plan.Yarn("saltmarsh").Weft.Value.Metres, 1e-3);
        Assert.Equal(plan.Yarn("dusk").Weft.Value.Metres, WeftFor(dusk.Picks.Value.Count, plan.ReedWidth.Value.Metres, dusk.DrawIn.Value.Value, dusk.WeftTakeUp.Value.Value) * 1.04, 1e-3);
        Assert.Equal(plan.Yarns.Sum(y => y.Mass.Value.Grams), plan.Mass.Value.Grams, Rounding);
    }

    [Fact]
    public void The_sandbar_scarf_by_hand()
    {
        PlanResult plan = SamplePlans.Of("sandbar-silk-scarf");
        PiecePlan scarf = plan.Pieces[0];
        Assert.Equal(40, plan.Sett.Value.PerInch, 1e-9);

        // Point draw of 6 ends, one end balances it; two floating selvedges.
        Assert.Equal(plan.Ends.Repeats * 6 + 1 + 2, plan.Ends.Total.Value.Count);
        double s = scarf.ShrinkageInLength.Value.Value;
        double t = scarf.WarpTakeUp.Value.Value;

        // Countermarche floor loom: middle of 80 to 110 cm of waste.
        Assert.Equal(0.04 + 0.12 / (1 - t) + 0.03 + WarpFor(1.75, s, t) + TwistedFringes(0.10) + 0.95, plan.WarpLength.Value.Metres, Rounding);

        // Two strands in a pick double the weft; 60/2 metric is 2 × 1000 / 60 = 33.33 tex.
        double across = scarf.Picks.Value.Count + Math.Ceiling(scarf.GroundPicks.Value.PerCentimetre * 12);
        YarnNeed weft = plan.Yarn("ebb-grey");
        Assert.Equal(2 * WeftFor(across, plan.ReedWidth.Value.Metres, scarf.DrawIn.Value.Value, scarf.WeftTakeUp.Value.Value) * 1.04, weft.Weft.Value.Metres, 1e-3);
        Assert.Equal(weft.Total.Value.Metres / 30, weft.Mass.Value.Grams, 1e-3);
        Assert.Equal(weft.Mass.Value.Grams / 100 * 21.50, weft.Cost!.Value.Amount, 1e-3);
    }

    [Fact]
    public void The_heron_shawl_by_hand()
    {
        PlanResult plan = SamplePlans.Of("heron-shawl");
        PiecePlan shawl = plan.Pieces[0];

        // Three groups of ends take two heddles; one end in each space of a 7.5-dent heddle.
        Assert.Equal(7.5, plan.Sett.Value.PerInch, 1e-9);
        Assert.Equal(plan.Ends.Repeats * 3 + 2, plan.Ends.Total.Value.Count);
        double s = shawl.ShrinkageInLength.Value.Value;
        double t = shawl.WarpTakeUp.Value.Value;

        // Knotted fringe: finished length and 3 cm of knot, twice; rigid heddle loom: 50 cm of waste.
        Assert.Equal(0.04 + WarpFor(1.80, s, t) + 2 * (0.14 + 0.03) + 0.50, plan.WarpLength.Value.Metres, Rounding);

        // 225 m in 100 g: 444.4 tex. Twelve grey ends and three dark over 183 ends: 12 times 15 and 3 more grey, grey outside.
        YarnNeed dark = plan.Yarn("rain-cloud");
        Assert.Equal(12 * 3, dark.Ends.Value.Count);
        Assert.Equal(36 * plan.WarpLength.Value.Metres * 100 / 225, dark.Mass.Value.Grams, 1e-3);
    }

    [Fact]
    public void The_slack_water_blanket_by_hand()
    {
        PlanResult plan = SamplePlans.Of("slack-water-blanket");
        PiecePlan blanket = plan.Pieces[0];

        // Two 10-dent heddles: 20 to the inch, 10 in each layer; the blanket is woven at half its width.
        Assert.Equal(20, plan.Sett.Value.PerInch, 1e-9);
        Assert.Equal("2 × 10-dent", plan.Reed!.Name);
        Assert.DoesNotContain(plan.Warnings, w => w.Id is "sett-open" or "sett-close" or "sett-too-close");
        Assert.Equal(plan.Ends.Total.Value.Count / 20.0, plan.ReedWidth.Value.Inches, Rounding);
        double layer = plan.ReedWidth.Value.Metres * (1 - blanket.DrawIn.Value.Value) * (1 - blanket.ShrinkageInWidth.Value.Value);
        Assert.Equal(2 * layer, blanket.FinishedWidth.Value.Metres, Rounding);
        Assert.Equal(1.20, blanket.FinishedWidth.Value.Metres, 0.012); // half a repeat of ends at most

        double s = blanket.ShrinkageInLength.Value.Value;
        Assert.Equal(2 * Math.Ceiling(blanket.GroundPicks.Value.PerCentimetre * 150 / (1 - s)), blanket.Picks.Value.Count);
        double warp = 0.06 + WarpFor(1.50, s, blanket.WarpTakeUp.Value.Value) + TwistedFringes(0.08) + 0.55;
        Assert.Equal(warp, plan.WarpLength.Value.Metres, Rounding);
        Assert.Equal(plan.Ends.Total.Value.Count * warp / 4, plan.Yarn("slack-water").Mass.Value.Grams, 1e-3); // 400 m in 100 g
        Assert.Equal(4, plan.LoomDraft.Shafts);
    }

    [Fact]
    public void The_saltings_throw_by_hand()
    {
        PlanResult plan = SamplePlans.Of("saltings-throw");
        PiecePlan piece = plan.Pieces[0];
        Assert.Equal(30, plan.Sett.Value.PerInch, 1e-9);

        // 16 ends a repeat and four selvedge ends at each side; every tabby pick has its pattern pick.
        Assert.Equal(plan.Ends.Repeats * 16 + 8, plan.Ends.Total.Value.Count);
        double ground = Math.Ceiling(piece.GroundPicks.Value.PerCentimetre * 150 / (1 - piece.ShrinkageInLength.Value.Value));
        Assert.Equal(2 * ground, piece.Picks.Value.Count);
        double sample = Math.Ceiling(piece.GroundPicks.Value.PerCentimetre * 20);
        double across = WeftFor(ground + sample, plan.ReedWidth.Value.Metres, piece.DrawIn.Value.Value, piece.WeftTakeUp.Value.Value) * 1.04;
        Assert.Equal(across, plan.Yarn("samphire").Weft.Value.Metres, 0.01);
        Assert.Equal(across, plan.Yarn("bleached-shell").Weft.Value.Metres, 0.01);

        // 2/17 metric: 2 × 1000 / 17 = 117.65 tex against 41.67 of 2/48.
        Assert.Equal(across * 117.647 / 1000, plan.Yarn("samphire").Mass.Value.Grams, 0.01);
    }

    [Fact]
    public void The_boathouse_towels_by_hand()
    {
        PlanResult plan = SamplePlans.Of("boathouse-towels");
        PiecePlan towel = plan.Pieces[0];
        double s = towel.ShrinkageInLength.Value.Value;
        double t = towel.WarpTakeUp.Value.Value;

        // 26 in and two hems of 1 in; four towels with three gaps of half an inch, one more behind the sample; 32 in of waste.
        double inches = 5 / 2.54 + 6 / (1 - t) + 0.5 + 4 * WarpFor(28, s, t) + 3 * 0.5 + 32;
        Assert.Equal(inches, plan.WarpLength.Value.Inches, Rounding);
        Assert.Equal(4 * towel.Picks.Value.Count, plan.Picks.Value.Count);
        Assert.Equal(plan.Ends.Total.Value.Count, plan.Yarns.Sum(y => y.Ends.Value.Count));
    }

    [Fact]
    public void The_ferry_scarf_by_hand()
    {
        PlanResult plan = SamplePlans.Of("ferry-clasped-scarf");
        PiecePlan scarf = plan.Pieces[0];
        double across = WeftFor(scarf.Picks.Value.Count, plan.ReedWidth.Value.Metres, scarf.DrawIn.Value.Value, scarf.WeftTakeUp.Value.Value) * 1.04;

        // Each yarn turns back round the other: twice its share of the width.
        Assert.Equal(2 * 0.45 * across, plan.Yarn("lamplight").Weft.Value.Metres, 1e-3);
        Assert.Equal(2 * 0.55 * across, plan.Yarn("deep-channel").Weft.Value.Metres, 1e-3);
        Assert.Contains(plan.Warnings, w => w.Id == "clasped-weft");
    }

    [Fact]
    public void The_spring_tide_cowls_are_joined_and_short_of_yarn()
    {
        PlanResult plan = SamplePlans.Of("spring-tide-cowl");
        Assert.Equal(0.73, plan.Pieces[0].ClothLength.Value.Metres, Rounding); // 70 cm round and 1.5 cm of seam at each end
        Assert.Contains(plan.Warnings, w => w.Id == "yarn-short");
        Assert.Null(plan.Cost);
    }

    // Weights and lengths a weaver would believe: common practice, no source.
    [Theory]
    [InlineData("reedbed-scarves", 200, 360, 8, 20)]
    [InlineData("sandbar-silk-scarf", 60, 130, 6, 18)]
    [InlineData("heron-shawl", 350, 700, 5, 14)]
    [InlineData("slack-water-blanket", 450, 900, 9, 24)]
    [InlineData("saltings-throw", 350, 800, 16, 45)]
    [InlineData("boathouse-towels", 380, 650, 12, 28)]
    [InlineData("ferry-clasped-scarf", 120, 240, 4, 12)]
    [InlineData("spring-tide-cowl", 140, 280, 5, 14)]
    public void A_sample_weighs_and_takes_what_a_weaver_expects(string name, double least, double most, double leastHours, double mostHours)
    {
        PlanResult plan = SamplePlans.Of(name);
        Assert.InRange(plan.Mass.Value.Grams, least, most);
        Assert.InRange(plan.Work.Total.Value.Hours, leastHours, mostHours);
        Assert.True(plan.Mass.Upper95 > plan.Mass.Value);
        Assert.True(plan.WarpLength.Upper95 > plan.WarpLength.Value);
        Assert.InRange(plan.WarpTakeUp.Value.Value, 0.01, 0.15);
        Assert.InRange(plan.WeftTakeUp.Value.Value, 0.01, 0.20);
    }

    [Theory]
    [InlineData("reedbed-scarves")]
    [InlineData("saltings-throw")]
    [InlineData("slack-water-blanket")]
    [InlineData("spring-tide-cowl")]
    [InlineData("ferry-clasped-scarf")]
    public void No_yarn_is_lost_between_pieces_and_waste(string name)
    {
        PlanResult plan = SamplePlans.Of(name);
        foreach (YarnNeed yarn in plan.Yarns)
        {
            Assert.Equal(yarn.Mass.Value.Grams, yarn.InPieces.Value.Grams + yarn.Waste.Value.Grams, Rounding);
        }
    }
}
