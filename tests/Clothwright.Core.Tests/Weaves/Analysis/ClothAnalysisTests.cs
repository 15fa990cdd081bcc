using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Weaves.Analysis.Threads;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis;

public class ClothAnalysisTests
{
    [Fact]
    public void A_sound_twill_has_no_problems_and_a_word_about_its_edges()
    {
        ClothAnalysis cloth = ClothAnalysis.Of(DraftNotation.Parse("1234 | 1:12 2:23 3:34 4:14 | 1234").Value);

        Assert.Empty(cloth.Problems);
        Assert.Contains("from the right", Assert.Single(cloth.Notes), StringComparison.Ordinal);
        Assert.True(cloth.Layers.HangsTogether);
        Assert.True(cloth.TabbyAvailable);
        Assert.Equal(ShaftSet.Of(1, 3), cloth.TabbySheds!.OddEnds);
        Assert.Equal<int>([1, 1, 1, 1], cloth.EndsPerShaft!.Counts);
        Assert.Equal((4, 4, 4, 4), (cloth.Ends, cloth.Picks, cloth.FewestShafts, cloth.FewestTreadles));
        Assert.Equal(0.5, cloth.WarpFaceFraction);
        Assert.Equal(2, cloth.Counts.MeanEndFloat);
        Assert.Equal(2, cloth.FloatsAsCut.All.Max(t => t.LongestLength));
        Assert.True(cloth.Symmetries.HasFlag(ClothSymmetries.HalfTurn));
        Assert.True(cloth.SelvedgeFromRight.IsClean);
        Assert.Equal<int>([0, 1, 2, 3], cloth.SelvedgeFromLeft.LoosePicks);
        Assert.Equal(LayerForm.OneCloth, cloth.Joins.Form);
        Assert.Equal(new ClothRepeat(4, 4, 4, 4), cloth.Repeat);
    }

    [Fact]
    public void Loose_threads_are_named_with_the_mend()
    {
        ClothAnalysis cloth = ClothAnalysis.Of(Clothes.Of("101/010/000"));

        InputProblem problem = cloth.Problems[0];
        Assert.Contains("Nothing holds pick 3", problem.What, StringComparison.Ordinal);
        Assert.Equal("drawdown, pick 3", problem.Where);
        Assert.Null(cloth.Draft);
        Assert.Null(cloth.EndsPerShaft);
    }

