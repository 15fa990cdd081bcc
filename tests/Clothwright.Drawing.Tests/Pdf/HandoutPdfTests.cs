using System.Text;
using Clothwright.Core.Publishing;
using Clothwright.Drawing.Pdf;
using Clothwright.TestKit;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using PageSize = Clothwright.Drawing.Pdf.PageSize;

namespace Clothwright.Drawing.Tests.Pdf;

public class HandoutPdfTests
{
    public static TheoryData<string> Sizes => ["A4", "Letter"];

    private static PageSize SizeOf(string name) => name == "A4" ? PageSize.A4 : PageSize.Letter;

    private static byte[] Write(Handout handout, PageSize size)
    {
        using var stream = new MemoryStream();
        HandoutPdf.Write(handout, stream, size);
        return stream.ToArray();
    }

    // In the order in which it is written: a new line wherever the height changes, a bar wherever there is a wide gap.
    private static string TextOf(PdfDocument document)
    {
        var text = new StringBuilder();
        foreach (Page page in document.GetPages())
        {
            text.Append("--- page ").Append(page.Number).Append('\n');
            double? line = null;
            double end = 0;
            foreach (Letter letter in page.Letters)
            {
                double baseline = Math.Round(letter.StartBaseLine.Y, 1);
                if (line is { } y && Math.Abs(y - baseline) > 0.5) text.Append('\n');
                else if (line is not null && Math.Abs(letter.StartBaseLine.X - end) > 4) text.Append(" | ");
                end = letter.EndBaseLine.X;
                line = baseline;
                text.Append(letter.Value);
            }

            text.Append('\n');
        }

        return string.Join('\n', text.ToString().Split('\n').Select(l => l.TrimEnd()));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Pages_have_the_size_of_the_paper(string size)
    {
        using PdfDocument document = PdfDocument.Open(Write(Handouts.ReedbedScarves(), SizeOf(size)));

        (double width, double height) = size == "A4" ? (595.276, 841.890) : (612, 792); // ISO 216: 210 × 297 mm; 8.5 × 11 in; 72 points an inch
        Assert.All(document.GetPages(), p => Assert.Equal(width, p.Width, 1.0));
        Assert.All(document.GetPages(), p => Assert.Equal(height, p.Height, 1.0));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Every_page_says_its_number_and_how_many_there_are(string size)
    {
        using PdfDocument document = PdfDocument.Open(Write(Handouts.Long(60), SizeOf(size)));

        Assert.True(document.NumberOfPages > 2);
        Assert.All(document.GetPages(), p => Assert.Contains($"Page {p.Number} of {document.NumberOfPages}", p.Text, StringComparison.Ordinal));
        Assert.All(document.GetPages().Skip(1), p => Assert.StartsWith("A long one", p.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void Text_can_be_selected_in_reading_order()
    {
        using PdfDocument document = PdfDocument.Open(Write(Handouts.Long(60), PageSize.A4));
        string text = string.Concat(document.GetPages().Select(p => p.Text));

        int[] places = [.. Enumerable.Range(1, 60).Select(i => text.IndexOf($"Paragraph {i}. Wind", StringComparison.Ordinal))];
        Assert.All(places, p => Assert.True(p >= 0));
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void A_handout_reads_as_approved()
    {
        using PdfDocument document = PdfDocument.Open(Write(Handouts.ReedbedScarves(), PageSize.A4));

        Approved.Check(TextOf(document), "reedbed-scarves.txt");
    }

    [Fact]
    public void Only_the_bundled_fonts_are_used_and_all_are_embedded()
    {
        byte[] pdf = Write(Handouts.ReedbedScarves(), PageSize.A4);
        using PdfDocument document = PdfDocument.Open(pdf);

        string[] fonts = [.. document.GetPages().SelectMany(p => p.Letters).Select(l => l.FontName!.Split('+')[^1]).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal(["Caladea-Bold", "OpenSans-Italic", "OpenSans-Regular", "OpenSans-Semibold"], fonts);
        Assert.Equal(fonts.Length, UnpackedPdf.Of(pdf).Split("/FontFile2").Length - 1);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void No_letter_stands_outside_the_margins(string size)
    {
        using PdfDocument document = PdfDocument.Open(Write(Handouts.ReedbedScarves(), SizeOf(size)));

        Assert.All(document.GetPages(), page => Assert.All(page.Letters, l => Assert.True(
            l.StartBaseLine.X >= 50 && l.EndBaseLine.X <= page.Width - 50 && l.StartBaseLine.Y >= 25 && l.StartBaseLine.Y <= page.Height - 25,
            $"'{l.Value}' on page {page.Number} at {l.StartBaseLine}")));
    }

    [Fact]
    public void Properties_name_the_work_and_nothing_of_the_machine()
    {
        byte[] pdf = Write(Handouts.ReedbedScarves(), PageSize.A4);
        using PdfDocument document = PdfDocument.Open(pdf);
        string raw = UnpackedPdf.Of(pdf);

        Assert.Equal("Two reedbed scarves", document.Information.Title);
        Assert.Equal("Saltmarsh Studio", document.Information.Author);
        Assert.Equal("Clothwright", document.Information.Producer);
        Assert.Null(document.Information.CreationDate);
        Assert.DoesNotContain(Repository.Root, raw, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_is_written_only_if_it_is_given()
    {
        using var stream = new MemoryStream();
        HandoutPdf.Write(Handouts.Long(1), stream, PageSize.A4, new DateTimeOffset(2031, 4, 5, 6, 7, 8, TimeSpan.Zero));
        using PdfDocument document = PdfDocument.Open(stream.ToArray());

        Assert.Contains("20310405060708", document.Information.CreationDate!, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_handout_gives_the_same_bytes()
    {
        Assert.Equal(Write(Handouts.ReedbedScarves(), PageSize.Letter), Write(Handouts.ReedbedScarves(), PageSize.Letter));
    }
}
