using Clothwright.Core.Colours;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Tests.Worksheets;

public class WovenTests
{
    private static readonly WeaveDecision Overshot = new WeaveDecision.Named("overshot");
    private static readonly WeaveDecision Plain = new WeaveDecision.Named("plain");

    [Fact]
    public void A_weave_with_pattern_picks_gets_a_yarn_for_them_and_is_planned()
    {
        Worksheet woven = Sheet(Yarn("foam"), Yarn("rust")).Woven(Overshot);
        Assert.Equal("rust", Assert.Single(woven.Pieces[0].Piece.PatternWeft).YarnId);
        Assert.Null(woven.Plan().Problem);
    }

    [Fact]
    public void Where_the_shelf_holds_one_yarn_alone_it_is_pattern_and_ground() =>
        Assert.Equal("foam", Assert.Single(Sheet(Yarn("foam")).Woven(Overshot).Pieces[0].Piece.PatternWeft).YarnId);

    [Fact]
    public void The_yarn_for_the_pattern_that_was_chosen_stays_with_the_next_weave_that_has_pattern_picks()
    {
        Worksheet woven = Sheet(Yarn("foam"), Yarn("rust"), Yarn("kelp")).Woven(Overshot);
        PieceEntry entry = woven.Pieces[0];
        woven = woven with { Pieces = [entry with { Piece = entry.Piece with { PatternWeft = [new WeftRun("kelp", 1)] } }] };
        Assert.Equal("kelp", woven.Woven(new WeaveDecision.Named("summer and winter")).Pieces[0].Piece.PatternWeft[0].YarnId);
    }

    [Fact]
    public void Back_in_plain_weave_there_is_no_pattern_weft_and_it_is_planned_again()
    {
        Worksheet woven = Sheet(Yarn("foam"), Yarn("rust")).Woven(Overshot).Woven(Plain);
        Assert.Empty(woven.Pieces[0].Piece.PatternWeft);
        Assert.Null(woven.Plan().Problem);
    }

    [Fact]
    public void A_weave_that_cannot_be_read_changes_no_piece()
    {
        Worksheet sheet = Sheet(Yarn("foam"));
        Assert.Equal(sheet.Pieces, sheet.Woven(new WeaveDecision.Named("ebb and flow")).Pieces);
    }

    private static YarnEntry Yarn(string id) => new()
    {
        Id = id,
        Name = id,
        Count = "8/2",
        CountSystem = "cotton",
        Fibres = [new FibreEntry("cotton", Ratio.FromPercent(100))],
        Colour = new SrgbColour(230, 230, 220),
    };

    private static Worksheet Sheet(params YarnEntry[] shelf) => new()
    {
        Title = "Towel",
        Looms = [new LoomEntry { Id = "floor-4", Name = "floor loom", Kind = LoomKind.Floor, WeavingWidth = Length.FromCentimetres(90), Shafts = 4, Treadles = 6, Shed = ShedAction.Rising }],
        Reeds = [new Reed("10-dent", Sett.FromPerInch(10))],
        Shelf = [.. shelf],
        LoomId = "floor-4",
        Weave = Plain,
        Warp = WarpOrder.Of("foam"),
        Pieces = [new PieceEntry(new Piece { Name = "towel", Width = Length.FromCentimetres(45), Length = Length.FromCentimetres(70), Weft = [new WeftRun("foam", 1)] })],
    };
}
