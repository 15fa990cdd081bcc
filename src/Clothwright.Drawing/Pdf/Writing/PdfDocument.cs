using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Drawing.Pdf.Tags;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>A tagged PDF document: pages, structure, bookmarks, properties. Written to ISO 32000-1 and ISO 14289-1 (PDF/UA-1).</summary>
/// <remarks>The same pages give the same bytes: no date, path or name of the machine is written unless it is given.</remarks>
internal sealed class PdfDocument
{
    private readonly List<PageCanvas> _pages = [];
    private readonly PdfFonts _fonts = new();
    private readonly PdfPictures _pictures = new();

    /// <summary>Title, maker and the like.</summary>
    public required PdfProperties Properties { get; init; }

    /// <summary>The parts of the document in reading order.</summary>
    public required TagNode Structure { get; init; }

    /// <summary>Headings to go to, in reading order.</summary>
    public ImmutableArray<Bookmark> Bookmarks { get; set; } = [];

    /// <summary>Adds a page.</summary>
    /// <param name="width">Width in points.</param>
    /// <param name="height">Height in points.</param>
    public PageCanvas AddPage(float width, float height)
    {
        var page = new PageCanvas(_pages.Count, width, height, _fonts, _pictures);
        _pages.Add(page);
        return page;
    }

    /// <summary>Writes the document.</summary>
    /// <param name="stream">Where to write; stays open.</param>
    public void Write(Stream stream)
    {
        var objects = new PdfObjects();
        int tree = objects.Reserve();
        int profile = SrgbProfile.Write(objects);
        int[] contents = [.. _pages.Select(p => objects.AddStream("", p.Finish()))];
        string resources = $"<< /Font {_fonts.Write(objects)} /XObject {_pictures.Write(objects)} /ColorSpace << /DefaultRGB [/ICCBased {PdfSyntax.Reference(profile)}] >> >>";
        int shared = objects.Add(resources);
        int[] pages = [.. _pages.Select((p, i) => objects.AddOpen(string.Create(CultureInfo.InvariantCulture, $"<< /Type /Page /Parent {PdfSyntax.Reference(tree)} /MediaBox [0 0 {PdfSyntax.Number(p.Width)} {PdfSyntax.Number(p.Height)}] /Resources {PdfSyntax.Reference(shared)} /Contents {PdfSyntax.Reference(contents[i])} /StructParents {i} /Tabs /S >>")))];
        objects.Set(tree, string.Create(CultureInfo.InvariantCulture, $"<< /Type /Pages /Count {pages.Length} /Kids [{PdfSyntax.References(pages)}] >>"));
        int structure = TagTree.Write(objects, Structure, pages, [.. _pages.Select(p => p.Marks)]);
        int? outline = Outline.Write(objects, Bookmarks, pages);
        int metadata = objects.AddOpenStream("/Type /Metadata /Subtype /XML", Properties.Metadata());
        string bookmarks = outline is { } first ? $" /Outlines {PdfSyntax.Reference(first)} /PageMode /UseOutlines" : "";
        int catalog = objects.Add($"<< /Type /Catalog /Pages {PdfSyntax.Reference(tree)} /Lang {PdfSyntax.Text(Properties.Language)} /MarkInfo << /Marked true >> /StructTreeRoot {PdfSyntax.Reference(structure)}{bookmarks} /PageLabels << /Nums [0 << /S /D >>] >> /ViewerPreferences << /DisplayDocTitle true /PrintScaling /None >> /Metadata {PdfSyntax.Reference(metadata)} >>");
        objects.Write(stream, catalog, objects.Add(Properties.Information()));
    }
}
