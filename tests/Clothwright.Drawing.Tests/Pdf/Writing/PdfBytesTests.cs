using System.Globalization;
using System.Text;
using Clothwright.Drawing.Pdf.Writing;
using CsCheck;

namespace Clothwright.Drawing.Tests.Pdf.Writing;

public class PdfBytesTests
{
    private static string Written(double value, bool hundredths = true) => Encoding.ASCII.GetString(new PdfBytes().Number(value, hundredths).Written);

    [Theory]
    [InlineData(0, "0 ")]
    [InlineData(12, "12 ")]
    [InlineData(-0.5, "-0.5 ")]
    [InlineData(3.005, "3 ")] // to the even hundredth
    [InlineData(3.05, "3.05 ")]
    [InlineData(595.276, "595.28 ")]
    [InlineData(-0.001, "0 ")]
    public void Numbers_are_written_to_a_hundredth_without_noughts_at_the_end(double value, string expected) => Assert.Equal(expected, Written(value));

    [Fact]
    public void A_number_reads_back_to_half_of_its_last_place()
    {
        Gen.Double[-5000, 5000].Sample(v =>
        {
            Assert.Equal(v, double.Parse(Written(v), CultureInfo.InvariantCulture), 0.00501);
            Assert.Equal(v, double.Parse(Written(v, hundredths: false), CultureInfo.InvariantCulture), 0.0000501);
        });
    }

    [Theory]
    [InlineData("plain", "(plain)")]
    [InlineData("a (b) \\ c", "(a \\(b\\) \\\\ c)")]
    [InlineData("2 × 3", "<FEFF0032002000D700200033>")] // UTF-16, first byte first, after its mark
    public void Texts_are_escaped_or_written_as_utf_16(string text, string expected) => Assert.Equal(expected, PdfSyntax.Text(text));
}
