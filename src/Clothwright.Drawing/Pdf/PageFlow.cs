namespace Clothwright.Drawing.Pdf;

/// <summary>Shares items out among pages: nothing is cut, and what belongs together stays together as far as a page holds it.</summary>
internal sealed class PageFlow
{
    private const float LeastColumn = 100;
    private const float ShortShare = 0.35f;
    private readonly IReadOnlyList<FlowItem> _items;
    private readonly float _height;
    private readonly List<List<PlacedItem>> _pages = [[]];
    private float _y;
    private int _at;

    private PageFlow(IReadOnlyList<FlowItem> items, float height)
    {
        _items = items;
        _height = height;
    }

    /// <summary>The pages, each with its items from the top down, column by column; at least one page.</summary>
    /// <param name="items">The items in reading order.</param>
    /// <param name="height">Height of a page's body in points.</param>
    public static List<List<PlacedItem>> Paginate(IReadOnlyList<FlowItem> items, float height)
    {
        var flow = new PageFlow(items, height);
        while (flow._at < items.Count)
        {
            if (items[flow._at].Columns > 1) flow.PlaceColumns(items[flow._at].Columns);
            else flow.PlaceChain();
        }

        return flow._pages;
    }

    private void TurnPage()
    {
        _pages.Add([]);
        _y = 0;
    }

    // Items that belong together, over the whole width.
    private void PlaceChain()
    {
        FlowItem first = _items[_at];
        int last = LastKept(_at, _items.Count, _height - (first.HeadOnNewPage?.Height ?? 0));
        float needed = HeightOf(_at, last, atTop: _y == 0);
        if (last + 1 < _items.Count && _items[last].KeepWithNext && _items[last + 1].Columns > 1) needed += LeastOfColumns(last + 1);
        if (_y > 0 && (first.StartsPage || _y + needed > _height))
        {
            TurnPage();
            if (first.HeadOnNewPage is { } head)
            {
                _pages[^1].Add(new PlacedItem(head, 0) { IsAgain = true });
                _y = head.Height;
            }
        }

        for (; _at <= last; _at++)
        {
            if (_y > 0) _y += _items[_at].SpaceBefore;
            _pages[^1].Add(new PlacedItem(_items[_at], _y));
            _y += _items[_at].Height;
        }
    }

    // A short stretch of columns is not parted from what introduces it; of a long one a beginning is enough.
    private float LeastOfColumns(int first)
    {
        int end = ColumnsEnd(first);
        int columns = _items[first].Columns;
        float share = (HeightOf(first, end - 1, atTop: false) + _items.Skip(first).Take(end - first).Max(i => i.Height)) / columns + _items[first].SpaceBefore;
        return share <= _height * ShortShare ? share : LeastColumn;
    }

    private int ColumnsEnd(int first)
    {
        int end = first + 1;
        while (end < _items.Count && _items[end].Columns == _items[first].Columns && !_items[end].StartsPage) end++;
        return end;
    }

    // Columns are filled one after another; on the last page they are made as short as they go.
    private void PlaceColumns(int columns)
    {
        int end = ColumnsEnd(_at);
        if (_y > 0 && (_items[_at].StartsPage || _height - _y < LeastColumn)) TurnPage();
        float top = _y > 0 ? _y + _items[_at].SpaceBefore : 0;
        float room = _height - top;
        List<PlacedItem> placed = Fill(_at, end, columns, room);
        if (_at + placed.Count == end) placed = Fill(_at, end, columns, Shortest(end, columns, room));
        _pages[^1].AddRange(placed.Select(p => p with { Y = p.Y + top }));
        _at += placed.Count;
        _y = top + placed.Max(p => p.Y + p.Item.Height);
        if (_at < end) TurnPage();
    }

    private float Shortest(int end, int columns, float room)
    {
        float tooShort = 0;
        float enough = room;
        while (enough - tooShort > 1)
        {
            float middle = (tooShort + enough) / 2;
            if (Fill(_at, end, columns, middle).Count == end - _at) enough = middle;
            else tooShort = middle;
        }

        return enough;
    }

    private List<PlacedItem> Fill(int from, int end, int columns, float room)
    {
        var placed = new List<PlacedItem>();
        int at = from;
        for (int column = 0; column < columns && at < end; column++)
        {
            float y = 0;
            int begun = at;
            while (at < end)
            {
                int last = LastKept(at, end, room);
                if (at > begun && y + HeightOf(at, last, atTop: false) > room) break;
                if (at == begun && HeightOf(at, last, atTop: true) > room && room < _height) return placed;
                for (; at <= last; at++)
                {
                    if (y > 0) y += _items[at].SpaceBefore;
                    placed.Add(new PlacedItem(_items[at], y) { Column = column });
                    y += _items[at].Height;
                }
            }
        }

        return placed;
    }

    // The last item of the chain that begins here; a chain too long for a page is cut where the page ends.
    private int LastKept(int first, int end, float height)
    {
        int last = first;
        while (last + 1 < end && _items[last].KeepWithNext && !_items[last + 1].StartsPage && _items[last + 1].Columns == _items[first].Columns
            && HeightOf(first, last + 1, atTop: true) <= height)
        {
            last++;
        }

        return last;
    }

    private float HeightOf(int first, int last, bool atTop)
    {
        float sum = 0;
        for (int i = first; i <= last; i++)
        {
            if (i > first || !atTop) sum += _items[i].SpaceBefore;
            sum += _items[i].Height;
        }

        return sum;
    }
}
