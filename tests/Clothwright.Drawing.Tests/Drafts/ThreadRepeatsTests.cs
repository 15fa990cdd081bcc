using Clothwright.Drawing.Drafts;
using CsCheck;

namespace Clothwright.Drawing.Tests.Drafts;

public class ThreadRepeatsTests
{
    private static List<ThreadGroup> Find(string threads) => ThreadRepeats.Find(threads.Length, (a, b) => threads[a] == threads[b]);

    [Fact]
    public void A_straight_draw_between_selvedges_is_one_repeat()
    {
        List<ThreadGroup> groups = Find("-" + string.Concat(Enumerable.Repeat("1234", 45)) + "-");

        Assert.Equal([new ThreadGroup(0, 1, 1), new ThreadGroup(1, 4, 45), new ThreadGroup(181, 1, 1)], groups);
    }

    [Fact]
    public void A_point_draw_keeps_its_balancing_end_apart()
    {
        List<ThreadGroup> groups = Find(string.Concat(Enumerable.Repeat("123432", 10)) + "1");

        Assert.Equal([new ThreadGroup(0, 6, 10), new ThreadGroup(60, 1, 1)], groups);
    }

    [Fact]
    public void A_short_repeat_is_not_worth_a_bracket()
    {
        Assert.Equal([new ThreadGroup(0, 8, 1)], Find("12341234"));
    }

    [Fact]
    public void A_long_cut_repeat_is_told_and_a_short_one_drawn()
    {
        DraftAxis told = DraftAxis.Shortened(32 * 9 + 22, (a, b) => a % 32 == b % 32, "picks", 16);
        DraftAxis drawn = DraftAxis.Shortened(32 * 9 + 3, (a, b) => a % 32 == b % 32, "picks", 16);

        Assert.Equal("32 picks × 9 + first 22", Assert.Single(told.Brackets).Text);
        Assert.Equal(32, told.Slots.Length);
        Assert.Equal("32 picks × 9", Assert.Single(drawn.Brackets).Text);
        Assert.Equal(35, drawn.Slots.Length);
        Assert.Equal(290, drawn.Slots[^1].Thread);
    }

    [Fact]
    public void Groups_worked_in_order_give_back_every_row_of_threads()
    {
        Gen.String[Gen.Char['1', '3'], 1, 120].Sample(threads =>
        {
            string worked = string.Concat(Find(threads).Select(g => string.Concat(Enumerable.Repeat(threads.Substring(g.First, g.Period), g.Times))));
            return worked == threads;
        });
    }
}
