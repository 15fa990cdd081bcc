using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Csv;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Tests.Drafts;
using CsCheck;

namespace Clothwright.Interchange.Tests.Csv;

public sealed class DraftTableTests
{
    private const string Twill = """
        part,number,value,colour,spacing_mm
        name,,ebb,,
        shafts,,4,,
        end,1,1,#3b7a78,1.25
        end,2,2,,"1,5"
        end,4,4,,
        end,3,3,,
        treadle,1,1 2,,
        treadle,2,"2,3",,
        pick,1,1,,
        pick,2,2,,
        """;

    [Fact]
    public void A_table_is_a_draft()
    {
        WovenDraft woven = DraftTable.Read(Twill).Value;
        Assert.Equal("1100/0110", woven.Draft.Drawdown().ToString());
        Assert.Equal("ebb", woven.Draft.Name);
        Assert.Equal("#3b7a78", woven.Warp.Colours[0].ToString());
        Assert.Equal([1.25, 1.5, 0, 0], woven.Warp.Spacings.Select(s => Math.Round(s.Millimetres, 9)));
    }

    [Theory]
    [InlineData(';')]
    [InlineData('\t')]
    public void Semicolons_and_tabs_part_values_as_well(char separator)
    {
        string text = Twill.Replace("\"1,5\"", "1.5", StringComparison.Ordinal).Replace("\"2,3\"", "2 3", StringComparison.Ordinal).Replace(',', separator);
        Assert.Equal("1100/0110", DraftTable.Read(text).Value.Draft.Drawdown().ToString());
    }

    [Theory]
    [InlineData("end,2,2,", "end,2,seven,", "line 5, column value", "\"seven\"")]
    [InlineData("end,2,2,", "end,two,2,", "line 5, column number", "\"two\"")]
    [InlineData("end,2,2,", "end,,2,", "line 5, column number", "no number")]
    [InlineData("end,2,2,", "end,1,2,", "line 5, column number", "two rows for end 1")]
    [InlineData("end,2,2,", "end,2000000000,2,", "line 5, column number", "2000000000")]
    [InlineData("\"1,5\"", "-1.5", "line 5, column spacing_mm", "\"-1.5\"")]
    [InlineData("#3b7a78", "blue", "line 4, column colour", "\"blue\"")]
    [InlineData("name,,ebb", "tide,,ebb", "line 2, column part", "\"tide\"")]
    [InlineData("shafts,,4", "shed,,sideways", "line 3, column value", "\"sideways\"")]
    [InlineData("shafts,,4", "shafts,,65", "line 3, column value", "\"65\"")]
    [InlineData("shafts,,4", "shafts,,3", "threading, end 4", "uses shaft 4")]
    [InlineData("part,number,value", "part,number,worth", "line 1", "no column \"value\"")]
    [InlineData("colour,spacing_mm", "colour,Colour", "line 1", "Two columns")]
    [InlineData("name,,ebb", "name,,eb\"b", "line 2", "quotation mark")]
    public void What_cannot_be_read_is_named_by_line_and_column(string old, string with, string where, string what)
    {
        Assert.Contains(old, Twill, StringComparison.Ordinal);
        InputProblem problem = DraftTable.Read(Twill.Replace(old, with, StringComparison.Ordinal)).Problem!;
        Assert.Equal(where, problem.Where);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_written_and_read_is_the_same_draft() => DraftGen.Woven.Sample(
        woven => WovenAssert.Same(woven, DraftTable.Read(DraftTable.Write(woven)).Value),
        iter: 300);

    [Theory]
    [InlineData("ebb\nflow")]
    [InlineData("ebb\rflow")]
    [InlineData("ebb, \"flow\"; slack")]
    public void A_name_may_hold_line_ends_and_separators(string name)
    {
        WovenDraft woven = DraftTable.Read(Twill).Value;
        string text = DraftTable.Write(woven with { Draft = woven.Draft with { Name = name } });
        Assert.Equal(name, DraftTable.Read(text).Value.Draft.Name);
    }

    [Theory]
    [InlineData("=cmd|' /C calc'!A0")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@sum")]
    [InlineData("'=1")]
    public void A_name_that_a_spreadsheet_would_run_is_written_as_text(string name)
    {
        WovenDraft woven = DraftTable.Read(Twill).Value;
        string text = DraftTable.Write(woven with { Draft = woven.Draft with { Name = name } });
        Assert.Contains($"name,,'{name}", text.Replace("\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(name, DraftTable.Read(text).Value.Draft.Name);
    }
}
