using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Core.Tests.Weaves.Analysis.Layers;

public class LayerJoinsTests
{
    private const string Tube = "1234 | 1:1 2:123 3:3 4:134 | 1234";

    [Fact]
    public void One_cloth_has_no_folds()
    {
        LayerJoins joins = LayerJoins.Of(Clothes.Of("10/01"), ClothSide.Left);

        Assert.Equal(LayerForm.OneCloth, joins.Form);
        Assert.Empty(joins.Joins);
        Assert.Null(FoldAdvice.For(Clothes.Of("10/01")).Best);
        Assert.Equal("", FoldAdvice.For(Clothes.Of("10/01")).Text);
    }

    [Fact]
    public void A_tube_is_advised_to_drop_the_end_on_the_starting_side()
    {
        FoldAdvice advice = FoldAdvice.For(Of(Tube).Repeated(8, 4));

        Assert.Equal(LayerForm.Tube, advice.Form);
        Assert.Equal((ClothSide.Left, EdgeChange.DropFirst), (advice.Best!.Start, advice.Best.Change));
        Assert.Contains("leave out the first end: the weave then runs on", advice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_layers_thrown_in_turn_by_one_shuttle_are_a_spiral()
    {
        // Top, middle, bottom, and again: the shuttle goes from the bottom straight back to the top.
        Drawdown cloth = Of("123456 | 1:1 2:124 3:12345 4:4 5:145 6:12456 | 123456");

        Assert.Equal(3, ClothLayers.Of(cloth).Layers.Length);
        Assert.Equal(LayerForm.Spiral, LayerJoins.Of(cloth, ClothSide.Left).Form);
    }

    [Fact]
    public void A_layer_with_a_shuttle_of_its_own_below_a_tube_is_joined_otherwise()
    {
        Drawdown cloth = Of("123456 | 1:1 2:124 3:12345 4:4 5:145 6:12456 | 123456");

        LayerJoins joins = LayerJoins.Of(cloth, ClothSide.Left, ThreadOrder.Parse("A A B").Value);

        Assert.Equal(LayerForm.Otherwise, joins.Form);
        Assert.DoesNotContain(joins.Joins, j => j.Lower == 2);
    }

    [Fact]
    public void A_loose_pick_between_layers_joins_nothing()
    {
        LayerJoins joins = LayerJoins.Of(Clothes.Of("1000/0010/1010/1110/1011"), ClothSide.Left);

        Assert.Equal(2, joins.Layers.Layers.Length);
        Assert.All(joins.Folds, f => Assert.NotEqual(2, f.Turn.Pick % 5));
    }

    private static Drawdown Of(string draft) => DraftNotation.Parse(draft).Value.Drawdown();
}
