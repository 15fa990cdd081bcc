using System.Globalization;
using System.Text;
using Clothwright.Drawing.Pdf.Writing;

namespace Clothwright.Drawing.Pdf.Tags;

/// <summary>Writes the structure of a document: the parts in reading order, and for each page which stretch belongs to which part.</summary>
internal static class TagTree
{
    /// <summary>Writes the tree.</summary>
    /// <param name="objects">Where to write.</param>
    /// <param name="document">The root of the parts.</param>
    /// <param name="pages">Numbers of the pages.</param>
    /// <param name="marksPerPage">Stretches of each page.</param>
    /// <returns>The number of the tree's root.</returns>
    public static int Write(PdfObjects objects, TagNode document, IReadOnlyList<int> pages, IReadOnlyList<int> marksPerPage)
    {
        int root = objects.Reserve();
        int[][] owners = [.. marksPerPage.Select(count => new int[count])];
        int first = Write(objects, document, root, pages, owners);
        var parents = new StringBuilder();
        for (int page = 0; page < owners.Length; page++)
        {
            parents.Append(CultureInfo.InvariantCulture, $"{page} [{PdfSyntax.References(owners[page])}] ");
        }

        int parentTree = objects.Add($"<< /Nums [{parents}] >>");
        string next = owners.Length.ToString(CultureInfo.InvariantCulture);
        objects.Set(root, $"<< /Type /StructTreeRoot /K [{PdfSyntax.Reference(first)}] /ParentTree {PdfSyntax.Reference(parentTree)} /ParentTreeNextKey {next} >>");
        return root;
    }

    private static int Write(PdfObjects objects, TagNode node, int parent, IReadOnlyList<int> pages, int[][] owners)
    {
        int number = objects.Reserve();
        int? page = node.Marks.Count > 0 ? node.Marks[0].Page : null;
        var kids = new List<string>();
        foreach ((int at, int mark) in node.Marks)
        {
            owners[at][mark] = number;
            string id = mark.ToString(CultureInfo.InvariantCulture);
            kids.Add(at == page ? id : $"<< /Type /MCR /Pg {PdfSyntax.Reference(pages[at])} /MCID {id} >>");
        }

        // A cell without words keeps its column, and so does its row; anything else without a place on a page is left out.
        foreach (TagNode part in node.Parts.Where(p => p.IsDrawn || p.Role is TagRole.Row or TagRole.Cell or TagRole.Head))
        {
            kids.Add(PdfSyntax.Reference(Write(objects, part, number, pages, owners)));
        }

        var body = new StringBuilder($"<< /Type /StructElem /S /{node.Role} /P {PdfSyntax.Reference(parent)}");
        if (page is { } own) body.Append(CultureInfo.InvariantCulture, $" /Pg {PdfSyntax.Reference(pages[own])}");
        if (kids.Count > 0) body.Append(CultureInfo.InvariantCulture, $" /K [{string.Join(' ', kids)}]");
        if (node.Alternative.Length > 0) body.Append(CultureInfo.InvariantCulture, $" /Alt {PdfSyntax.Text(node.Alternative)}");
        if (node.Attributes.Length > 0) body.Append(CultureInfo.InvariantCulture, $" /A << {node.Attributes} >>");
        if (node.Place is { } box)
        {
            body.Append(CultureInfo.InvariantCulture, $" /A << /O /Layout /Placement /Block /BBox [{PdfSyntax.Number(box.X)} {PdfSyntax.Number(box.Y)} {PdfSyntax.Number(box.X + box.Width)} {PdfSyntax.Number(box.Y + box.Height)}] >>");
        }

        objects.Set(number, body.Append(" >>").ToString());
        return number;
    }
}
