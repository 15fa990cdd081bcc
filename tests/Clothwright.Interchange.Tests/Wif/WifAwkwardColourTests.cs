using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Tests.Wif;

/// <summary>Awkward files, numbered as in the list of the rulings: colours, spacings, units, symbols.</summary>
public sealed class WifAwkwardColourTests
{
    [Theory]
    [InlineData("0,999", "0,500,999", 0, 128, 255)]
    [InlineData("0,1", "0,0.5,1", 0, 128, 255)]
    [InlineData("0,1", "1,0,1", 255, 0, 255)]
    [InlineData("10,200", "10,105,200", 0, 128, 255)]
    [InlineData("0,65535", "32768,257,65535", 128, 1, 255)]
    public void Case_15_Colours_on_any_scale_become_eight_bits(string range, string colour, int red, int green, int blue)
    {
        string text = WifSample.Replaced("Range=0,255", $"Range={range}").Replace("1=59,122,120", $"1={colour}", StringComparison.Ordinal);
        Assert.Equal(new SrgbColour((byte)red, (byte)green, (byte)blue), WifSample.Draft(text).Warp.Colours[0]);
    }

    [Fact]
    public void Case_15_A_colour_beyond_its_scale_is_clipped_with_a_warning()
    {
        string text = WifSample.Replaced("Range=0,255", "Range=10,200").Replace("1=59,122,120", "1=0,10,999", StringComparison.Ordinal);
        WifSample.AssertWarns(WifSample.Read(text), "COLOR TABLE", "1", "it is clipped");
        Assert.Equal(new SrgbColour(0, 0, 255), WifSample.Draft(text).Warp.Colours[0]);
    }

    [Theory]
    [InlineData("Range=5,5")]
    [InlineData("Range=all")]
    [InlineData("Range=255,0")]
    public void Case_15_A_scale_that_is_none_is_taken_as_eight_bits(string range)
    {
        string text = WifSample.Replaced("Range=0,255", range);
        WifSample.AssertWarns(WifSample.Read(text), "COLOR PALETTE", "Range", "0 to 255 is assumed");
        Assert.Equal(new SrgbColour(59, 122, 120), WifSample.Draft(text).Warp.Colours[0]);
    }

    [Fact]
    public void Case_16_A_table_shorter_than_declared_is_named()
    {
        WifReading reading = WifSample.Read(WifSample.Replaced("Entries=2", "Entries=5"));
        WifSample.AssertWarns(reading, "COLOR TABLE", "", "5 colours are declared and 2 are listed");
        Assert.Equal(5, reading.Document.Palette!.Entries);
    }

    [Fact]
    public void Case_16_Colour_nought_is_given_a_number_and_keeps_its_threads()
    {
        string text = WifSample.Replaced("2=233,225,207", "0=1,2,3\n2=233,225,207").Replace("Color=1", "Color=0", StringComparison.Ordinal);
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "COLOR TABLE", "0", "colour 0 becomes colour 3");
        Assert.Equal(3, reading.Document.Warp.Colour);
        Assert.Equal(new SrgbColour(1, 2, 3), WifSample.Draft(text).Warp.Colours[0]);
    }

    [Fact]
    public void Case_16_A_thread_of_a_colour_that_is_not_there_takes_the_default()
    {
        string text = WifSample.With("WARP COLORS", "1=2\n3=99\n4=0");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "WARP COLORS", "3", "Colour 99 is not in the colour table; 2 threads take the default colour");
        SrgbColour usual = new(59, 122, 120);
        Assert.Equal([new SrgbColour(233, 225, 207), usual, usual, usual], WifSample.Draft(text).Warp.Colours.AsEnumerable());
    }

    [Fact]
    public void Case_17_A_colour_written_behind_its_number_joins_the_table()
    {
        string text = WifSample.Replaced("Color=1", "Color=3,0,0,255");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "WARP", "Color", "put there");
        Assert.Equal(3, reading.Document.Palette!.Entries);
        Assert.All(WifSample.Draft(text).Warp.Colours, colour => Assert.Equal(new SrgbColour(0, 0, 255), colour));
    }

    [Fact]
    public void Case_17_Where_the_table_says_otherwise_the_table_holds()
    {
        string text = WifSample.Replaced("Color=1", "Color=1,0,0,255");
        WifSample.AssertWarns(WifSample.Read(text), "WARP", "Color", "differs from the colour table");
        Assert.Equal(new SrgbColour(59, 122, 120), WifSample.Draft(text).Warp.Colours[0]);
    }

    [Fact]
    public void Case_18_A_decimal_comma_is_understood()
    {
        string text = WifSample.With("WARP", "Threads=4\nUnits=Centimeters\nSpacing=0,212");
        WifSample.AssertWarns(WifSample.Read(text), "WARP", "Spacing", "read as 0.212");
        Assert.Equal(2.12, WifSample.Draft(text).Warp.Spacings[0].Millimetres, 1e-12);
    }

    [Theory]
    [InlineData("centimetres", WifUnits.Centimeters)]
    [InlineData("INCH", WifUnits.Inches)]
    public void Case_19_A_unit_spelt_another_way_is_understood(string word, WifUnits meant)
    {
        WifReading reading = WifSample.Read(WifSample.With("WARP", $"Threads=4\nUnits={word}\nSpacing=1"));
        WifSample.AssertWarns(reading, "WARP", "Units", $"read as {meant}");
        Assert.Equal(meant, reading.Document.Warp.Units);
    }

    [Fact]
    public void Case_19_A_unit_nobody_knows_is_taken_as_decipoints_and_kept_as_written()
    {
        string text = WifSample.With("WARP", "Threads=4\nUnits=Barleycorns\nSpacing=30");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "WARP", "Units", "decipoints are assumed");
        Assert.Equal(24, 1 / WifSample.Draft(text).Warp.Spacings[0].Inches, 1e-9);
        Assert.Contains("Units=Barleycorns\r\n", WifWriter.Write(reading.Document), StringComparison.Ordinal);
    }

    [Fact]
    public void Case_19_A_unit_named_in_the_warp_alone_holds_for_the_weft()
    {
        string text = WifSample.With("WEFT", "Threads=4\nSpacing=0.2");
        WifSample.AssertWarns(WifSample.Read(text), "WEFT", "Units", "that of WARP is taken");
        Assert.Equal(Length.FromMillimetres(2).Metres, WifSample.Draft(text).Weft.Spacings[3].Metres, 1e-15);
    }

    [Fact]
    public void Case_20_A_symbol_may_be_a_semicolon_or_an_equals_sign()
    {
        WifDocument document = WifSample.Read(WifSample.With("WARP", "Threads=4\nSymbol=';'") + "[WARP SYMBOLS]\n1='='\n2=;\n").Document;
        Assert.Equal("';'", document.Warp.Symbol);
        Assert.Equal(["'='", ";"], document.Warp.Symbols.Select(line => line.Value));
    }
}
