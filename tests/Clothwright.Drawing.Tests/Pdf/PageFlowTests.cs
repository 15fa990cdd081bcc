using Clothwright.Drawing.Pdf;
using CsCheck;

namespace Clothwright.Drawing.Tests.Pdf;

public class PageFlowTests
{
    private static FlowItem Item(float height, float space = 0, bool keep = false, bool starts = false) =>
        new(height, (_, _, _) => { }) { SpaceBefore = space, KeepWithNext = keep, StartsPage = starts };

    [Fact]
    public void A_heading_goes_over_with_the_line_after_it()
    {
        List<List<PlacedItem>> pages = PageFlow.Paginate([Item(80), Item(10, 5, keep: true), Item(10)], 100);

        Assert.Equal([1, 2], pages.Select(p => p.Count));
    }

    [Fact]
    public void Space_is_left_out_at_the_top_of_a_page()
    {
        List<List<PlacedItem>> pages = PageFlow.Paginate([Item(90), Item(20, space: 15)], 100);

        Assert.Equal(0, pages[1][0].Y);
    }

    [Fact]
    public void The_head_of_a_table_is_said_again_on_each_page()
    {
        FlowItem head = Item(10);
        List<List<PlacedItem>> pages = PageFlow.Paginate([head with { KeepWithNext = true }, .. Enumerable.Range(0, 12).Select(_ => Item(20) with { HeadOnNewPage = head })], 100);

        Assert.Equal(3, pages.Count);
        Assert.All(pages.Skip(1), p => Assert.Equal(10, p[0].Item.Height));
        Assert.All(pages.Skip(1), p => Assert.Equal(10, p[1].Y));
    }

    [Fact]
    public void Nothing_is_lost_overlaps_or_reaches_over_the_page()
    {
        Gen.Select(Gen.Float[1, 60], Gen.Float[0, 20], Gen.Bool, Gen.Int[0, 12]).Array[0, 60].Sample(made =>
        {
            FlowItem[] items = [.. made.Select(m => Item(m.Item1, m.Item2, m.Item3, m.Item4 == 0))];
            List<List<PlacedItem>> pages = PageFlow.Paginate(items, 100);
            bool all = pages.SelectMany(p => p).Select(p => p.Item).SequenceEqual(items);
            bool fits = pages.All(p => p.All(i => i.Y + i.Item.Height <= 100.01f));
            bool apart = pages.All(p => p.Zip(p.Skip(1)).All(n => n.First.Y + n.First.Item.Height <= n.Second.Y + 0.01f));
            return all && fits && apart;
        });
    }
}
