using System.Text;
using Clothwright.Interchange.Csv;
using Clothwright.Interchange.Drafts;
using Clothwright.TestKit;

namespace Clothwright.Interchange.Tests.Docs;

/// <summary>What the guide to files of drafts shows is true.</summary>
public sealed class DraftFilesGuideTests
{
    private static readonly string Guide = File.ReadAllText(Repository.PathOf("docs", "guide", "draft-files.md")).ReplaceLineEndings("\n");

    [Fact]
    public void Its_grid_is_the_twill_it_speaks_of() =>
        Assert.Equal("1100/0110/0011/1001", Read(Block("; first pick last")).Draft.Drawdown().ToString());

    [Fact]
    public void Its_table_is_a_draft() => Assert.Equal(4, Read(Block("part,number")).Draft.Shafts);

    [Fact]
    public void Its_columns_of_a_shelf_are_those_that_are_written() =>
        Assert.Contains($"`{YarnShelfTable.Write([]).TrimEnd()}`", Guide, StringComparison.Ordinal);

    [Fact]
    public void Its_limits_are_those_that_hold()
    {
        ReadingLimits limits = ReadingLimits.Usual;
        Assert.Contains(
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Limits: {limits.MaxBytes >> 20} MB, {limits.MaxLines:N0} lines, {limits.MaxSections:N0} sections, {limits.MaxEnds:N0} ends, {limits.MaxPicks:N0} picks, {limits.MaxCrossings / 1_000_000} million crossings, {limits.MaxShafts} shafts, {limits.MaxTreadles} treadles, {limits.MaxPaletteEntries:N0} colours."),
            Guide,
            StringComparison.Ordinal);
    }

    private static WovenDraft Read(string text) => DraftFiles.Read(Encoding.UTF8.GetBytes(text), "guide").Value.Woven;

    // The indented block that holds a line beginning so.
    private static string Block(string beginning)
    {
        string[] lines = Guide.Split('\n');
        int first = Array.FindIndex(lines, line => line.StartsWith("    " + beginning, StringComparison.Ordinal));
        return string.Join('\n', lines.Skip(first).TakeWhile(line => line.StartsWith("    ", StringComparison.Ordinal)).Select(line => line[4..]));
    }
}
