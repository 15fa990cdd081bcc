using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using SkiaSharp;

namespace Clothwright.Drawing.Pdf;

/// <summary>Writes a handout as PDF: vector drawing, embedded fonts, text that can be selected.</summary>
/// <remarks>The same handout gives the same bytes: no date, path or name of the machine is written.</remarks>
public static class HandoutPdf
{
    private const float SideMargin = 57;
    private const float TopMargin = 57;
    private const float BottomMargin = 60;

    /// <summary>Writes the handout.</summary>
    /// <param name="handout">The handout.</param>
    /// <param name="stream">Where to write; stays open.</param>
    /// <param name="size">The paper.</param>
    /// <param name="made">When it was made, written into the document's properties; not written if left out.</param>
    public static void Write(Handout handout, Stream stream, PageSize size, DateTimeOffset? made = null)
    {
        ArgumentNullException.ThrowIfNull(handout);
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(size);
        float width = size.WidthPoints - 2 * SideMargin;
        float height = size.HeightPoints - TopMargin - BottomMargin;
        List<List<PlacedItem>> pages = PageFlow.Paginate(new HandoutFlow(width, height).Compose(handout), height);
        using SKDocument document = SKDocument.CreatePdf(stream, Properties(handout, made));
        for (int i = 0; i < pages.Count; i++)
        {
            SKCanvas canvas = document.BeginPage(size.WidthPoints, size.HeightPoints);
            if (i > 0) DrawRunningTitle(canvas, handout.Title, width);
            foreach (PlacedItem placed in pages[i]) placed.Item.Draw(canvas, SideMargin, TopMargin + placed.Y);
            DrawFoot(canvas, handout, size, i + 1, pages.Count);
            document.EndPage();
        }

        document.Close();
    }

    private static SKDocumentPdfMetadata Properties(Handout handout, DateTimeOffset? made)
    {
        SKDocumentPdfMetadata properties = SKDocumentPdfMetadata.Default;
        properties.Title = PrintableText.Clean(handout.Title);
        properties.Author = PrintableText.Clean(handout.Author);
        properties.Subject = PrintableText.Clean(handout.Makes);
        properties.Creator = "Clothwright";
        properties.Producer = "Clothwright";
        properties.Creation = made?.UtcDateTime;
        properties.Modified = made?.UtcDateTime;
        return properties;
    }

    private static void DrawRunningTitle(SKCanvas canvas, string title, float width)
    {
        TextStyle style = PageStyles.Furniture;
        PageInk.Text(canvas, Shortened(title, style, width), style, SideMargin, TopMargin - 30);
        PageInk.Rule(canvas, SideMargin, TopMargin - 15, width, Palette.LinenLine);
    }

    private static void DrawFoot(SKCanvas canvas, Handout handout, PageSize size, int page, int pages)
    {
        TextStyle style = PageStyles.Furniture;
        float y = size.HeightPoints - BottomMargin + 22;
        string maker = string.Join(", ", new[] { handout.Author, handout.Edition }.Where(t => t.Length > 0));
        float width = size.WidthPoints - 2 * SideMargin;
        var number = new TextRun(string.Create(CultureInfo.InvariantCulture, $"Page {page} of {pages}"), style.Face, style.Size);
        if (maker.Length > 0) PageInk.Text(canvas, Shortened(maker, style, width - number.Width - 20), style, SideMargin, y);
        PageInk.Text(canvas, number, style, size.WidthPoints - SideMargin - number.Width, y);
    }

    // The first line of a text, with three dots if there is more.
    private static TextRun Shortened(string text, TextStyle style, float width)
    {
        List<TextRun> lines = TextWrap.Lines(text, style.Face, style.Size, width - 10);
        return lines.Count switch
        {
            0 => new TextRun("", style.Face, style.Size),
            1 => lines[0],
            _ => new TextRun(lines[0].Text + "…", style.Face, style.Size),
        };
    }
}
