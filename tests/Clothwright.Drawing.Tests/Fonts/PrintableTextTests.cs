using System.Text;
using System.Text.RegularExpressions;
using Clothwright.Drawing.Fonts;
using Clothwright.TestKit;

namespace Clothwright.Drawing.Tests.Fonts;

public class PrintableTextTests
{
    [Theory]
    [InlineData("tide\tblue\r\nmarsh", "tide blue marsh")]
    [InlineData("  two   blanks  ", "two blanks")]
    [InlineData("\u202Ereversed\u202C", "reversed")]
    [InlineData("right\u200Fto\u200Eleft", "righttoleft")]
    [InlineData("nul\0bell\a", "nul bell")]
    public void What_cannot_be_seen_is_left_out(string text, string expected)
    {
        Assert.Equal(expected, PrintableText.Clean(text));
    }

    [Fact]
    public void Half_a_surrogate_pair_becomes_the_stand_in()
    {
        Assert.Equal("a\uFFFDb", PrintableText.Clean("a\uD83Db"));
    }

    [Fact]
    public void Every_sign_of_the_trade_rules_can_be_written_in_every_face()
    {
        // All that Core and Drawing may print stands in their source.
        var signs = new SortedSet<int>();
        foreach (string project in (ReadOnlySpan<string>)["Clothwright.Core", "Clothwright.Drawing"])
        {
            foreach (string file in Directory.EnumerateFiles(Repository.PathOf("src", project), "*.cs", SearchOption.AllDirectories))
            {
                string text = Regex.Replace(File.ReadAllText(file), @"^\s*//.*$", "", RegexOptions.Multiline, TimeSpan.FromSeconds(10));
                foreach (Rune rune in SpelledSigns.In(PrintableText.Clean(text)).EnumerateRunes()) signs.Add(rune.Value);
            }
        }

        foreach (FontFace face in Enum.GetValues<FontFace>())
        {
            Assert.Empty(signs.Where(s => FontShelf.Holding(face, s) is null).Select(s => $"U+{s:X4} {char.ConvertFromUtf32(s)}"));
        }
    }

    [Fact]
    public void Figures_are_of_one_width()
    {
        foreach (FontFace face in (ReadOnlySpan<FontFace>)[FontFace.Text, FontFace.Strong])
        {
            Assert.Single("0123456789".Select(d => new TextRun(d.ToString(), face, 10).Width).Distinct());
        }
    }

    [Fact]
    public void No_line_is_wider_than_it_may_be_and_no_letter_is_lost()
    {
        string text = "Wind the warp " + new string('W', 400) + " in one chain \U0001F9F6\U0001F9F6 with a cross.";
        List<TextRun> lines = TextWrap.Lines(text, FontFace.Text, 9.6f, 120);

        Assert.All(lines, l => Assert.True(l.Width <= 120));
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines.Select(l => l.Text)).Replace(" ", "", StringComparison.Ordinal));
    }
}
