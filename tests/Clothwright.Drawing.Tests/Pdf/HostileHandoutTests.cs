using Clothwright.Core.Publishing;
using Clothwright.Drawing.Pdf;
using UglyToad.PdfPig;

namespace Clothwright.Drawing.Tests.Pdf;

public class HostileHandoutTests
{
    public static TheoryData<string> Texts =>
    [
        "<b>bold</b> & <script>alert('x')</script> ]]> %PDF-1.4 endobj (unbalanced \\",
        "\u202Etfel ot thgir\u202C \u200Fmarks\u2066\u2069 \u05D0\u05D1\u05D2",
        "a\0b\u0007c\u001Bd\uD83De\uFFFF",
        "\U0001F9F6\U0001F9F6 yarn \u4E00\u4E8C",
        new string('W', 3000),
        string.Concat(Enumerable.Repeat("very long words ", 800)),
        "",
        "   ",
    ];

    [Theory]
    [MemberData(nameof(Texts))]
    public void Any_text_in_any_place_gives_a_sound_document(string text)
    {
        foreach (PageSize size in (ReadOnlySpan<PageSize>)[PageSize.A4, PageSize.Letter])
        {
            using var stream = new MemoryStream();
            HandoutPdf.Write(Handouts.Hostile(text), stream, size);
            using PdfDocument document = PdfDocument.Open(stream.ToArray());

            Assert.All(document.GetPages(), page => Assert.All(page.Letters, l => Assert.True(
                l.StartBaseLine.X >= 40 && l.EndBaseLine.X <= page.Width - 30 && l.StartBaseLine.Y >= 20 && l.StartBaseLine.Y <= page.Height - 20,
                $"'{l.Value}' on page {page.Number} of {size.Name} at {l.StartBaseLine} to {l.EndBaseLine}")));
        }
    }

    [Fact]
    public void Markup_in_a_name_is_shown_as_it_is_written()
    {
        const string name = "<i>tide</i> & marsh";
        using var stream = new MemoryStream();
        HandoutPdf.Write(new Handout(name, "", []), stream, PageSize.A4);
        using PdfDocument document = PdfDocument.Open(stream.ToArray());

        Assert.StartsWith(name, document.GetPage(1).Text, StringComparison.Ordinal);
        Assert.Equal(name, document.Information.Title);
    }
}