    [Fact]
    public void Many_loose_threads_are_named_up_to_a_dozen()
    {
        ClothAnalysis cloth = ClothAnalysis.Of(Drawdown.From(20, 2, (_, _) => true));

        Assert.Contains(cloth.Problems, p => p.What.Contains("ends 1 2 3 4 5 6 7 8 9 10 11 12 and 8 more", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("1234 | 1:1 2:123 3:3 4:134 | 1234", "A", "a tube")]
    [InlineData("1234 | 1:1 2:123 3:134 4:3 | 1234", "A", "double width")]
    [InlineData("1234 | 1:1 2:123 3:3 4:134 | 1234", "A B", "nothing joins them")]
    [InlineData("123456 | 1:1 2:124 3:12345 4:12456 5:145 6:4 | 123456", "A", "3 widths")]
    [InlineData("123456 | 1:1 2:124 3:12345 4:4 5:145 6:12456 | 123456", "A", "spiral")]
    [InlineData("123456 | 1:1 2:124 3:12345 4:4 5:145 6:12456 | 123456", "A A B", "here and there")]
    public void Layers_are_named_by_what_they_become(string draft, string wefts, string form)
    {
        ClothAnalysis cloth = ClothAnalysis.Of(DraftNotation.Parse(draft).Value with { WeftOrder = ThreadOrder.Parse(wefts).Value });

        Assert.Contains(cloth.Problems, p => p.What.Contains(form, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(2, false)]
    [InlineData(3, true)]
    public void Layers_are_a_fault_only_where_they_are_not_meant(int meant, bool fault)
    {
        // Double weave: two layers joined at both sides.
        ClothAnalysis cloth = ClothAnalysis.Of(DraftNotation.Parse("1234 | 1:1 2:123 3:3 4:134 | 1234").Value, meant);

        Assert.Equal(fault, !cloth.Problems.IsEmpty);
        Assert.Equal(!fault, cloth.Notes.Any(n => n.StartsWith("As meant", StringComparison.Ordinal)));
    }

    [Fact]
    public void One_cloth_where_two_are_meant_is_a_fault() =>
        Assert.Contains("2 layers are meant", Assert.Single(ClothAnalysis.Of(DraftNotation.Parse("1234 | 1:12 2:23 3:34 4:14 | 1234").Value, 2).Problems).What, StringComparison.Ordinal);

    [Fact]
    public void The_folds_of_a_narrow_repeat_are_advised_as_those_of_the_warp() =>
        // A tube with an even number of ends doubles ends at a fold; leaving out the end on the starting side cures it (teaching page on tubular weave).
        Assert.Contains("leave out the first end", ClothAnalysis.Of(DraftNotation.Parse("1234 | 1:1 2:123 3:3 4:134 | 1234").Value, 2).FoldAdvice.Text, StringComparison.Ordinal);

    [Fact]
    public void What_is_worth_marking_has_its_place()
    {
        ClothMarks marks = ClothMarks.Of(ClothAnalysis.Of(Clothes.Of("101010/010000/101010/000000/110110/010101")), longFloat: 3);

        Assert.Equal<int>([3], marks.LoosePicks);
        Assert.Empty(marks.LooseEnds);
        Assert.Empty(marks.Layers);
        Assert.Contains(marks.Floats, f => f is { Kind: FloatKind.WeftFace, Line: 3, Endless: true });
        Assert.All(marks.Floats, f => Assert.True(f.Endless || f.Length >= 3));
        Assert.False(marks.IsEmpty);
        Assert.True(ClothMarks.Of(ClothAnalysis.Of(Clothes.Of("10/01"))).IsEmpty);
    }

    [Fact]
    public void Layers_are_marked_without_the_turns_at_their_folds()
    {
        ClothMarks marks = ClothMarks.Of(ClothAnalysis.Of(DraftNotation.Parse("1234 | 1:1 2:123 3:134 4:3 | 1234").Value));

        Assert.Equal(2, marks.Layers.Length);
        Assert.Empty(marks.Turns);
    }

    [Fact]
    public void Picks_in_one_shed_are_a_problem_at_the_edge()
    {
        ClothAnalysis cloth = ClothAnalysis.Of(DraftNotation.Parse("12 | 1:1 2:2 | 1122").Value.Repeated(8, 4));

        Assert.Contains(cloth.Problems, p => p.What.Contains("After picks 1 3", StringComparison.Ordinal));
    }

    [Fact]
    public void A_draft_that_cannot_be_woven_is_refused()
    {
        Draft wrong = new() { Shafts = 1, Threading = [ShaftSet.Of(2)], LiftPlan = [ShaftSet.Of(1)] };

        Assert.Throws<InputProblemException>(() => ClothAnalysis.Of(wrong));
    }

    [Fact]
    public void All_answers_together_are_those_found_one_by_one() =>
        Clothes.Any(40, 40).Sample(
            cloth =>
            {
                ClothOutline outline = ClothOutline.Of(cloth);
                Assert.Equal(WeaveCounts.Of(cloth), outline.Counts);
                Assert.Equal(ClothLayers.Of(cloth).Components.Select(c => c.ToString()), outline.Layers.Components.Select(c => c.ToString()));
                Assert.Equal(
                    ClothFloats.Of(cloth, ClothReading.Repeat).All.Select(t => (t.Kind, t.LongestLength, t.Total)),
                    outline.Floats.All.Select(t => (t.Kind, t.LongestLength, t.Total)));
            },
            iter: 100,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Wherever_every_thread_interlaces_crossings_over_and_floats_add_up_to_two() =>
        // Identity: each float of length L holds L − 1 crossings without a change of face.
        Clothes.Any(12, 12).Sample(
            cloth =>
            {
                WeaveCounts counts = WeaveCounts.Of(cloth);
                if (!counts.EveryThreadInterlaces) return;
                double floating = ClothFloats.Of(cloth, ClothReading.Repeat).All.Sum(t => t.Counts.Sum(c => (c.Length - 1.0) * c.Times));
                Assert.Equal(2, counts.CrossingOverFirmness + floating / (cloth.Ends * cloth.Picks), 9);
            },
            iter: 500,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_cloth_with_three_kinds_of_end_in_which_every_thread_interlaces_hangs_together() =>
        // Two layers need two ends and two picks each, so four kinds of end.
        Gen.Select(Clothes.Any(3, 10), Gen.Int[0, 2].Array[3, 14]).Sample(
            (small, kinds) =>
            {
                Drawdown cloth = Drawdown.From(kinds.Length, small.Picks, (pick, end) => small[pick, kinds[end] % small.Ends]);
                if (WeaveCounts.Of(cloth).EveryThreadInterlaces) Assert.True(ClothLayers.Of(cloth).HangsTogether);
            },
            iter: 1000,
            seed: "0N0XIzNsQ0O2");
}
