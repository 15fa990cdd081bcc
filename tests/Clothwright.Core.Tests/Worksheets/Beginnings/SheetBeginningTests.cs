using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Worksheets.Beginnings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Worksheets.Beginnings;

public class SheetBeginningTests
{
    public static TheoryData<PieceKind> Kinds => [.. Enum.GetValues<PieceKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_of_piece_begins_with_a_plan_that_leaves_nothing_to_settle(PieceKind kind)
    {
        PlanResult plan = Beginning(kind).Compose().Plan().Value;
        Assert.Empty(plan.Warnings.Select(w => w.Id));
        Assert.Equal(kind, plan.Pieces[0].Piece.Kind);
        Assert.True(plan.WarpLength.Value > plan.Pieces[0].Piece.Length);
    }

    [Fact]
    public void A_wide_piece_takes_a_wide_loom_and_a_narrow_one_the_narrowest()
    {
        Worksheet scarf = Beginning(PieceKind.Scarf).Compose();
        Worksheet blanket = Beginning(PieceKind.Blanket).Compose();
        Assert.True(Width(scarf) < Width(blanket));
        static Length Width(Worksheet sheet) => sheet.Looms.Single(l => l.Id == sheet.LoomId).WeavingWidth;
    }

    [Fact]
    public void The_loom_that_is_wanted_is_taken_though_the_work_does_not_fit_it()
    {
        Worksheet sheet = (Beginning(PieceKind.Blanket) with { LoomId = "heddle-50" }).Compose();
        Assert.Equal("heddle-50", sheet.LoomId);
        Assert.NotNull(sheet.Plan().Problem);
    }

    [Fact]
    public void A_draft_is_woven_as_it_is_on_a_loom_with_shafts_enough()
    {
        Core.Weaves.Draft draft = WeaveCatalogue.Make("8-end satin step 3").Value.Draft;
        Worksheet sheet = (Beginning(PieceKind.Scarf) with { Draft = draft }).Compose();
        Assert.Equal(draft, Assert.IsType<WeaveDecision.Drawn>(sheet.Weave).Draft);
        Assert.True(sheet.Looms.Single(l => l.Id == sheet.LoomId).Shafts >= 8);
        Assert.True(sheet.Plan().Succeeded);
    }

    [Fact]
    public void The_first_yarn_is_the_warp_and_the_second_the_weft()
    {
        YarnEntry tide = Yarn("tide", 0);
        YarnEntry dusk = Yarn("dusk", 0);
        Worksheet sheet = (Beginning(PieceKind.Scarf) with { Yarns = [tide, dusk] }).Compose();
        Assert.Equal("tide", Assert.Single(sheet.Warp.Runs).YarnId);
        Assert.Equal("dusk", Assert.Single(sheet.Pieces[0].Piece.Weft).YarnId);
    }

    [Fact]
    public void Of_a_shelf_the_yarn_is_suited_of_which_there_is_enough()
    {
        SheetBeginning scarf = Beginning(PieceKind.Scarf);
        // 900 g of a carpet yarn of 2000 tex cannot be woven at a sett of the bench; 400 g of 8/2 cotton can.
        YarnEntry rope = Yarn("rope", 900) with { Count = "2000", CountSystem = "tex" };
        Assert.Equal("tide", scarf.MostSuited([Yarn("crumb", 5), Yarn("tide", 400), Yarn("ebb", 300)]).Id);
        Assert.Equal("crumb", scarf.MostSuited([Yarn("crumb", 5)]).Id);
        Assert.NotEqual("crumb", scarf.MostSuited([Yarn("crumb", 5), rope, Yarn("tide", 400)]).Id);
    }

    [Fact]
    public void Without_a_yarn_there_is_no_beginning() =>
        Assert.Throws<InvalidOperationException>(() => (Beginning(PieceKind.Scarf) with { Yarns = [] }).Compose());

    private static SheetBeginning Beginning(PieceKind kind) => new() { Title = "new work", PieceName = "piece", Kind = kind, Yarns = [YarnModel.For(kind)] };

    private static YarnEntry Yarn(string id, double grams) => YarnModel.For(PieceKind.Towel) with
    {
        Id = id,
        Packages = grams > 0 ? [new YarnPackage(PackageForm.Cone, Mass.FromGrams(grams), Mass.Zero)] : [],
    };
}
