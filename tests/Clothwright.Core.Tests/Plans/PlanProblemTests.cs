using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Tests.Plans;

public class PlanProblemTests
{
    private static readonly PlanRequest Sound = EstuaryWarps.OneScarf;

    private static readonly Piece Scarf = EstuaryWarps.Scarf;

    private static readonly Dictionary<string, (PlanRequest Request, string Where, string Mend)> Faults = new()
    {
        ["no yarn on the shelf"] = (Sound with { Shelf = [] }, "shelf", "Put"),
        ["two yarns of one id"] = (Sound with { Shelf = [EstuaryWarps.Foam, EstuaryWarps.Foam] }, "shelf[1].id", "foam-2"),
        ["no loom on the bench"] = (Sound with { Bench = Sound.Bench with { Looms = [] } }, "bench.looms", "Put"),
        ["unknown loom"] = (Sound with { LoomId = "tabel-8" }, "loom", "\"table-8\""),
        ["loom with one shaft"] = (Sound.On(EstuaryWarps.Table8 with { Shafts = 1 }), "bench.looms[0].shafts", "2"),
        ["empty order"] = (Sound with { Warp = new WarpOrder([]) }, "warp.order", "Name"),
        ["run of no ends"] = (Sound with { Warp = new WarpOrder([new ThreadRun("foam", 0)]) }, "warp.order[0]", "at least 1"),
        ["unknown warp yarn"] = (Sound with { Warp = WarpOrder.Of("faom") }, "warp.order[0].yarn", "\"foam\""),
        ["negative selvedges"] = (Sound with { SelvedgeEnds = -1 }, "warp.selvedgeEnds", "0 or more"),
        ["nothing to weave"] = (Sound with { Pieces = [] }, "pieces", "Add"),
        ["no width"] = (Sound.With(Scarf with { Width = Length.Zero }), "pieces[0].width", "21 cm"),
        ["no length"] = (Sound.With(Scarf with { Length = Length.Zero }), "pieces[0].length", "180 cm"),
        ["endless piece"] = (Sound.With(Scarf with { Length = Length.FromMetres(5000) }), "pieces[0].length", "several warps"),
        ["no copies"] = (Sound.With(Scarf with { Count = 0 }), "pieces[0].count", "1 or more"),
        ["fringe of no length"] = (Sound.With(Scarf with { FringeLength = Length.Zero }), "pieces[0].fringe.length", "12 cm"),
        ["ring with fringe"] = (Sound.With(Scarf with { Join = RingJoin.Plain }), "pieces[0].fringe", "Take out"),
        ["no weft"] = (Sound.With(Scarf with { Weft = [] }), "pieces[0].weft", "Name"),
        ["unknown weft"] = (Sound.With(Scarf with { Weft = [new WeftRun("froth", 1)] }), "pieces[0].weft[0].yarn", "foam"),
        ["unknown clasped weft"] = (Sound.With(Scarf with { Weft = [new WeftRun("foam", 1) { ClaspedWith = "froth" }] }), "pieces[0].weft[0].claspedWith", "foam"),
        ["clasp at the edge"] = (Sound.With(Scarf with { Weft = [new WeftRun("foam", 1) { ClaspedWith = "foam", ClaspShare = 1 }] }), "pieces[0].weft[0].claspShare", "50 %"),
        ["no strand"] = (Sound.With(Scarf with { Weft = [new WeftRun("foam", 1) { Strands = 0 }] }), "pieces[0].weft[0].strands", "1 strand"),
        ["no pick"] = (Sound.With(Scarf with { Weft = [new WeftRun("foam", 0)] }), "pieces[0].weft[0].picks", "1 pick"),
        ["pattern weft without pattern"] = (Sound.With(Scarf with { PatternWeft = [new WeftRun("foam", 1)] }), "pieces[0].patternWeft", "pattern picks"),
        ["another threading"] = (Sound.With(Scarf with { Weave = EstuaryWarps.Weave("8-end satin") }), "pieces[0].weave", "threading of the warp"),
        ["layers mixed"] = (Sound with { Pieces = [Scarf, Scarf with { Make = PieceMake.Tube }] }, "pieces[1].make", "warp of its own"),
        ["too many shafts"] = ((Sound with { Weave = EstuaryWarps.Weave("8-end satin") }).On(EstuaryWarps.Floor(4, 6)), "weave", "4 shafts or fewer"),
        ["too many shafts in layers"] = (Sound.With(Scarf with { Make = PieceMake.DoubleWidth }).On(EstuaryWarps.Floor(4, 6)), "weave", "2 shafts or fewer"),
        ["too many groups for heddles"] = (Sound.On(EstuaryWarps.Heddle(1)), "weave", "plain"),
        ["wider than the loom"] = (Sound.With(Scarf with { Width = Length.FromCentimetres(90) }), "pieces[0].width", "narrower"),
        ["a piece wider than any loom"] = (Sound.With(Scarf with { Width = Length.FromMetres(20) }), "pieces[0].width", "12"),
        ["a kilometre of scarves"] = (Sound.With(Scarf with { Count = 900 }), "pieces", "1000 m"),
        ["an endless order of ends"] = (Sound with { Warp = new WarpOrder([new ThreadRun("foam", 30_000)]) }, "warp.order", "repeats by itself"),
        ["an endless order of picks"] = (Sound.With(Scarf with { Weft = [new WeftRun("foam", 90_000), new WeftRun("foam", 90_000)] }), "pieces[0].weft", "repeats by itself"),
        ["take-up of the whole"] = (Sound with { Allowances = new Allowances { WarpTakeUp = Ratio.FromPercent(100) } }, "allowances.warpTakeUp", "8 %"),
        ["shrinkage of the whole"] = (Sound with { Allowances = new Allowances { ShrinkageInWidth = Ratio.FromPercent(100) } }, "allowances.shrinkageInWidth", "8 %"),
        ["no picks a minute"] = (Sound with { Rates = new WorkRates { PicksPerMinute = 0 } }, "rates.picksPerMinute", "above 0"),
        ["a sett beyond all threads"] = (Sound with { ChosenSett = Sett.FromPerCentimetre(5000) }, "sett", "8 per cm"),
        ["picks beyond all threads"] = (Sound.With(Scarf with { ChosenPicks = Sett.FromPerCentimetre(5000) }), "pieces[0].picks", "8 per cm"),
        ["unknown reed"] = (Sound with { ChosenReed = "9-dent" }, "reed", "10-dent"),
        ["too few equal heddles"] = ((Sound with { Weave = EstuaryWarps.Weave("2/1 twill"), ChosenReed = "7.5-dent" }).On(EstuaryWarps.Heddle(2)), "bench.heddles", "count"),
    };

