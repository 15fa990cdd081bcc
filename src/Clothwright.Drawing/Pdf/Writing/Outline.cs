using System.Collections.Immutable;
using System.Globalization;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>Writes the bookmarks of a document (ISO 32000-1, section 12.3.3).</summary>
internal static class Outline
{
    /// <summary>Writes the bookmarks.</summary>
    /// <param name="objects">Where to write.</param>
    /// <param name="bookmarks">The bookmarks in reading order; those of level 2 belong to the one of level 1 before them.</param>
    /// <param name="pages">Numbers of the pages.</param>
    /// <returns>The number of the outline; null if there are no bookmarks.</returns>
    public static int? Write(PdfObjects objects, ImmutableArray<Bookmark> bookmarks, int[] pages)
    {
        if (bookmarks.IsEmpty) return null;
        int root = objects.Reserve();
        var sections = new List<(Bookmark Section, List<Bookmark> Steps)>();
        foreach (Bookmark bookmark in bookmarks)
        {
            if (bookmark.Level == 1 || sections.Count == 0) sections.Add((bookmark, []));
            else sections[^1].Steps.Add(bookmark);
        }

        int[] numbers = [.. sections.Select(_ => objects.Reserve())];
        for (int i = 0; i < numbers.Length; i++)
        {
            (Bookmark section, List<Bookmark> steps) = sections[i];
            int[] below = [.. steps.Select(_ => objects.Reserve())];
            for (int s = 0; s < below.Length; s++) objects.Set(below[s], Item(steps[s], numbers[i], below, s, pages, ""));
            string closed = below.Length == 0
                ? ""
                : string.Create(CultureInfo.InvariantCulture, $" /First {PdfSyntax.Reference(below[0])} /Last {PdfSyntax.Reference(below[^1])} /Count {-below.Length}");
            objects.Set(numbers[i], Item(section, root, numbers, i, pages, closed));
        }

        objects.Set(root, string.Create(CultureInfo.InvariantCulture, $"<< /Type /Outlines /First {PdfSyntax.Reference(numbers[0])} /Last {PdfSyntax.Reference(numbers[^1])} /Count {numbers.Length} >>"));
        return root;
    }

    private static string Item(Bookmark bookmark, int parent, int[] row, int index, int[] pages, string below)
    {
        string before = index > 0 ? $" /Prev {PdfSyntax.Reference(row[index - 1])}" : "";
        string after = index < row.Length - 1 ? $" /Next {PdfSyntax.Reference(row[index + 1])}" : "";
        return $"<< /Title {PdfSyntax.Text(bookmark.Title)} /Parent {PdfSyntax.Reference(parent)}{before}{after}{below} /Dest [{PdfSyntax.Reference(pages[bookmark.Page])} /XYZ null {PdfSyntax.Number(bookmark.Top)} null] >>";
    }
}
