using System.Collections.Immutable;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Drawing.Charts;
using Clothwright.Drawing.Drafts;
using Clothwright.Drawing.Faces;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Pdf;

/// <summary>Drafts, cloth and warp strip.</summary>
internal sealed partial class HandoutFlow
{
    private const double OneMetres = 0.06;
    private const double SeveralMetres = 0.036;
    private const float TickBand = 15;
    private const double MostCrossingsDrawn = 40_000;
    private static readonly double[] CellMillimetres = [3.2, 2.9, 2.6, 2.35];

    // The largest cells with which the draft fits one page; else sheets in the smallest.
    private void AddDraft(DraftBlock block)
    {
        var colours = new DraftColours(block.EndColours, block.PickColours);
        float room = height - 3 * PageStyles.Heading.LineHeight - CaptionHeight(block.Caption) - _blockSpace;
        ImmutableArray<Figure> sheets = [];
        foreach (double cell in CellMillimetres)
        {
            var style = new DraftStyle { Cell = Length.FromMillimetres(cell), DrawnInFull = 36 };
            sheets = DraftSheet.Pages(block.Draft, colours, style, width, room);
            if (sheets.Length == 1) break;
        }

        for (int i = 0; i < sheets.Length; i++)
        {
            Figure sheet = sheets[i];
            string caption = sheets.Length == 1 ? block.Caption : $"{block.Caption} Sheet {i + 1} of {sheets.Length}.".TrimStart();
            AddPicture(sheet.Height, (canvas, x, y) => FigureCanvas.Draw(canvas, sheet, x, y), caption);
        }
    }

    private void AddCloth(ClothBlock block)
    {
        float gap = 20;
        double pointsPerMetre = 72 / Length.MetresPerInch;
        double across = (width - gap - 2 * TickBand) / 2 / pointsPerMetre;
        if (block.Cloth.Width is { } whole) across = Math.Min(across, whole.Metres);
        double most = MostCrossingsDrawn / (block.Cloth.EndSett.PerMetre * across) / block.Cloth.PickSett.PerMetre;
        double along = Math.Min(_cloths > 1 ? SeveralMetres : OneMetres, most);
        var frame = new ClothFrame(Length.FromMetres(across), Length.FromMetres(along));
        Figure front = ClothPanel.Draw(block.Cloth, Face.Front, frame);
        Figure back = ClothPanel.Draw(block.Cloth, Face.Back, frame);
        AddPicture(front.Height, (canvas, x, y) =>
        {
            FigureCanvas.Draw(canvas, front, x, y);
            FigureCanvas.Draw(canvas, back, x + front.Width + gap, y);
        }, block.Caption);
    }

    private void AddWarpStrip(WarpStripBlock block)
    {
        Figure strip = WarpStrip.Draw(block.Parts, width);
        AddPicture(strip.Height, (canvas, x, y) => FigureCanvas.Draw(canvas, strip, x, y), "", keepWithNext: true);
        _blockSpace = 8;
        AddTable(new TableBlock(
            [new TableColumn(""), new TableColumn("Part, front to back"), new TableColumn("Use"), new TableColumn("Warp", true), new TableColumn("", true)],
            [.. block.Parts.Select((part, i) => new TableRow(
            [
                WarpStrip.Letter(i),
                part.Name,
                WarpStrip.UseInWords(part.Use),
                QuantityText.Format(QuantityKind.Length, part.Length.Metres, UnitStyle.Metric),
                QuantityText.Format(QuantityKind.Length, part.Length.Metres, UnitStyle.Customary),
            ]))]));
    }

    private void AddPicture(float high, Action<SkiaSharp.SKCanvas, float, float> draw, string caption, bool keepWithNext = false)
    {
        bool captioned = caption.Length > 0;
        _items.Add(new FlowItem(high, draw) { SpaceBefore = _blockSpace, KeepWithNext = captioned || keepWithNext });
        if (captioned) AddParagraph(caption, PageStyles.Note, TextWidth, 0, 4);
    }

    private float CaptionHeight(string caption) =>
        4 + PageStyles.Note.LineHeight * (1 + TextWrap.Lines(caption, PageStyles.Note.Face, PageStyles.Note.Size, TextWidth).Count);
}
