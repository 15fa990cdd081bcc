using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using SkiaSharp;

namespace Clothwright.Drawing.Pdf;

/// <summary>Tables and key figures.</summary>
internal sealed partial class HandoutFlow
{
    private const float ColumnGap = 14;
    private const float RowPadding = 2.6f;
    private const float ChipSize = 9;

    private void AddFigures(FiguresBlock block)
    {
        float labelWidth = width * 0.36f;
        float metricWidth = width * 0.20f;
        float customaryWidth = width * 0.20f;
        float noteWidth = width - labelWidth - metricWidth - customaryWidth;
        float space = _blockSpace;
        foreach (HandoutFigure figure in block.Figures)
        {
            List<TextRun> label = Wrap(figure.Label, PageStyles.Body, labelWidth - ColumnGap);
            List<TextRun> metric = Wrap(figure.Metric, PageStyles.Strong, metricWidth - ColumnGap);
            bool same = figure.Customary == figure.Metric;
            List<TextRun> customary = same ? [] : Wrap(figure.Customary, PageStyles.Body, customaryWidth - ColumnGap);
            List<TextRun> note = Wrap(figure.Note, PageStyles.Note, noteWidth);
            float high = 2 * RowPadding + Math.Max(
                PageStyles.Body.LineHeight * Math.Max(label.Count, Math.Max(metric.Count, customary.Count)),
                PageStyles.Note.LineHeight * note.Count);
            _items.Add(new FlowItem(high, (canvas, x, y) =>
            {
                float top = y + RowPadding;
                PageInk.Lines(canvas, label, PageStyles.Body, x, top);
                PageInk.Lines(canvas, metric, PageStyles.Strong, x + labelWidth, top);
                PageInk.Lines(canvas, customary, PageStyles.Body, x + labelWidth + metricWidth, top);
                PageInk.Lines(canvas, note, PageStyles.Note, x + labelWidth + metricWidth + customaryWidth, top + 1.2f);
                PageInk.Rule(canvas, x, y + high, width, Palette.LinenLine, 0.5f);
            }) { SpaceBefore = space });
            space = 0;
        }

        KeepEnds(block.Figures.Length);
    }

    private void AddTable(TableBlock block)
    {
        TextStyle style = PageStyles.Body;
        float[] widths = TableWidths.Share(block, style, PageStyles.ColumnHead, width, ColumnGap, ChipSize + 5);
        FlowItem head = Row([.. block.Columns.Select(c => c.Heading)], block, widths, PageStyles.ColumnHead, null, Palette.Ink);
        _items.Add(head with { SpaceBefore = _blockSpace, KeepWithNext = true });
        foreach (TableRow row in block.Rows)
        {
            _items.Add(Row([.. row.Cells], block, widths, style, row, Palette.LinenLine) with { HeadOnNewPage = head });
        }

        KeepEnds(block.Rows.Length);
    }

    private FlowItem Row(string[] cells, TableBlock block, float[] widths, TextStyle style, TableRow? row, Clothwright.Core.Colours.SrgbColour rule)
    {
        bool chips = block.Rows.Any(r => r.Chip is not null);
        float chipWidth = chips ? ChipSize + 5 : 0;
        List<TextRun>[] wrapped = [.. cells.Select((cell, i) => Wrap(cell, style, widths[i] - (i == 0 ? chipWidth : 0)))];
        float high = wrapped.Max(c => c.Count) * style.LineHeight + 2 * RowPadding;
        return new FlowItem(high, (canvas, x, y) =>
        {
            float left = x;
            for (int i = 0; i < wrapped.Length; i++)
            {
                float indent = i == 0 ? chipWidth : 0;
                if (i == 0 && row?.Chip is { } chip) PageInk.Fill(canvas, left, y + RowPadding + (style.LineHeight - ChipSize) / 2, ChipSize, ChipSize, chip, Palette.Ink);
                float? right = block.Columns[i].IsNumber ? left + widths[i] : null;
                PageInk.Lines(canvas, wrapped[i], style, left + indent, y + RowPadding, right);
                left += widths[i] + ColumnGap;
            }

            PageInk.Rule(canvas, x, y + high, width, rule, row is null ? 0.7f : 0.5f);
        });
    }

    // The first two rows and the last two of a table are not parted, so no row stands alone.
    private void KeepEnds(int rows)
    {
        if (rows < 2) return;
        int first = _items.Count - rows;
        _items[first] = _items[first] with { KeepWithNext = true };
        _items[^2] = _items[^2] with { KeepWithNext = true };
    }

    private static List<TextRun> Wrap(string text, TextStyle style, float wide) => TextWrap.Lines(text, style.Face, style.Size, wide);
}
