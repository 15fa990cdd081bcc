using System.Text.RegularExpressions;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Drawing.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using PageSize = Clothwright.Drawing.Pdf.PageSize;

namespace Clothwright.Drawing.Tests.Pdf;

/// <summary>What a screen reader needs: ISO 14289-1 (PDF/UA-1), clauses 7.1 to 7.5, from memory of the standard.</summary>
public partial class TaggedHandoutTests
{
    private static readonly Lazy<byte[]> Pdf = new(() => Write(Handouts.ReedbedScarves()));

    private static readonly Lazy<string> Unpacked = new(() => UnpackedPdf.Of(Pdf.Value));

    private static byte[] Write(Handout handout)
    {
        using var stream = new MemoryStream();
        HandoutPdf.Write(handout, stream, PageSize.A4);
        return stream.ToArray();
    }

    [GeneratedRegex(@"<< /Type /StructElem /S /(?<role>\w+)(?<rest>.*)", RegexOptions.None)]
    private static partial Regex Element();

    [GeneratedRegex(@"/Artifact BMC|/\w+ <</MCID (?<mark>\d+)>> BDC|EMC|\b(?:Tj|TJ|f|S)\b(?=\s)", RegexOptions.None)]
    private static partial Regex Operator();

    [GeneratedRegex(@"\((?:[^()\\]|\\.)*\)|<[0-9A-Fa-f]*>", RegexOptions.None)]
    private static partial Regex StringOperand();

    [Theory]
    [InlineData("/MarkInfo << /Marked true >>")]
    [InlineData("/Lang (en)")]
    [InlineData("/DisplayDocTitle true")]
    [InlineData("/PrintScaling /None")]
    [InlineData("/StructTreeRoot ")]
    [InlineData("/PageLabels ")]
    [InlineData("/Tabs /S")]
    [InlineData("http://www.aiim.org/pdfua/ns/id/")]
    [InlineData("/DefaultRGB [/ICCBased ")]
    public void The_document_says_that_it_is_tagged_and_how_it_is_meant(string syntax) =>
        Assert.Contains(syntax, Unpacked.Value, StringComparison.Ordinal);

    [Fact]
    public void Everything_drawn_belongs_to_a_part_of_the_document_or_is_furniture()
    {
        IReadOnlyList<string> pages = UnpackedPdf.PageContents(Pdf.Value);

        Assert.NotEmpty(pages);
        foreach (string page in pages)
        {
            int depth = 0;
            int drawn = 0;
            foreach (string operation in Operator().Matches(StringOperand().Replace(page, "()")).Select(m => m.Value))
            {
                if (operation.EndsWith("BMC", StringComparison.Ordinal) || operation.EndsWith("BDC", StringComparison.Ordinal)) depth++;
                else if (operation == "EMC") depth--;
                else drawn++;
                Assert.InRange(depth, operation == "EMC" || operation.EndsWith('C') ? 0 : 1, 1);
            }

            Assert.Equal(0, depth);
            Assert.True(drawn > 0);
        }
    }

    [Fact]
    public void Every_mark_on_a_page_has_its_part_of_the_document()
    {
        int marks = UnpackedPdf.PageContents(Pdf.Value).Sum(p => Operator().Matches(p).Count(m => m.Groups["mark"].Success));
        string parents = Regex.Match(Unpacked.Value, @"<< /Nums \[0 \[(?<all>.*)\] \] >>", RegexOptions.None, TimeSpan.FromSeconds(5)).Groups["all"].Value;

        Assert.True(marks > 50);
        Assert.Equal(marks, parents.Split(" 0 R").Length - 1);
        Assert.DoesNotContain(" 0 0 R", $" {parents}", StringComparison.Ordinal);
    }

    [Fact]
    public void Headings_come_in_order_below_one_title()
    {
        string[] roles = [.. Element().Matches(Unpacked.Value).Select(m => m.Groups["role"].Value)];

        Assert.Equal(1, roles.Count(r => r == "H1"));
        Assert.Equal(Handouts.ReedbedScarves().Sections.Length, roles.Count(r => r == "H2"));
        Assert.Equal(2 + 2, roles.Count(r => r == "H3")); // two steps, two groups of workings
        Assert.Equal(roles.Count(r => r == "LI"), roles.Count(r => r == "LBody"));
    }

    [Fact]
    public void Pictures_have_words_and_heads_of_tables_a_direction()
    {
        Match[] elements = [.. Element().Matches(Unpacked.Value).Cast<Match>()];
        Match[] pictures = [.. elements.Where(e => e.Groups["role"].Value == "Figure")];
        Match[] heads = [.. elements.Where(e => e.Groups["role"].Value == "TH")];

        Assert.Equal(2 + 1 + 1 + 1 + 1 + 1, pictures.Length); // front, back, bar, scale, draft, winding, strip
        Assert.All(pictures, p => Assert.Matches(@"/Alt [(<]\S", p.Groups["rest"].Value));
        Assert.All(pictures, p => Assert.Contains("/BBox [", p.Groups["rest"].Value, StringComparison.Ordinal));
        Assert.NotEmpty(heads);
        Assert.All(heads, h => Assert.Matches("/Scope /(Column|Row)", h.Groups["rest"].Value));
    }

    [Fact]
    public void Rows_of_a_table_have_as_many_cells_as_its_head()
    {
        var table = new TableBlock([new("Yarn"), new("Warp", true)], [new(["tide", "1"]), new(["", ""]), new(["marsh", "2"])]);
        string unpacked = UnpackedPdf.Of(Write(new Handout("Cells", "", [new("Table", [table])])));
        string[] roles = [.. Element().Matches(unpacked).Select(m => m.Groups["role"].Value)];

        Assert.Equal(2, roles.Count(r => r == "TH"));
        Assert.Equal(6, roles.Count(r => r == "TD"));
    }

    [Fact]
    public void A_head_said_again_on_the_next_page_is_furniture()
    {
        var table = new TableBlock([new("Yarn, wound")], [.. Enumerable.Range(1, 90).Select(i => new TableRow([$"turn {i}"]))]);
        byte[] pdf = Write(new Handout("Heads", "", [new("Table", [table])]));
        using PdfDocument document = PdfDocument.Open(pdf);

        Assert.All(document.GetPages(), p => Assert.Contains("Yarn, wound", p.Text, StringComparison.Ordinal));
        Assert.True(document.NumberOfPages > 1);
        Assert.Single(Element().Matches(UnpackedPdf.Of(pdf)), m => m.Groups["role"].Value == "TH");
    }

    [Fact]
    public void Bookmarks_lead_to_sections_and_steps()
    {
        using PdfDocument document = PdfDocument.Open(Pdf.Value);

        Assert.True(document.TryGetBookmarks(out Bookmarks? bookmarks));
        Assert.Equal(Handouts.ReedbedScarves().Sections.Select(s => s.Heading), bookmarks!.Roots.Select(r => r.Title));
        BookmarkNode steps = bookmarks.Roots.Single(r => r.Title == "Step by step");
        Assert.Equal(["1 Wind", "2 Thread"], steps.Children.Select(c => c.Title));
        int page = Assert.IsType<DocumentBookmarkNode>(steps.Children[0]).PageNumber;
        Assert.Contains("Wind the warp in one chain", document.GetPage(page).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sentence_over_two_lines_keeps_its_blank()
    {
        using PdfDocument document = PdfDocument.Open(Write(Handouts.Long(1)));

        Assert.Contains("Tie the cross, and tie the warp firmly every metre before you take it off. Wind the warp", document.GetPage(1).Text, StringComparison.Ordinal);
    }
}
