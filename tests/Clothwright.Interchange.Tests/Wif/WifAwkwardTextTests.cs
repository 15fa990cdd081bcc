using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Tests.Wif;

/// <summary>Awkward files, numbered as in the list of the rulings: texts, encodings, line ends, private sections, repeated keys.</summary>
public sealed class WifAwkwardTextTests
{
    [Fact]
    public void Case_21_A_title_may_hold_any_mark()
    {
        const string Title = "A = B; [ebb] ; = ;";
        Assert.Equal(Title, WifSample.Draft(WifSample.With("TEXT", $"Title={Title}")).Draft.Name);
    }

    [Fact]
    public void Case_21_Four_hundred_notes_with_gaps_come_through()
    {
        string notes = string.Join('\n', Enumerable.Range(1, 400).Select(n => $"{n * 3}=note {n} ; still note {n}"));
        WifDocument document = WifSample.Read(WifSample.With("NOTES", notes)).Document;
        Assert.Equal(400, document.Notes.Count);
        Assert.True(document.Notes.TryGet(1200, out string? last));
        Assert.Equal("note 400 ; still note 400", last);
        Assert.False(document.Notes.TryGet(1199, out _));
        WifDocument again = WifReader.Read(WifWriter.WriteBytes(document)).Value.Document;
        Assert.Equal(document.Notes, again.Notes);
    }

    [Theory]
    [InlineData("utf-8 with mark")]
    [InlineData("utf-16 little")]
    [InlineData("utf-16 big")]
    [InlineData("utf-16 without mark")]
    [InlineData("code page 1252")]
    public void Case_22_Text_is_read_in_every_usual_encoding(string encoding)
    {
        string text = WifSample.With("TEXT", "Title=Möwe\nAuthor=Tidewoman");
        byte[] file = encoding switch
        {
            "utf-8 with mark" => [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(text)],
            "utf-16 little" => [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(text)],
            "utf-16 big" => [.. Encoding.BigEndianUnicode.GetPreamble(), .. Encoding.BigEndianUnicode.GetBytes(text)],
            "utf-16 without mark" => Encoding.Unicode.GetBytes(text),
            _ => Encoding.Latin1.GetBytes(text),
        };
        WifDocument document = WifReader.Read(file).Value.Document;
        Assert.Equal("Möwe", document.Text.Title);
        Assert.Equal(4, document.Threading!.Count);
    }

    [Fact]
    public void Case_22_Marks_of_code_page_1252_that_other_pages_lack_are_read()
    {
        byte[] file = [.. Encoding.ASCII.GetBytes("[TEXT]\nTitle="), 0x80, 0x96, 0x99, (byte)'\n'];
        Assert.Equal("€–™", WifReader.Read(file).Value.Document.Text.Title);
    }

    [Fact]
    public void Case_22_A_NUL_in_the_text_is_left_out_and_its_line_named()
    {
        WifReading reading = WifSample.Read(WifSample.Twill.Replace("Shafts=4", "Shafts=\04", StringComparison.Ordinal));
        WifSample.AssertWarns(reading, "", "", "NUL");
        Assert.Equal(22, reading.Warnings[0].Line);
        Assert.Equal(4, reading.Document.Shafts);
    }