    public static TheoryData<string> Names => [.. Faults.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_cannot_be_woven_is_refused_with_place_and_mend(string name)
    {
        (PlanRequest request, string where, string mend) = Faults[name];
        InputProblem problem = WarpPlanner.Plan(request).Problem!;
        Assert.Equal(where, problem.Where);
        Assert.Contains(mend, problem.Mend, StringComparison.Ordinal);
        Assert.NotEmpty(problem.What);
    }

    [Fact]
    public void Pattern_picks_want_a_yarn_and_a_ground()
    {
        Draft draft = DraftNotation.Parse("1234 | 1:13 2:24 3:12 | 1323").Value;
        PlanRequest request = Sound with { Weave = new WeaveDecision.Drawn(draft) { PatternPicks = PatternPicks.Even }.Resolve().Value };
        Assert.Equal("pieces[0].patternWeft", WarpPlanner.Plan(request).Problem!.Where);
        PlanRequest allPattern = Sound with { Weave = request.Weave with { PickRoles = [.. Enumerable.Repeat(ThreadRole.Pattern, 4)] } };
        Assert.Equal("pieces[0].weave", WarpPlanner.Plan(allPattern.With(Scarf with { PatternWeft = [new WeftRun("foam", 1)] })).Problem!.Where);
    }
}
