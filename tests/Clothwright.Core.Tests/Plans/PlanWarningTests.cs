using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Tests.Yarns;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Plans;

public class PlanWarningTests
{
    private static readonly PlanRequest Sound = EstuaryWarps.OneScarf with { FloatingSelvedges = true };

    private static readonly Piece Scarf = EstuaryWarps.Scarf;

    private static readonly Yarn Seal = EstuaryYarns.Make("seal", "1450 yd/lb", CountSystem.YardsPerPound, "viscose", YarnConstruction.Chenille);

    private static readonly Yarn Glint = EstuaryYarns.Make("glint", "17 tex", CountSystem.Tex, "metallised film", YarnConstruction.Monofilament);

    private static readonly Dictionary<string, (PlanRequest Request, string Id, string Where)> Cases = new()
    {
        ["chenille as warp"] = (Sound with { Shelf = [.. Sound.Shelf, Seal], Warp = WarpOrder.Of("seal") }, "chenille-warp", "warp.order"),
        ["a fine metallic monofilament as the only warp"] = (Sound with { Shelf = [.. Sound.Shelf, Glint], Warp = WarpOrder.Of("glint") }, "monofilament-warp", "warp.order"),
        ["clasped weft"] = (Sound.With(Scarf with { Weft = [new WeftRun("foam", 1) { ClaspedWith = "tide-blue" }] }), "clasped-weft", "pieces[0].weft"),
        ["metallic beside cotton"] = (Sound with { Shelf = [.. Sound.Shelf, Glint], Warp = new WarpOrder([new ThreadRun("foam", 9), new ThreadRun("glint", 1)]) }, "unlike-shrinkage", "warp.order"),
        ["far too close"] = (Sound with { ChosenSett = Sett.FromPerInch(60) }, "sett-too-close", "sett"),
        ["close for a scarf"] = (Sound with { ChosenSett = Sett.FromPerInch(30) }, "sett-close", "sett"),
        ["open for a scarf"] = (Sound with { ChosenSett = Sett.FromPerInch(10) }, "sett-open", "sett"),
        ["no reed"] = (Sound with { Bench = Sound.Bench with { Reeds = [] } }, "no-reed", "bench"),
        ["a reed far off"] = ((Sound with { Weave = EstuaryWarps.Weave("plain"), ChosenSett = Sett.FromPerInch(14) }).On(EstuaryWarps.Heddle(1)), "reed-off", "sett"),
        ["uneven dents"] = (Sound with { ChosenSett = Sett.FromPerInch(15) }, "reed-marks", "sett"),
        ["a cut repeat"] = (Sound with { EndsFit = EndsFit.Width, Weave = EstuaryWarps.Weave("8-end satin") }, "cut-repeat", "warp.fit"),
        ["stripes cut"] = (Sound with { Warp = new WarpOrder([new ThreadRun("foam", 7), new ThreadRun("tide-blue", 6)]) }, "cut-order", "warp.order"),
        ["stripes wider than the warp"] = (Sound with { Warp = new WarpOrder([new ThreadRun("foam", 700)]) { Repeats = false } }, "cut-order", "warp.order"),
        ["a narrower piece"] = (Sound with { Pieces = [Scarf, Scarf with { Width = Length.FromCentimetres(12) }] }, "idle-ends", "pieces[1].width"),
        ["a repeat wider than wanted"] = (Sound with { Weave = EstuaryWarps.Weave("8-end satin"), Pieces = [Scarf with { Width = Length.FromCentimetres(3.4) }] }, "width-off", "pieces[0].width"),
        ["edges that miss"] = (Sound with { FloatingSelvedges = false, Weave = EstuaryWarps.Weave("8-end satin") }, "loose-selvedge", "warp.floatingSelvedges"),
        ["too few treadles"] = (Sound.On(EstuaryWarps.Floor(8, 2)), "treadles-short", "loom"),
        ["two layers on two heddles"] = ((Sound with { Weave = EstuaryWarps.Weave("plain"), Pieces = [Scarf with { Make = PieceMake.DoubleWidth }] }).On(EstuaryWarps.Heddle(2)), "pick-up-stick", "loom"),
        ["a ring without seam"] = (Sound.With(Scarf with { Kind = PieceKind.Cowl, Fringe = FringeStyle.None, Join = RingJoin.HalfTwist }), "no-seam", "pieces[0].endSeam"),
        ["raw ends"] = (Sound.With(Scarf with { Fringe = FringeStyle.None }), "raw-ends", "pieces[0].hem"),
        ["picks too close"] = (Sound.With(Scarf with { ChosenPicks = Sett.FromPerInch(140) }), "picks-too-close", "pieces[0].picks"),
        ["a cone that does not suffice"] = (Sound with { Shelf = [EstuaryWarps.Foam with { Packages = [EstuaryYarns.Cone(80)] }] }, "yarn-short", "shelf[0]"),
        ["a draft that falls apart"] = (Sound with { Weave = new WeaveDecision.Drawn(DraftNotation.Parse("1234 | lift 1 12 13 1").Value).Resolve().Value }, "weave-fault", "weave"),
    };

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_doubtful_decision_is_planned_with_a_warning(string name)
    {
        (PlanRequest request, string id, string where) = Cases[name];
        PlanResult plan = request.Planned();
        PlanWarning? warning = plan.Warnings.FirstOrDefault(w => w.Id == id && w.Where == where);
        Assert.NotNull(warning);
        Assert.NotEmpty(warning.Text);
        Assert.NotEmpty(warning.Advice);
        Assert.Equal($"{warning.Text} {warning.Advice}", warning.ToString());
    }

    [Fact]
    public void A_plain_piece_of_work_is_planned_without_a_warning() => Assert.Empty(Sound.Planned().Warnings);

    [Fact]
    public void A_monofilament_carried_along_with_another_yarn_is_no_matter_for_warning()
    {
        PlanRequest carried = Sound with { Shelf = [.. Sound.Shelf, Glint], Warp = new WarpOrder([new ThreadRun("foam", 3), new ThreadRun("glint", 1)]) };
        Assert.DoesNotContain(carried.Planned().Warnings, w => w.Id == "monofilament-warp");
    }

    [Fact]
    public void Clasped_weft_makes_a_heavier_and_thicker_cloth_and_takes_twice_the_weft()
    {
        PlanRequest plain = Sound.With(Scarf with { ChosenPicks = Sett.FromPerCentimetre(5) });
        PlanResult single = plain.Planned();
        PlanResult clasped = plain.With(plain.Pieces[0] with { Weft = [new WeftRun("foam", 1) { ClaspedWith = "foam" }] }).Planned();
        Assert.True(clasped.MassPerArea.Value > single.MassPerArea.Value);
        Assert.True(clasped.Pieces[0].Cloth.Washed.Thickness.Value > single.Pieces[0].Cloth.Washed.Thickness.Value);

        // Twice, but for the cloth drawing in a little more under the thicker weft.
        Assert.InRange(clasped.Yarns[0].Weft.Value / single.Yarns[0].Weft.Value, 1.9, 2.3);
    }

    [Fact]
    public void A_thicker_weft_lies_in_fewer_picks()
    {
        PlanResult thin = Sound.Planned();
        PlanResult thick = Sound.With(Scarf with { Weft = [new WeftRun("foam", 1) { Strands = 2 }] }).Planned();
        Assert.True(thick.Pieces[0].GroundPicks.Value < thin.Pieces[0].GroundPicks.Value);
    }
}
