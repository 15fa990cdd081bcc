using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Ends;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Plans;

public class EndsTests
{
    [Theory]
    [InlineData("1234", 0)]
    [InlineData("123432", 1)]
    [InlineData("12", 1)]
    [InlineData("1122", 2)]
    [InlineData("12321", 0)]
    [InlineData("2123", 3)]
    public void A_repeat_is_balanced_by_the_ends_that_mirror_it(string threading, int ends)
    {
        Draft draft = DraftNotation.Parse($"{threading} | 1:1 | 1").Value;
        Assert.Equal(ends, ThreadingMirror.BalancingEnds(draft.Threading));
    }

    [Fact]
    public void Balanced_repeats_read_the_same_from_both_sides() =>
        Gen.Int[1, 4].Array[1, 9].Select(Gen.Int[1, 5]).Sample((shafts, repeats) =>
        {
            ShaftSet[] repeat = [.. shafts.Concat(shafts.Reverse()).Select(s => ShaftSet.Of(s))];
            int extra = ThreadingMirror.BalancingEnds([.. repeat]);
            ShaftSet[] warp = [.. Enumerable.Range(0, repeats * repeat.Length + extra).Select(i => repeat[i % repeat.Length])];
            return warp.SequenceEqual(warp.Reverse());
        });

    [Theory]
    [InlineData(192.1, 4, 0, 48, 0)]
    [InlineData(193.9, 4, 0, 48, 0)]
    [InlineData(194.1, 4, 0, 49, 0)]
    [InlineData(100, 6, 1, 17, 1)]
    [InlineData(10, 14, 0, 1, 0)]
    [InlineData(10, 40, 0, 0, 10)]
    public void The_nearest_whole_repeats_are_taken(double wanted, int repeat, int balancing, int repeats, int rest) =>
        Assert.Equal(new RepeatFit(repeats, rest), RepeatFit.Nearest(wanted, repeat, balancing));

    [Fact]
    public void A_cut_fit_holds_every_end_that_the_width_asks_for() =>
        Gen.Select(Gen.Double[0.5, 3000], Gen.Int[1, 200]).Sample((wanted, repeat) =>
        {
            RepeatFit fit = RepeatFit.Cut(wanted, repeat);
            int ends = fit.Repeats * repeat + fit.BalancingEnds;
            return ends >= wanted - 1e-6 && ends < wanted + 1;
        });

    [Fact]
    public void An_order_repeats_until_the_warp_is_full()
    {
        var order = new WarpOrder([new ThreadRun("a", 3), new ThreadRun("b", 2)]);
        Assert.Equal([("a", 3), ("b", 2), ("a", 3), ("b", 1)], Runs(order, 9, 0));
    }

    [Fact]
    public void Selvedges_take_the_yarn_of_their_edge_and_do_not_move_the_order()
    {
        var order = new WarpOrder([new ThreadRun("a", 3), new ThreadRun("b", 2)]);
        Assert.Equal([("a", 4), ("b", 2), ("a", 3), ("b", 2)], Runs(order, 11, 1));
    }

    [Theory]
    [InlineData(9, "a2 b4 c3")]
    [InlineData(4, "b4")]
    [InlineData(6, "a1 b4 c1")]
    public void An_order_used_once_lies_in_the_middle(int ends, string expected)
    {
        var order = new WarpOrder([new ThreadRun("a", 1), new ThreadRun("b", 4), new ThreadRun("c", 1)]) { Repeats = false };
        Assert.Equal(expected, string.Join(' ', WarpLayout.Lay(order, ends, 0).Select(r => $"{r.YarnId}{r.Threads}")));
    }

    [Fact]
    public void Every_end_has_a_yarn() =>
        Gen.Select(Gen.Int[1, 20].Array[1, 6], Gen.Int[1, 500], Gen.Int[0, 5], Gen.Bool).Sample((runs, ends, outside, repeats) =>
        {
            var order = new WarpOrder([.. runs.Select((n, i) => new ThreadRun($"y{i}", n))]) { Repeats = repeats };
            return WarpLayout.Lay(order, ends + 10, outside).Sum(r => r.Threads) == ends + 10;
        });

    [Fact]
    public void Whole_repeats_let_the_width_give_way_and_cut_ones_keep_it()
    {
        EndsPlan whole = EstuaryWarps.OneScarf.Planned().Ends;
        EndsPlan cut = (EstuaryWarps.OneScarf with { EndsFit = EndsFit.Width }).Planned().Ends;
        Assert.Equal(0, whole.PatternEnds % 4);
        Assert.InRange(cut.Total.Value.Count - cut.Wanted.Value.Value, 0, 1);
    }

    private static (string, int)[] Runs(WarpOrder order, int ends, int outside) => [.. WarpLayout.Lay(order, ends, outside).Select(r => (r.YarnId, r.Threads))];
}
