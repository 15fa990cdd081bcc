using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Layers;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;

namespace Clothwright.Core.Tests.Plans;

public class LayeredDraftTests
{
    // Double weave in the books' orders: tube above, below; double width above, below, below, above (drafts from memory of weaving manuals).
    [Theory]
    [InlineData(PieceMake.Tube, "1000/1110/0010/1011")]
    [InlineData(PieceMake.DoubleWidth, "1000/1110/1011/0010")]
    public void Plain_weave_in_two_layers_is_the_books_double_weave(PieceMake make, string drawdown)
    {
        Draft draft = LayeredDraft.Of(EstuaryWarps.Weave("plain"), make);
        Assert.Equal(drawdown, draft.Drawdown().ToString());
        Assert.Equal(4, draft.Shafts);
    }

    [Theory]
    [InlineData("2/2 twill", PieceMake.Tube)]
    [InlineData("2/2 twill", PieceMake.DoubleWidth)]
    [InlineData("2/1 twill", PieceMake.DoubleWidth)]
    [InlineData("5-end satin", PieceMake.Tube)]
    public void Any_weave_lies_in_two_layers_that_each_hold_together(string weave, PieceMake make)
    {
        var analysis = ClothAnalysis.Of(LayeredDraft.Of(EstuaryWarps.Weave(weave), make));
        Assert.Equal(2, analysis.Layers.Layers.Length);
        Assert.Empty(analysis.Layers.LooseEnds);
        Assert.Empty(analysis.Layers.LoosePicks);
    }

    [Fact]
    public void A_flat_piece_keeps_its_draft() =>
        Assert.Same(EstuaryWarps.OneScarf.Weave.Draft, LayeredDraft.Of(EstuaryWarps.OneScarf.Weave, PieceMake.Flat));

    [Fact]
    public void A_sinking_draft_weaves_the_same_layers()
    {
        var plain = EstuaryWarps.Weave("plain");
        var sinking = plain with { Draft = DraftNotation.Parse("12 | lift 2 1 | sinking").Value };
        Assert.Equal(plain.Draft.Drawdown(), sinking.Draft.Drawdown());
        Assert.Equal(LayeredDraft.Of(plain, PieceMake.Tube).Drawdown(), LayeredDraft.Of(sinking, PieceMake.Tube).Drawdown());
    }
}
