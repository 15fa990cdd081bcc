using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class EveryGeneratorTests
{
    public static TheoryData<string> Generators => [.. MadeWeaves.All.Keys];

    [Theory]
    [MemberData(nameof(Generators))]
    public void Makes_a_draft_that_can_be_woven_and_is_as_many_cloths_as_it_says(string generator) =>
        MadeWeaves.All[generator].Sample(
            made =>
            {
                Assert.Empty(DraftCheck.Problems(made.Weave.Draft));
                ClothLayers layers = ClothLayers.Of(made.Weave.Draft.Drawdown());
                Assert.Equal(made.Weave.Layers, layers.Layers.Length);
                Assert.Equal(made.Weave.Layers, layers.Components.Length);
            },
            iter: 60);

    [Theory]
    [MemberData(nameof(Generators))]
    public void Floats_no_further_than_its_rule_allows(string generator) =>
        MadeWeaves.All[generator].Sample(
            made =>
            {
                ClothFloats floats = ClothFloats.Of(made.Weave.Draft.Drawdown(), ClothReading.Repeat);
                Assert.InRange(Math.Max(floats.WarpFace.LongestLength, floats.WarpBack.LongestLength), 1, made.WarpLimit);
                Assert.InRange(Math.Max(floats.WeftFace.LongestLength, floats.WeftBack.LongestLength), 1, made.WeftLimit);
            },
            iter: 60);

    [Theory]
    [MemberData(nameof(Generators))]
    public void Carries_its_repeat_across_any_size(string generator) =>
        Gen.Select(MadeWeaves.All[generator], Gen.Int[1, 90], Gen.Int[1, 70], Gen.Int[0, 9]).Sample(
            (made, ends, picks, skipped) =>
            {
                Drawdown repeat = made.Weave.Draft.Drawdown();
                Weave sized = made.Weave.Sized(new WeaveSize(ends, picks), skipped);
                Assert.Equal(
                    Drawdown.From(ends, picks, (p, e) => repeat[p % made.Weave.RepeatPicks, (e + skipped) % made.Weave.RepeatEnds]),
                    sized.Draft.Drawdown());
                Assert.Equal((ends, picks), (sized.EndRoles.Length, sized.PickRoles.Length));
            },
            iter: 20);

    [Theory]
    [MemberData(nameof(Generators))]
    public void Says_by_what_rule_it_was_made(string generator) =>
        MadeWeaves.All[generator].Sample(
            made =>
            {
                Assert.NotEqual("", made.Weave.Rule.Name);
                Assert.NotEqual("", made.Weave.Rule.Formula);
                Assert.NotEqual("", made.Weave.Rule.Source.Name);
            },
            iter: 5);

    [Fact]
    public void Supplementary_picks_can_be_taken_out_and_leave_plain_weave() =>
        MadeWeaves.All["supplementary weft"].Sample(
            made =>
            {
                Drawdown cloth = made.Weave.Draft.Drawdown();
                int[] ground = [.. Enumerable.Range(0, cloth.Picks).Where(p => made.Weave.PickRoles[p] == ThreadRole.Ground)];
                Drawdown left = Drawdown.From(cloth.Ends, ground.Length, (p, e) => cloth[ground[p], e]);
                Assert.Equal(PlainWeave.Of().Sized(new WeaveSize(cloth.Ends, ground.Length)).Draft.Drawdown(), left);
            },
            iter: 20);

    [Fact]
    public void Supplementary_ends_can_be_taken_out_and_leave_plain_weave() =>
        MadeWeaves.All["supplementary warp"].Sample(
            made =>
            {
                Drawdown cloth = made.Weave.Draft.Drawdown();
                int[] ground = [.. Enumerable.Range(0, cloth.Ends).Where(e => made.Weave.EndRoles[e] == ThreadRole.Ground)];
                Drawdown left = Drawdown.From(ground.Length, cloth.Picks, (p, e) => cloth[p, ground[e]]);
                Assert.Equal(PlainWeave.Of().Sized(new WeaveSize(ground.Length + 1, cloth.Picks), 1).Draft.Drawdown(), Drawdown.From(ground.Length + 1, cloth.Picks, (p, e) => left[p, e % ground.Length]));
            },
            iter: 20);

    [Theory]
    [InlineData("overshot")]
    [InlineData("crackle")]
    [InlineData("monk's belt")]
    [InlineData("summer and winter")]
    [InlineData("tied weave")]
    [InlineData("name draft")]
    public void Without_its_pattern_picks_a_weave_with_tabby_is_plain(string generator) =>
        MadeWeaves.All[generator].Sample(
            made =>
            {
                Drawdown cloth = made.Weave.Draft.Drawdown();
                int[] ground = [.. Enumerable.Range(0, cloth.Picks).Where(p => made.Weave.PickRoles[p] == ThreadRole.Ground)];
                Drawdown left = Drawdown.From(cloth.Ends, ground.Length, (p, e) => cloth[ground[p], e]);
                int first = left[0, 0] ? 0 : 1;
                Assert.Equal(PlainWeave.Of().Sized(new WeaveSize(cloth.Ends, ground.Length), first).Draft.Drawdown(), left);
            },
            iter: 30);

    [Fact]
    public void Both_numberings_of_shadow_weave_give_one_cloth() =>
        Gen.Int[2, 16].Sample(half => Assert.Equal(ShadowWeave.Of(2 * half).Draft.Drawdown(), ShadowWeave.Of(2 * half, neighbouringPairs: true).Draft.Drawdown()));

    [Fact]
    public void Crackle_keeps_its_laws_whatever_the_blocks() =>
        Gen.Select(Gen.Int[1, 4], Gen.Int[1, 3], (b, l) => new BlockRun(b, l)).Array[1, 10].Sample(
            blocks => Assert.True(Crackle.IsValid(Crackle.Threading(blocks, out _))), iter: 200);

    [Fact]
    public void Overshot_keeps_odd_and_even_by_turns_whatever_the_blocks() =>
        Gen.Select(Gen.Int[1, 4], Gen.Int[2, 7], (b, l) => new BlockRun(b, l)).Array[1, 10].Sample(
            blocks => Assert.True(NeighbouringPairs.KeepsParity(Overshot.Threading(blocks))), iter: 200);
}
