using Clothwright.Core.Colours;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Worksheets;

public class WorksheetRequestTests
{
    private static readonly YarnEntry Foam = new()
    {
        Id = "foam",
        Name = "foam",
        Count = "8/2",
        CountSystem = "cotton",
        Fibres = [new FibreEntry("cotton", Ratio.FromPercent(100))],
        Colour = new SrgbColour(230, 230, 220),
    };

    private static readonly Worksheet Sheet = new()
    {
        Title = "Towel",
        Looms = [new LoomEntry { Id = "floor-4", Name = "floor loom", Kind = LoomKind.Floor, WeavingWidth = Length.FromCentimetres(90), Shafts = 4, Treadles = 6, Shed = ShedAction.Rising }],
        Reeds = [new Reed("10-dent", Sett.FromPerInch(10))],
        Shelf = [Foam],
        LoomId = "floor-4",
        Weave = new WeaveDecision.Named("plain"),
        Warp = WarpOrder.Of("foam"),
        Pieces = [new PieceEntry(new Piece { Name = "towel", Width = Length.FromCentimetres(45), Length = Length.FromCentimetres(70), Weft = [new WeftRun("foam", 1)] })],
    };

    [Fact]
    public void A_worksheet_is_planned() => Assert.True(Sheet.Plan().Value.Ends.Total.Value.Count > 300);

    // 8/2 cotton 147.64 tex by the count rule; 400 m in 100 g is 250 tex by division.
    [Theory]
    [InlineData("8/2", "cotton", null, 147.64)]
    [InlineData(null, null, "400 m / 100 g", 250)]
    [InlineData("Nm 28/2", null, null, 71.43)]
    public void A_yarn_is_as_fine_as_count_or_label_say(string? count, string? system, string? label, double tex) =>
        Assert.Equal(tex, (Foam with { Count = count, CountSystem = system, Label = label }).ToYarn().Value.LinearDensity.Value.Tex, 0.01);

    [Fact]
    public void Fineness_wraps_and_blend_are_carried_over()
    {
        Yarn yarn = (Foam with
        {
            Count = null,
            LinearDensity = LinearDensity.FromTex(99),
            Wraps = Sett.FromPerInch(30),
            Fibres = [new FibreEntry("merino", Ratio.FromPercent(70)), new FibreEntry("silk-spun", Ratio.FromPercent(30))],
        }).ToYarn().Value;
        Assert.Equal(99, yarn.LinearDensity.Value.Tex);
        Assert.Equal(30, yarn.MeasuredWraps!.Value.PerInch, 1e-9);
        Assert.Equal(2, yarn.Fibres.Shares.Length);
    }

    [Fact]
    public void A_count_without_its_system_is_asked_back() => Refused(Sheet with { Shelf = [Foam with { CountSystem = null }] }, "shelf[0].count");

    [Fact]
    public void An_unknown_system_is_refused() => Refused(Sheet with { Shelf = [Foam with { CountSystem = "coton" }] }, "shelf[0].system");

    [Fact]
    public void An_unreadable_label_is_refused() => Refused(Sheet with { Shelf = [Foam with { Count = null, Label = "400 m" }] }, "shelf[0].label");

    [Fact]
    public void A_yarn_of_no_fineness_is_refused() => Refused(Sheet with { Shelf = [Foam with { Count = null }] }, "shelf[0]");

    [Fact]
    public void A_yarn_of_no_fibre_is_refused() => Refused(Sheet with { Shelf = [Foam with { Fibres = [] }] }, "shelf[0].fibres");

    [Fact]
    public void Shares_that_do_not_sum_to_the_whole_are_refused() =>
        Refused(Sheet with { Shelf = [Foam with { Fibres = [new FibreEntry("cotton", Ratio.FromPercent(60))] }] }, "shelf[0].fibres");

    [Fact]
    public void An_unknown_fibre_is_refused() =>
        Refused(Sheet with { Shelf = [Foam with { Fibres = [new FibreEntry("cottn", Ratio.FromPercent(100))] }] }, "shelf[0].fibres[0].fibre");

    [Fact]
    public void An_unknown_weave_is_refused() => Refused(Sheet with { Weave = new WeaveDecision.Named("2/2 twil of the marsh") }, "weave");

    [Fact]
    public void A_drawn_draft_that_cannot_be_woven_is_refused_under_its_place()
    {
        var draft = new Draft { Shafts = 2, Threading = [ShaftSet.Of(1), ShaftSet.Of(5)], LiftPlan = [ShaftSet.Of(1)] };
        Assert.StartsWith("weave.", new WeaveDecision.Drawn(draft).Resolve().Problem!.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void Pattern_picks_are_marked_and_the_threading_balanced()
    {
        Draft draft = DraftNotation.Parse("1232 | 1:13 2:2 3:12 | 1323").Value with { Name = "own" };
        Weave even = new WeaveDecision.Drawn(draft) { PatternPicks = PatternPicks.Even }.Resolve().Value;
        Weave odd = new WeaveDecision.FromFile("own.wif", draft) { PatternPicks = PatternPicks.Odd }.Resolve().Value;
        Assert.Equal("Ground Pattern Ground Pattern", string.Join(' ', even.PickRoles));
        Assert.Equal("Pattern Ground Pattern Ground", string.Join(' ', odd.PickRoles));
        Assert.Equal(1, even.BalancingEnds);
        Assert.Equal("own", even.Name);
    }

    [Fact]
    public void A_piece_may_have_a_treadling_of_its_own()
    {
        Worksheet two = Sheet with
        {
            Weave = new WeaveDecision.Drawn(DraftNotation.Parse("1234 | 1:12 2:23 3:34 4:14 | 1234").Value),
            Pieces = [Sheet.Pieces[0], Sheet.Pieces[0] with { Weave = new WeaveDecision.Drawn(DraftNotation.Parse("1234 | 1:13 2:24 | 12").Value) }],
        };
        PlanResult plan = two.Plan().Value;

        // Plain weave crosses twice as often as 2/2 twill, so it takes up more warp at the same sett.
        Assert.True(plan.Pieces[1].WarpTakeUp.Value > plan.Pieces[0].WarpTakeUp.Value);
    }

    [Theory]
    [InlineData(LoomKind.RigidHeddle, 0, 2, 3, 50)]
    [InlineData(LoomKind.Table, 8, 0, 8, 60)]
    [InlineData(LoomKind.Floor, 4, 0, 4, 80)]
    [InlineData(LoomKind.Floor, 8, 0, 8, 95)]
    public void A_loom_without_measured_waste_has_the_customary_one(LoomKind kind, int shafts, int heddles, int expectedShafts, double wasteCentimetres)
    {
        Loom loom = (Sheet.Looms[0] with { Kind = kind, Shafts = shafts, RigidHeddles = heddles, Treadles = 0 }).ToLoom();
        Assert.Equal(expectedShafts, loom.Shafts);
        Assert.Equal(wasteCentimetres, loom.Waste.Value.Centimetres, 1e-9); // middle of the customary range: common practice, no source
    }

    [Fact]
    public void Measured_waste_overrides_the_custom() =>
        Assert.Equal(66, (Sheet.Looms[0] with { Waste = Length.FromCentimetres(66) }).ToLoom().Waste.Value.Centimetres, 1e-9);

    private static void Refused(Worksheet sheet, string where) => Assert.Equal(where, sheet.Plan().Problem!.Where);
}