    [Theory]
    [InlineData("\r")]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Case_23_Every_line_end_is_known_and_the_last_may_be_missing(string lineEnd)
    {
        string text = WifSample.Twill.ReplaceLineEndings(lineEnd).TrimEnd();
        Assert.Empty(WifSample.Read(text).Warnings);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_23_A_very_long_line_is_kept()
    {
        string note = new('n', 100_000);
        WifDocument document = WifSample.Read(WifSample.With("NOTES", $"1={note}")).Document;
        Assert.Equal(note, document.Notes[0].Value);
    }

    [Fact]
    public void Case_23_A_line_beyond_the_limit_is_refused_by_number()
    {
        byte[] file = Encoding.ASCII.GetBytes($"[WIF]\n[NOTES]\n1={new string('n', 300_000)}");
        InputProblem? problem = WifReader.Read(file).Problem;
        Assert.Equal("line 3", problem!.Where);
    }

    [Fact]
    public void Case_24_Private_sections_of_two_writers_are_kept_word_for_word()
    {
        const string Ours = "[PRIVATE Ebb THREADING]\n1=4\n  2 =  4 ; so\n\n[broken\n[]\n3";
        const string Theirs = "[private Flow Picture]\n= = =\n\n;;";
        string text = WifSample.Twill.ReplaceLineEndings("\n") + $"{Ours}\n\n{Theirs}\n";
        WifReading reading = WifSample.Read(text);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
        Assert.Equal(["PRIVATE Ebb THREADING", "private Flow Picture"], reading.Document.KeptSections.Select(s => s.Name));
        string written = WifWriter.Write(reading.Document);
        Assert.EndsWith($"\r\n{Ours.ReplaceLineEndings("\r\n")}\r\n\r\n{Theirs.ReplaceLineEndings("\r\n")}\r\n", written, StringComparison.Ordinal);
    }

    [Fact]
    public void A_key_that_comes_twice_with_two_values_keeps_the_first()
    {
        WifReading reading = WifSample.Read(WifSample.Replaced("Shafts=4", "Shafts=4\nShafts=8\nShafts=4"));
        WifSample.AssertWarns(reading, "WEAVING", "Shafts", "line 22 already");
        Assert.Single(reading.Warnings);
        Assert.Equal(4, reading.Document.Shafts);
    }

    [Fact]
    public void A_thread_that_comes_twice_with_two_values_keeps_the_first()
    {
        string text = WifSample.With("THREADING", "1=1\n2=2\n3=3\n4=4\n1=2\n2=2");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "THREADING", "1", "already with another value");
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void A_section_in_two_parts_is_joined()
    {
        string text = WifSample.With("THREADING", "1=1\n2=2").ReplaceLineEndings("\n") + "[THREADING]\n3=3\n4=4\n";
        WifSample.AssertWarns(WifSample.Read(text), "THREADING", "", "two parts are joined");
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void A_comment_behind_a_number_is_cut_off()
    {
        string text = WifSample.Replaced("Shafts=4", "Shafts=4 ; a table loom").Replace("2=2,3", "2=2,3;twill", StringComparison.Ordinal);
        Assert.Empty(WifSample.Read(text).Warnings);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void Warnings_beyond_the_limit_are_counted()
    {
        string lines = string.Join('\n', Enumerable.Range(1, 50).Select(n => $"{n % 4 + 1}=x{n}"));
        WifReading reading = WifSample.Read(WifSample.With("THREADING", lines), new ReadingLimits { MaxWarnings = 10 });
        Assert.Equal(11, reading.Warnings.Length);
        Assert.Matches("^[0-9]+ more warnings", reading.Warnings[^1].What);
    }

    [Fact]
    public void Too_many_sections_or_lines_are_refused()
    {
        byte[] file = Encoding.UTF8.GetBytes(WifSample.Twill);
        Assert.Contains("more than 3 sections", WifReader.Read(file, new ReadingLimits { MaxSections = 3 }).Problem!.What, StringComparison.Ordinal);
        Assert.Contains("more than 20 lines", WifReader.Read(file, new ReadingLimits { MaxLines = 20 }).Problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_larger_than_the_limit_is_refused_from_bytes_and_from_a_stream()
    {
        var limits = new ReadingLimits { MaxBytes = 100 };
        byte[] file = Encoding.UTF8.GetBytes(WifSample.Twill);
        using var stream = new MemoryStream(file);
        Assert.Contains("100 bytes", WifReader.Read(file, limits).Problem!.What, StringComparison.Ordinal);
        Assert.Contains("100 bytes", WifReader.Read(stream, limits).Problem!.What, StringComparison.Ordinal);
        stream.Position = 0;
        Assert.Equal(WifWriter.Write(WifReader.Read(file).Value.Document), WifWriter.Write(WifReader.Read(stream).Value.Document));
    }
}
