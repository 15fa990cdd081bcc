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
using Clothwright.Drawing.Pdf.Tags;
using Clothwright.Drawing.Pdf.Writing;

namespace Clothwright.Drawing.Pdf;

/// <summary>Drafts, cloth, strips, scales.</summary>
internal sealed partial class HandoutFlow
{
    private const double LongestMetres = 0.085;
    private const double ShortestMetres = 0.022;
    private const float BelowCloth = 72; // name, ticks and caption
    private const float BelowCloths = 36; // the measure bar
    private const float TickBand = 15;
    private const double PointsPerMetre = 72 / Length.MetresPerInch;
    private const int LongestPartList = 6;
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
            Figure sheet = sheets[i].In(wording);
            string caption = sheets.Length == 1 ? block.Caption : $"{block.Caption} {wording.Tell($"Sheet {i + 1} of {sheets.Length}.")}".TrimStart();
            AddFigure(sheet, $"{sheet.Title}. {caption}", caption);
        }
    }

    private void AddCloth(ClothBlock block)
    {
        float gap = 20;
        double across = (width - gap - 2 * TickBand) / 2 / PointsPerMetre;
        var frame = ClothFrame.Of(block.Cloth, Length.FromMetres(across), Length.FromMetres(ClothLength()));
        var front = new ClothPanel(block.Cloth, Face.Front, frame, wording);
        var back = new ClothPanel(block.Cloth, Face.Back, frame, wording);
        TagNode frontOwner = Picture($"{front.Title}. {block.Caption}");
        TagNode backOwner = Picture($"{back.Title}. {block.Caption}");
        AddPicture(front.Height, (canvas, x, y) =>
        {
            front.Draw(canvas, x, y, frontOwner);
            back.Draw(canvas, x + front.Width + gap, y, backOwner);
        }, block.Caption);
    }

    // The cloths of a handout share what is left of the first page, so that all of them and the measure bar stand on it.
    private double ClothLength()
    {
        if (_clothMetres > 0) return _clothMetres;
        float used = _items.Sum(i => i.Height + i.SpaceBefore) % height;
        float each = (height - used - BelowCloths) / Math.Max(1, _cloths) - BelowCloth;
        return _clothMetres = Math.Clamp(each / PointsPerMetre, ShortestMetres, LongestMetres);
    }

    private void AddWarpStrip(WarpStripBlock block)
    {
        AddFigure(WarpStrip.Draw(block.Parts, width, wording), wording.Tell("The warp as a strip, each part as long as its share; the table below has the same parts."), "", keepWithNext: true);
        int columns = block.Parts.Length > LongestPartList ? 2 : 1;
        float wide = (width - (columns - 1) * ColumnSpace) / columns;
        TagNode table = _section.Add(TagRole.Table);
        float space = 8;
        for (int i = 0; i < block.Parts.Length; i++)
        {
            AddPart(WarpStrip.Letter(i), block.Parts[i], table.Add(TagRole.Row), wide, columns, space);
            space = 0;
        }
    }

    private void AddPart(string letter, WarpPart part, TagNode row, float wide, int columns, float space)
    {
        const float number = 47;
        string metric = QuantityText.Format(QuantityKind.Length, part.Length.Metres, UnitStyle.Metric);
        string customary = wording.Tell(QuantityText.Format(QuantityKind.Length, part.Length.Metres, UnitStyle.Customary));
        int first = _items.Count;
        AddRow(
            [
                Cell(letter, PageStyles.Dense with { Face = FontFace.Strong }, 0, 22, row.Add(TagRole.Head, TagRole.RowScope)),
                Cell(part.Name, PageStyles.Dense, 22, wide - 2 * number - 8, row.Add(TagRole.Cell)),
                Cell(metric, PageStyles.Dense, wide - 2 * number, wide - number, row.Add(TagRole.Cell)) with { Right = wide - number },
                Cell(customary, PageStyles.Dense, wide - number, wide, row.Add(TagRole.Cell)) with { Right = wide },
            ],
            PageStyles.Dense.LineHeight, Palette.LinenLine, null, space, null, wide);
        for (int i = first; i < _items.Count; i++) _items[i] = _items[i] with { Columns = columns };
    }

    private void AddSettScale(SettScaleBlock block)
    {
        Figure scale = SettScale.Draw(block, width, wording);
        AddFigure(scale, wording.Tell(SettScale.InWords(block)), "");
    }

    private void AddMeasureBar(MeasureBarBlock block)
    {
        Figure bar = MeasureBar.Draw(wording);
        TagNode owner = Picture(wording.Tell("A bar 10 cm long above and 4 inches below."));
        TagNode words = _section.Add(TagRole.Paragraph);
        float left = bar.Width + 20;
        List<TextRun> lines = Wrap(block.Text, PageStyles.Note, width - left);
        float high = Math.Max(bar.Height, lines.Count * PageStyles.Note.LineHeight);
        if (high > height / 2)
        {
            AddFigure(bar, owner.Alternative, block.Text);
            return;
        }

        AddPicture(high, (canvas, x, y) =>
        {
            PageInk.Figure(canvas, bar, x, y, owner);
            PageInk.Lines(canvas, lines, PageStyles.Note, x + left, y, words);
        }, "");
    }

    private void AddFigure(Figure figure, string alternative, string caption, bool keepWithNext = false)
    {
        TagNode owner = Picture(alternative);
        AddPicture(figure.Height, (canvas, x, y) => PageInk.Figure(canvas, figure, x, y, owner), caption, keepWithNext);
    }

    private TagNode Picture(string alternative) => _section.Add(TagRole.Picture, alternative: PrintableText.Clean(alternative));

    private void AddPicture(float high, Action<PageCanvas, float, float> draw, string caption, bool keepWithNext = false)
    {
        bool captioned = caption.Length > 0;
        _items.Add(new FlowItem(high, draw) { SpaceBefore = _blockSpace, KeepWithNext = captioned || keepWithNext });
        if (captioned) AddParagraph(caption, PageStyles.Note, TextWidth, 0, 4, _section.Add(TagRole.Paragraph));
    }

    private float CaptionHeight(string caption) =>
        4 + PageStyles.Note.LineHeight * (1 + Wrap(caption, PageStyles.Note, TextWidth).Count);
}
