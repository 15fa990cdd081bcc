using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Publishing;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Writing;

namespace Clothwright.Drawing.Pdf;

/// <summary>Writes a handout as PDF: vector drawing, embedded fonts, text that can be selected and read aloud.</summary>
/// <remarks>The same handout gives the same bytes: no date, path or name of the machine is written.</remarks>
public static class HandoutPdf
{
    private const float SideMargin = 57;
    private const float TopMargin = 57;
    private const float BottomMargin = 60;
    private const float BookmarkSpace = 8;

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
        var flow = new HandoutFlow(width, height, handout.Wording);
        List<List<PlacedItem>> pages = PageFlow.Paginate(flow.Compose(handout), height);
        var document = new PdfDocument { Properties = Properties(handout, made), Structure = flow.Structure };
        var bookmarks = ImmutableArray.CreateBuilder<Bookmark>();
        for (int i = 0; i < pages.Count; i++)
        {
            PageCanvas canvas = document.AddPage(size.WidthPoints, size.HeightPoints);
            if (i > 0) DrawRunningTitle(canvas, handout.Title, width);
            foreach (PlacedItem placed in pages[i])
            {
                float y = TopMargin + placed.Y;
                canvas.IsFurniture = placed.IsAgain;
                placed.Item.Draw(canvas, SideMargin + Left(placed, width), y);
                canvas.IsFurniture = false;
                if (placed.Item.Bookmark.Length > 0) bookmarks.Add(new Bookmark(PrintableText.Clean(placed.Item.Bookmark), placed.Item.BookmarkLevel, i, size.HeightPoints - y + BookmarkSpace));
            }

            DrawFoot(canvas, handout, size, i + 1, pages.Count);
        }

        document.Bookmarks = bookmarks.ToImmutable();
        document.Write(stream);
    }

    private static float Left(PlacedItem placed, float width) =>
        placed.Column * (width + HandoutFlow.ColumnSpace) / placed.Item.Columns;

    private static PdfProperties Properties(Handout handout, DateTimeOffset? made) => new(PrintableText.Clean(handout.Title), handout.Wording.Language)
    {
        Author = PrintableText.Clean(handout.Author),
        Subject = PrintableText.Clean(handout.Makes),
        Made = made,
    };

    private static void DrawRunningTitle(PageCanvas canvas, string title, float width)
    {
        TextStyle style = PageStyles.Furniture;
        PageInk.Text(canvas, TextWrap.Fitted(title, style, width), style, SideMargin, TopMargin - 30, null);
        PageInk.Rule(canvas, SideMargin, TopMargin - 15, width, Palette.LinenLine);
    }

    private static void DrawFoot(PageCanvas canvas, Handout handout, PageSize size, int page, int pages)
    {
        TextStyle style = PageStyles.Furniture;
        float y = size.HeightPoints - BottomMargin + 22;
        string maker = string.Join(", ", new[] { handout.Author, handout.Edition }.Where(t => t.Length > 0));
        float width = size.WidthPoints - 2 * SideMargin;
        var number = new TextRun(handout.Wording.Tell(string.Create(CultureInfo.InvariantCulture, $"Page {page} of {pages}")), style.Face, style.Size);
        if (maker.Length > 0) PageInk.Text(canvas, TextWrap.Fitted(maker, style, width - number.Width - 20), style, SideMargin, y, null);
        PageInk.Text(canvas, number, style, size.WidthPoints - SideMargin - number.Width, y, null);
    }
}
