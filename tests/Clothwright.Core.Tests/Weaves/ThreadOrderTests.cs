using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves;

public class ThreadOrderTests
{
    [Theory]
    [InlineData("4A 4B", "0 0 0 0 1 1 1 1")]
    [InlineData("abc", null)]
    [InlineData("2(A 2B), C", "0 1 1 0 1 1 2")]
    [InlineData("a b A", "0 1 0")]
    [InlineData("AA", "26")]
    public void Runs_and_groups_are_read(string text, string? yarns)
    {
        Parsed<ThreadOrder> order = ThreadOrder.Parse(text);

        if (yarns is null) Assert.False(order.Succeeded);
        else Assert.Equal(yarns, string.Join(' ', order.Value.Repeat));
    }

    [Fact]
    public void An_order_written_and_read_is_the_same() =>
        Gen.Int[0, 800].Array[1, 30].Where(yarns => yarns.All(y => y < 702)).Sample(
            yarns =>
            {
                ThreadOrder order = ThreadOrder.Of(yarns);
                Assert.Equal(order, ThreadOrder.Parse(order.ToString()).Value);
                Assert.Equal(order.GetHashCode(), ThreadOrder.Parse(order.ToString()).Value.GetHashCode());
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Counts_add_up_to_the_threads() =>
        Gen.Select(Gen.Int[0, 5].Array[1, 12], Gen.Int[0, 300]).Sample(
            (yarns, threads) =>
            {
                ThreadOrder order = ThreadOrder.Of(yarns);
                Assert.Equal(threads, order.Counts(threads).Sum());
                Assert.Equal(threads, order.Runs(threads).Sum(r => r.Threads));
                for (int yarn = 0; yarn < order.Yarns; yarn++)
                {
                    Assert.Equal(Enumerable.Range(0, threads).Count(t => order[t] == yarn), order.Counts(threads)[yarn]);
                }
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void The_repeat_goes_on_for_ever_and_can_be_entered_anywhere()
    {
        ThreadOrder order = ThreadOrder.Parse("2A B").Value;

        Assert.Equal(1, order[5]);
        Assert.Equal("A B A", order.From(4).ToString());
        Assert.Same(order, order.From(3));
        Assert.Equal("A", ThreadOrder.OneYarn.ToString());
    }

    [Theory]
    [InlineData("", "names no thread", 0)]
    [InlineData("4", "names no yarn", 1)]
    [InlineData("0A", "1 to 100000", 0)]
    [InlineData("A)", "closes that was not opened", 1)]
    [InlineData("(A", "not closed", 2)]
    [InlineData("A +", "\"+\" names no yarn", 2)]
    [InlineData("ABC", "one or two letters", 2)]
    [InlineData("60000(2A)", "longer than", 0)]
    [InlineData("((((((((((((((((((A", "deep", 16)]
    public void What_cannot_be_read_is_named_with_its_place(string text, string what, int position)
    {
        InputProblem problem = ThreadOrder.Parse(text).Problem!;

        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Equal(position, problem.Position);
    }

    [Fact]
    public void Slips_are_refused()
    {
        Assert.Throws<ArgumentException>(() => ThreadOrder.Of());
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadOrder.Of(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadOrder.OneYarn[-1]);
        Assert.False(ThreadOrder.OneYarn.Equals((object?)null));
    }
}
