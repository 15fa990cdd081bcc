using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Pdf;

/// <summary>Tables and key figures.</summary>
internal sealed partial class HandoutFlow
{
    private const float ColumnGap = 14;
    private const float RowPadding = 2.2f;
    private const float ChipSize = 9;

    private void AddFigures(FiguresBlock block)
    {
        float labelWidth = width * 0.36f;
        float metricWidth = width * 0.20f;
        float customaryWidth = width * 0.20f;
        float noteWidth = width - labelWidth - metricWidth - customaryWidth;
        float space = _blockSpace;
        int first = _items.Count;
        foreach (HandoutFigure figure in block.Figures)
        {
            List<TextRun> label = Wrap(figure.Label, PageStyles.Body, labelWidth - ColumnGap);
            List<TextRun> metric = Wrap(figure.Metric, PageStyles.Strong, metricWidth - ColumnGap);
            bool same = figure.Customary == figure.Metric;
            List<TextRun> customary = same ? [] : Wrap(figure.Customary, PageStyles.Body, customaryWidth - ColumnGap);
            List<TextRun> note = Wrap(figure.Note, PageStyles.Note, noteWidth);
            AddRow(
                [(label, PageStyles.Body, 0, null), (metric, PageStyles.Strong, labelWidth, null), (customary, PageStyles.Body, labelWidth + metricWidth, null),
                    (note, PageStyles.Note, labelWidth + metricWidth + customaryWidth, null)],
                PageStyles.Body.LineHeight, Palette.LinenLine, null, space, null);
            space = 0;
        }

        KeepEnds(first);
    }

    // A row of wrapped cells; one taller than most of a page is cut between lines, and goes on over the page.
    private void AddRow(
        (List<TextRun> Lines, TextStyle Style, float X, float? Right)[] cells, float lineHeight, SrgbColour rule, SrgbColour? chip, float space, FlowItem? head)
    {
        int most = Math.Max(1, (int)(height * 0.7f / lineHeight));
        int all = cells.Max(c => c.Lines.Count);
        for (int from = 0; from == 0 || from < all; from += most)
        {
            int lines = Math.Max(1, Math.Min(most, all - from));
            bool last = from + most >= all;
            int start = from;
            float high = lines * lineHeight + 2 * RowPadding;
            _items.Add(new FlowItem(high, (canvas, x, y) =>
            {
                if (start == 0 && chip is { } colour) PageInk.Fill(canvas, x, y + RowPadding + (lineHeight - ChipSize) / 2, ChipSize, ChipSize, colour, Palette.Ink);
                foreach ((List<TextRun> text, TextStyle style, float left, float? right) in cells)
                {
                    float raised = 0.36f * (PageStyles.Body.Size - style.Size); // all styles on one baseline
                    PageInk.Lines(canvas, [.. text.Skip(start).Take(lines)], style with { LineHeight = lineHeight }, x + left, y + RowPadding + raised, x + right);
                }

                if (last) PageInk.Rule(canvas, x, y + high, width, rule, head is null && chip is null && rule == Palette.Ink ? 0.7f : 0.5f);
            })
            { SpaceBefore = start == 0 ? space : 0, HeadOnNewPage = head });
        }
    }

    private void AddTable(TableBlock block)
    {
        TextStyle style = block.Columns.Length > 6 ? PageStyles.Dense : PageStyles.Body;
        float[] widths = TableWidths.Share(block, style, PageStyles.ColumnHead, width, ColumnGap, ChipSize + 5);
        int before = _items.Count;
        AddCells([.. block.Columns.Select(c => c.Heading)], block, widths, PageStyles.ColumnHead, null, Palette.Ink, null, _blockSpace);
        FlowItem? head = _items.Count == before + 1 && _items[before].Height < height / 4 ? _items[before] with { SpaceBefore = 0 } : null;
        for (int i = before; i < _items.Count; i++) _items[i] = _items[i] with { KeepWithNext = true };
        int first = _items.Count;
        foreach (TableRow row in block.Rows) AddCells([.. row.Cells], block, widths, style, row, Palette.LinenLine, head, 0);
        KeepEnds(first);
    }

    private void AddCells(string[] cells, TableBlock block, float[] widths, TextStyle style, TableRow? row, SrgbColour rule, FlowItem? head, float space)
    {
        float chipWidth = block.Rows.Any(r => r.Chip is not null) ? ChipSize + 5 : 0;
        var placed = new (List<TextRun>, TextStyle, float, float?)[cells.Length];
        float left = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            float indent = i == 0 ? chipWidth : 0;
            placed[i] = (Wrap(cells[i], style, widths[i] - indent), style, left + indent, block.Columns[i].IsNumber ? left + widths[i] : null);
            left += widths[i] + ColumnGap;
        }

        AddRow(placed, style.LineHeight, rule, row?.Chip, space, head);
    }

    // The first two rows and the last two of a table are not parted, so no row stands alone.
    private void KeepEnds(int first)
    {
        if (_items.Count - first < 2) return;
        _items[first] = _items[first] with { KeepWithNext = true };
        _items[^2] = _items[^2] with { KeepWithNext = true };
    }

    private static List<TextRun> Wrap(string text, TextStyle style, float wide) => TextWrap.Lines(text, style.Face, style.Size, wide);
}
