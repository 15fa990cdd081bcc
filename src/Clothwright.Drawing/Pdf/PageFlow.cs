namespace Clothwright.Drawing.Pdf;

/// <summary>Shares items out among pages: nothing is cut, and what belongs together stays together as far as a page holds it.</summary>
internal static class PageFlow
{
    /// <summary>The pages, each with its items from the top down; at least one page.</summary>
    /// <param name="items">The items in reading order.</param>
    /// <param name="height">Height of a page's body in points.</param>
    public static List<List<PlacedItem>> Paginate(IReadOnlyList<FlowItem> items, float height)
    {
        var pages = new List<List<PlacedItem>> { new() };
        float y = 0;
        int at = 0;
        while (at < items.Count)
        {
            int last = LastKept(items, at, height - (items[at].HeadOnNewPage?.Height ?? 0));
            float needed = HeightOf(items, at, last, atTop: y == 0);
            if (y > 0 && (items[at].StartsPage || y + needed > height))
            {
                pages.Add([]);
                y = 0;
                if (items[at].HeadOnNewPage is { } head)
                {
                    pages[^1].Add(new PlacedItem(head, 0));
                    y = head.Height;
                }
            }

            for (; at <= last; at++)
            {
                if (y > 0) y += items[at].SpaceBefore;
                pages[^1].Add(new PlacedItem(items[at], y));
                y += items[at].Height;
            }
        }

        return pages;
    }

    // The last item of the chain that begins here; a chain too long for a page is cut where the page ends.
    private static int LastKept(IReadOnlyList<FlowItem> items, int first, float height)
    {
        int last = first;
        while (last + 1 < items.Count && items[last].KeepWithNext && !items[last + 1].StartsPage
            && HeightOf(items, first, last + 1, atTop: true) <= height)
        {
            last++;
        }

        return last;
    }

    private static float HeightOf(IReadOnlyList<FlowItem> items, int first, int last, bool atTop)
    {
        float sum = 0;
        for (int i = first; i <= last; i++)
        {
            if (i > first || !atTop) sum += items[i].SpaceBefore;
            sum += items[i].Height;
        }

        return sum;
    }
}
