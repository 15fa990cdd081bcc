using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Edges;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis.Edges;

public class SelvedgeReportTests
{
    private static readonly Drawdown Twill = Clothes.Of("1100/0110/0011/1001");

    [Fact]
    public void A_turn_is_missed_exactly_when_both_picks_lie_alike_on_the_edge_end() =>
        Gen.Select(Clothes.Any(150, 12), Gen.Bool, Gen.Int[0, 2].Array[1, 12]).Sample(
            (cloth, left, order) =>
            {
                ClothSide start = left ? ClothSide.Left : ClothSide.Right;
                ThreadOrder shuttles = ThreadOrder.Of(order);
                SelvedgeReport report = SelvedgeReport.Of(cloth, start, shuttles);
                var turns = ShuttlePath.Of(cloth.Picks, shuttles, start);
                Assert.Equal(turns.Length, report.Turns);
                foreach (ShuttleTurn turn in turns)
                {
                    int missed = 0;
                    while (missed < cloth.Ends && Alike(cloth, turn, missed)) missed++;
                    MissedTurn? found = report.Missed.Where(m => m.Turn == turn).Select(m => (MissedTurn?)m).SingleOrDefault();
                    Assert.Equal(missed, found?.EndsMissed ?? 0);
                    Assert.Equal(missed == cloth.Ends && !HeldBetween(cloth, turn), found?.PullsOut ?? false);
                    if (found is { } f) Assert.True(f.FloatRoundEdge >= 2 && f.FloatRoundEdge <= 2 * cloth.Ends);
                }
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_pattern_pick_over_tabby_does_not_pull_out_though_the_next_lies_in_the_same_shed()
    {
        // Two pattern picks in one shed, tabby after each in a shuttle of its own; without tabby the same picks pull out.
        Drawdown pattern = Clothes.Of("110000/101010/110000/010101");

        Assert.False(SelvedgeReport.Of(pattern, ClothSide.Left, ThreadOrder.Parse("B A").Value).PullsOut);
        Assert.Equal<int>([0, 2], SelvedgeReport.Of(pattern, ClothSide.Left, ThreadOrder.Parse("B A").Value).LoosePicks);
        Assert.True(SelvedgeReport.Of(Clothes.Of("110000/110000/001111/001111"), ClothSide.Left).PullsOut);
    }

    [Fact]
    public void Each_shuttle_goes_to_and_fro_on_its_own()
    {
        string[] turns = [.. ShuttlePath.Of(4, ThreadOrder.Parse("A B").Value, ClothSide.Left).Select(t => $"{t.Shuttle} {t.Pick}-{t.NextPick} {t.Side}")];

        Assert.Equal(["0 0-2 Right", "1 1-3 Right", "0 2-0 Left", "1 3-1 Left"], turns);
    }

    [Fact]
    public void An_odd_number_of_picks_is_followed_for_two_repeats()
    {
        string[] turns = [.. ShuttlePath.Of(3, ThreadOrder.OneYarn, ClothSide.Left).Select(t => $"{t.Pick}-{t.NextPick} {t.Side}")];

        Assert.Equal(["0-1 Right", "1-2 Left", "2-3 Right", "3-4 Left", "4-5 Right", "5-0 Left"], turns);
    }

    [Fact]
    public void A_piece_ends_without_a_turn_into_its_first_pick() =>
        Assert.Equal(2, ShuttlePath.Of(3, ThreadOrder.OneYarn, ClothSide.Left, ClothReading.Cut).Length);

    [Fact]
    public void The_float_round_the_edge_is_what_both_picks_pass_there()
    {
        // From the left, pick 1 of the twill (1100) and pick 2 (0110) both pass the last end; they float over 2 and 1 ends there.
        MissedTurn missed = SelvedgeReport.Of(Twill, ClothSide.Left).Missed[0];

        Assert.Equal((1, 3), (missed.EndsMissed, missed.FloatRoundEdge));
        Assert.False(missed.PullsOut);
    }

    [Fact]
    public void Twill_on_an_even_number_of_ends_is_best_started_from_the_right()
    {
        SelvedgeAdvice advice = SelvedgeAdvice.For(Twill);

        Assert.Equal((ClothSide.Right, EdgeChange.None), (advice.Best.Start, advice.Best.Change));
        Assert.False(advice.NeedsFloatingSelvedge);
        Assert.Contains("from the right: every turn", advice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Twill_on_an_odd_number_of_ends_wants_one_end_less_or_more()
    {
        SelvedgeAdvice advice = SelvedgeAdvice.For(Twill.Repeated(9, 4), repeatEnds: 4);

        Assert.True(advice.Best.Report.IsClean);
        Assert.NotEqual(EdgeChange.None, advice.Best.Change);
        Assert.Equal("11001100110", EdgeChanges.Changed(Twill.Repeated(10, 4), EdgeChange.AddLast, 4).RowText(0));
    }

    [Fact]
    public void Basket_needs_a_floating_selvedge_whatever_is_changed()
    {
        SelvedgeAdvice advice = SelvedgeAdvice.For(Clothes.Of("1100/1100/0011/0011"));

        Assert.True(advice.NeedsFloatingSelvedge);
        Assert.Contains("floating selvedge", advice.Text, StringComparison.Ordinal);
        Assert.Equal(8, advice.Options.Length);
    }

    [Theory]
    [InlineData(EdgeChange.None, 4, "")]
    [InlineData(EdgeChange.DropFirst, 3, "leave out the first end")]
    [InlineData(EdgeChange.DropLast, 3, "leave out the last end")]
    [InlineData(EdgeChange.AddLast, 5, "add one end at the right")]
    public void Each_change_of_one_end_has_its_words(EdgeChange change, int ends, string text)
    {
        Assert.Equal(ends, EdgeChanges.Changed(Twill, change).Ends);
        Assert.Equal(text, EdgeChanges.Text(change));
    }

    [Fact]
    public void The_only_end_stays() =>
        Assert.Equal(Clothes.Of("1/0"), EdgeChanges.Changed(Clothes.Of("1/0"), EdgeChange.DropFirst));

    // Of another shuttle a pick lies between that passes over some end under which both lie, and under some end over which both lie.
    private static bool HeldBetween(Drawdown cloth, ShuttleTurn turn)
    {
        int steps = (turn.NextPick - turn.Pick) % cloth.Picks;
        if (steps <= 0) steps += cloth.Picks;
        return Enumerable.Range(1, steps - 1).Select(s => (turn.Pick + s) % cloth.Picks).Any(between =>
            Enumerable.Range(0, cloth.Ends).Any(e => cloth[turn.Pick % cloth.Picks, e] && !cloth[between, e])
            && Enumerable.Range(0, cloth.Ends).Any(e => !cloth[turn.Pick % cloth.Picks, e] && cloth[between, e]));
    }

    private static bool Alike(Drawdown cloth, ShuttleTurn turn, int fromEdge)
    {
        int end = turn.Side == ClothSide.Left ? fromEdge : cloth.Ends - 1 - fromEdge;
        return cloth[turn.Pick % cloth.Picks, end] == cloth[turn.NextPick % cloth.Picks, end];
    }
}
