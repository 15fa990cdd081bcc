using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class FoldsTests
{
    [Fact]
    public void A_tube_of_an_odd_number_of_ends_weaves_on_round_both_folds() =>
        Gen.Select(Gen.Int[2, 30], Gen.Enum<ClothSide>()).Sample(
            (half, start) =>
            {
                LayerJoins joins = Joins(Tube.Of(new WeaveSize(2 * half + 1, 8), start));
                Assert.Equal(LayerForm.Tube, joins.Form);
                Assert.Empty(joins.Faults);
            },
            iter: 40);

    [Fact]
    public void A_tube_of_an_even_number_of_ends_doubles_an_end_on_its_starting_side_and_says_so() =>
        Gen.Select(Gen.Int[2, 30], Gen.Enum<ClothSide>()).Sample(
            (half, start) =>
            {
                Weave tube = Tube.Of(new WeaveSize(2 * half, 8), start);
                LayerJoins joins = Joins(tube);
                Assert.Equal(LayerForm.Tube, joins.Form);
                Assert.NotEmpty(joins.Faults);
                Assert.All(joins.Faults, f => Assert.Equal(start, f.Turn.Side));
                Assert.Contains(tube.Notes, n => n.Contains("even in number", StringComparison.Ordinal));
            },
            iter: 40);

    [Fact]
    public void Double_width_is_folded_where_it_says_and_weaves_on_round_the_fold() =>
        Gen.Select(Gen.Int[4, 61], Gen.Enum<ClothSide>()).Sample(
            (ends, fold) =>
            {
                LayerJoins joins = Joins(MultipleWidth.Of(new WeaveSize(ends, 8), 2, fold));
                Assert.Equal(LayerForm.DoubleWidth, joins.Form);
                Assert.Equal(fold, joins.Joins.Single().Side);
                Assert.Empty(joins.Faults);
            },
            iter: 60);

    [Fact]
    public void Many_widths_are_joined_by_turns_and_weave_on_round_every_fold() =>
        Gen.Select(Gen.Int[3, 5], Gen.Int[1, 5], Gen.Enum<ClothSide>()).Sample(
            (layers, units, fold) =>
            {
                LayerJoins joins = Joins(MultipleWidth.Of(new WeaveSize(2 * layers * units, 2 * layers), layers, fold));
                Assert.Equal(LayerForm.ManyFold, joins.Form);
                Assert.Equal(fold, joins.Joins.First(j => j.Upper == 0).Side);
                Assert.Empty(joins.Faults);
            },
            iter: 40);

    [Fact]
    public void Separate_cloths_stay_apart_with_a_shuttle_each() =>
        Gen.Int[2, 5].Sample(
            layers =>
            {
                Weave weave = SeparateLayers.Of(layers);
                Assert.Equal(LayerForm.SeparateCloths, LayerJoins.Of(weave.Draft.Drawdown(), ClothSide.Left, weave.Draft.WeftOrder).Form);
            },
            iter: 10);

    [Fact]
    public void Triple_width_on_ends_that_do_not_fit_is_noted() =>
        Assert.Contains(MultipleWidth.Of(new WeaveSize(20, 6), 3).Notes, n => n.Contains("no multiple of 6", StringComparison.Ordinal));

    private static LayerJoins Joins(Weave weave) => LayerJoins.Of(weave.Draft.Drawdown(), weave.FirstPickFrom!.Value);
}
