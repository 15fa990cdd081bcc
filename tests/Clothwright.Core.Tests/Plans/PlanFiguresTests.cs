using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Tests.Yarns;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Plans;

public class PlanFiguresTests
{
    private static readonly PlanResult Plan = EstuaryWarps.OneScarf.Planned();

    [Theory]
    [InlineData("ends")]
    [InlineData("endsPerCentimetre")]
    [InlineData("reedWidth")]
    [InlineData("warpLength")]
    [InlineData("warpTakeUp")]
    [InlineData("picks")]
    [InlineData("gramsPerSquareMetre")]
    [InlineData("hours")]
    [InlineData("pieces[0].finishedWidth")]
    [InlineData("yarns[foam].grams")]
    [InlineData("YARNS[FOAM].GRAMS")]
    public void A_figure_is_found_by_its_name(string name)
    {
        Figure figure = Plan.Figures.Find(name).Value;
        Assert.Equal(name, figure.Name, ignoreCase: true);
        Assert.NotEmpty(figure.Value.Working.Rule.Formula);
    }

    [Fact]
    public void An_unknown_figure_is_refused_with_the_nearest_name()
    {
        InputProblem problem = Plan.Figures.Find("warpLenght").Problem!;
        Assert.Contains("warpLength", problem.Mend, StringComparison.Ordinal);
        Assert.Contains("warpLenght", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_number_behind_a_figure_has_a_rule_and_a_source()
    {
        var seen = new HashSet<Working>();
        foreach (Figure figure in Plan.Figures.All) Walk(figure.Value.Working);
        Assert.True(seen.Count > 50);

        void Walk(Working working)
        {
            if (!seen.Add(working)) return;
            Assert.NotEmpty(working.Label);
            Assert.NotEmpty(working.Rule.Formula);
            Assert.NotEmpty(working.Rule.Source.Name);
            foreach (Working input in working.Inputs) Walk(input);
        }
    }

    [Fact]
    public void What_the_weaver_measured_takes_the_place_of_the_rules()
    {
        var known = new Allowances
        {
            WarpTakeUp = Ratio.FromPercent(12),
            DrawIn = Ratio.FromPercent(9),
            ShrinkageInLength = Ratio.FromPercent(13),
            ShrinkageInWidth = Ratio.FromPercent(11),
            WeftWaste = Ratio.Zero,
            LoomWaste = Length.FromCentimetres(45),
        };
        PlanResult plan = (EstuaryWarps.OneScarf with { Allowances = known }).Planned();
        PiecePlan scarf = plan.Pieces[0];
        Assert.Equal(1.80 / 0.87 / 0.88, scarf.WovenWarp.Value.Metres, 1e-9);
        Assert.Equal(SourceKind.Measured, scarf.DrawIn.Working.Rule.Source.Kind);
        Assert.Equal(0.20 / 0.89 / 0.91, scarf.WantedReedWidth.Value.Metres, 1e-9);
        Assert.Equal(0.45, plan.Sections[^1].Warp.Value.Metres, 1e-9);
        Assert.Equal(0, scarf.Weft[0].Waste.Value.Metres);
    }

    [Fact]
    public void Own_rates_take_the_place_of_the_customary_ones()
    {
        var rates = new WorkRates { WarpWoundPerHour = Length.FromMetres(500), EndsThreadedPerHour = 100, EndsSleyedPerHour = 200, PicksPerMinute = 10 };
        PlanResult plan = (EstuaryWarps.OneScarf with { Rates = rates }).Planned();
        Assert.Equal(plan.Picks.Value.Count / 600.0, plan.Work.Steps.Single(s => s.Working.Label == "weaving").Value.Hours, 1e-9);
        Assert.Equal(plan.Ends.Total.Value.Count / 100.0, plan.Work.Steps.Single(s => s.Working.Label == "threading").Value.Hours, 1e-9);
        Assert.True(plan.Work.Total.Upper95 < EstuaryWarps.OneScarf.Planned().Work.Total.Upper95 * 2);
    }

    [Fact]
    public void Packages_and_price_follow_the_upper_figure()
    {
        Yarn foam = EstuaryWarps.Foam with { Offer = new YarnOffer(PackageForm.Cone, Mass.FromGrams(100), Money.FromAmount(8)) };
        PlanResult plan = (EstuaryWarps.OneScarf with { Shelf = [foam] }).Planned();
        YarnNeed need = plan.Yarns[0];
        int packages = (int)Math.Ceiling(need.Mass.Upper95.Grams / 100);
        Assert.Equal(packages, need.Buy!.Value.Count);
        Assert.Equal(packages * 8, need.Purchase!.Value.Amount, 1e-9);
        Assert.Equal(need.Mass.Value.Grams / 100 * 8, plan.Cost!.Value.Amount, 1e-9);
        Assert.Equal(packages * 8, plan.Purchase!.Value.Amount, 1e-9);
        Assert.Empty(need.Open);
    }

    [Fact]
    public void A_tube_goes_round_and_double_width_opens()
    {
        PlanRequest sound = EstuaryWarps.OneScarf with { Weave = EstuaryWarps.Weave("plain") };
        PlanResult flat = sound.Planned();
        PlanResult tube = sound.With(EstuaryWarps.Scarf with { Make = PieceMake.Tube }).Planned();
        PlanResult wide = sound.With(EstuaryWarps.Scarf with { Make = PieceMake.DoubleWidth }).Planned();
        Assert.InRange(tube.Ends.Total.Value.Count / (double)flat.Ends.Total.Value.Count, 1.9, 2.1);
        Assert.InRange(wide.Ends.Total.Value.Count / (double)flat.Ends.Total.Value.Count, 0.95, 1.05);
        Assert.InRange(wide.ReedWidth.Value / flat.ReedWidth.Value, 0.45, 0.55);
        Assert.Equal(0.20, wide.Pieces[0].FinishedWidth.Value.Metres, 0.01);
        Assert.Equal(0.20, tube.Pieces[0].FinishedWidth.Value.Metres, 0.01);
        Assert.InRange(tube.Sett.Value.PerInch / flat.Sett.Value.PerInch, 1.95, 2.05); // each as its own sley gives it
    }

    [Fact]
    public void Idle_ends_beside_a_narrow_piece_are_wasted()
    {
        PlanResult plan = (EstuaryWarps.OneScarf with { Pieces = [EstuaryWarps.Scarf, EstuaryWarps.Scarf with { Width = Length.FromCentimetres(12) }] }).Planned();
        Assert.True(plan.Pieces[1].Ends.Value < plan.Pieces[0].Ends.Value);
        Assert.Equal(0.12, plan.Pieces[1].FinishedWidth.Value.Metres, 0.006);
        Assert.Equal(plan.Yarns[0].Mass.Value.Grams, plan.Yarns[0].InPieces.Value.Grams + plan.Yarns[0].Waste.Value.Grams, 1e-6);
        Assert.True(plan.Yarns[0].Waste.Value > EstuaryWarps.OneScarf.Planned().Yarns[0].Waste.Value);
    }
}
