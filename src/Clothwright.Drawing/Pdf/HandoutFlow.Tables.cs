using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Tags;

namespace Clothwright.Drawing.Pdf;

/// <summary>Tables and key figures.</summary>
internal sealed partial class HandoutFlow
{
    private const float ColumnGap = 14;
    private const float RowPadding = 2.2f;
    private const float ChipSize = 9;
    private const float WritingHeight = 19;

    private void AddFigures(FiguresBlock block)
    {
        float[] left = [0, width * 0.36f, width * 0.56f, width * 0.76f];
        float space = _blockSpace;
        int first = _items.Count;
        TagNode table = _section.Add(TagRole.Table);
        foreach (HandoutFigure figure in block.Figures)
        {
            string customary = figure.Customary == figure.Metric ? "" : figure.Customary;
            TagNode row = table.Add(TagRole.Row);
            AddRow(
                [
                    Cell(figure.Label, PageStyles.Body, left[0], left[1] - ColumnGap, row.Add(TagRole.Head, TagRole.RowScope)),
                    Cell(figure.Metric, PageStyles.Strong, left[1], left[2] - ColumnGap, row.Add(TagRole.Cell)),
                    Cell(customary, PageStyles.Body, left[2], left[3] - ColumnGap, row.Add(TagRole.Cell)),
                    Cell(figure.Note, PageStyles.Note, left[3], width, row.Add(TagRole.Cell)),
                ],
                PageStyles.Body.LineHeight, Palette.LinenLine, null, space, null);
            space = 0;
        }

        KeepEnds(first);
    }

    private static TableCell Cell(string text, TextStyle style, float left, float right, TagNode owner) =>
        new(Wrap(text, style, right - left), style, left, owner);

    // A row of wrapped cells; one taller than most of a page is cut between lines, and goes on over the page.
    private void AddRow(TableCell[] cells, float lineHeight, SrgbColour rule, SrgbColour? chip, float space, FlowItem? head, float? wide = null)
    {
        int most = Math.Max(1, (int)(height * 0.7f / lineHeight));
        int all = cells.Max(c => c.Lines.Count);
        float least = cells.Any(c => c.WriteTo is not null) ? WritingHeight : 0;
        for (int from = 0; from == 0 || from < all; from += most)
        {
            int lines = Math.Max(1, Math.Min(most, all - from));
            bool last = from + most >= all;
            int start = from;
            float high = Math.Max(least, lines * lineHeight + 2 * RowPadding);
            float top = (high - lines * lineHeight) / 2;
            _items.Add(new FlowItem(high, (canvas, x, y) =>
            {
                if (start == 0 && chip is { } colour) PageInk.Fill(canvas, x, y + top + (lineHeight - ChipSize) / 2, ChipSize, ChipSize, colour, Palette.Ink);
                foreach (TableCell cell in cells)
                {
                    float raised = 0.36f * (PageStyles.Body.Size - cell.Style.Size); // all styles on one baseline
                    PageInk.Lines(canvas, [.. cell.Lines.Skip(start).Take(lines)], cell.Style with { LineHeight = lineHeight }, x + cell.X, y + top + raised, cell.Owner, x + cell.Right);
                    if (cell.WriteTo is { } end) PageInk.Rule(canvas, x + cell.X, y + high - 4, end - cell.X, Palette.ThinInk, 0.5f);
                }

                if (last) PageInk.Rule(canvas, x, y + high, wide ?? width, rule, rule == Palette.Ink ? 0.7f : 0.5f);
            })
            { SpaceBefore = start == 0 ? space : 0, HeadOnNewPage = head });
        }
    }

    private void AddTable(TableBlock block)
    {
        TextStyle style = block.Columns.Length > 6 ? PageStyles.Dense : PageStyles.Body;
        float[] widths = TableWidths.Share(block, style, PageStyles.ColumnHead, width, ColumnGap, ChipSize + 5);
        TagNode table = _section.Add(TagRole.Table);
        int before = _items.Count;
        AddCells([.. block.Columns.Select(c => c.Heading)], block, widths, PageStyles.ColumnHead, null, null, _blockSpace, table.Add(TagRole.Row));
        FlowItem? head = _items.Count == before + 1 && _items[before].Height < height / 4 ? _items[before] with { SpaceBefore = 0 } : null;
        for (int i = before; i < _items.Count; i++) _items[i] = _items[i] with { KeepWithNext = true };
        int first = _items.Count;
        foreach (TableRow row in block.Rows) AddCells([.. row.Cells], block, widths, style, row, head, 0, table.Add(TagRole.Row));
        KeepEnds(first);
    }

    private void AddCells(string[] texts, TableBlock block, float[] widths, TextStyle style, TableRow? row, FlowItem? head, float space, TagNode owner)
    {
        float chipWidth = block.Rows.Any(r => r.Chip is not null) ? ChipSize + 5 : 0;
        var cells = new TableCell[texts.Length];
        float left = 0;
        for (int i = 0; i < texts.Length; i++)
        {
            float indent = i == 0 ? chipWidth : 0;
            float right = left + widths[i];
            TagNode cell = row is null ? owner.Add(TagRole.Head, TagRole.ColumnScope) : owner.Add(TagRole.Cell);
            cells[i] = Cell(texts[i], style, left + indent, right, cell) with
            {
                Right = block.Columns[i].IsNumber ? right : null,
                WriteTo = row is not null && block.Columns[i].IsBlank ? right : null,
            };
            left = right + ColumnGap;
        }

        AddRow(cells, style.LineHeight, row is null ? Palette.Ink : Palette.LinenLine, row?.Chip, space, head);
    }

    // A short table stays whole; of a longer one the first two rows and the last two are not parted, so no row stands alone.
    private void KeepEnds(int first)
    {
        const int longestWhole = 7;
        if (_items.Count - first < 2) return;
        for (int i = first; i < _items.Count - 1 && _items.Count - first <= longestWhole; i++) _items[i] = _items[i] with { KeepWithNext = true };
        _items[first] = _items[first] with { KeepWithNext = true };
        _items[^2] = _items[^2] with { KeepWithNext = true };
    }
}
