using System.Text;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.TestKit;

namespace Clothwright.Interchange.Tests.WorksheetJson;

public class WorksheetReaderTests
{
    internal const string Least = """
        {
          "clothwright": 1,
          "title": "Least worksheet",
          "bench": { "looms": [ { "id": "floor-4", "kind": "floor", "weavingWidth": "1 m", "shafts": 4, "treadles": 6 } ] },
          "shelf": [ { "id": "reed", "tex": 148, "fibres": [ { "fibre": "cotton" } ], "colour": "#aabbcc" } ],
          "loom": "floor-4",
          "weave": "plain",
          "warp": { "order": [ { "yarn": "reed" } ] },
          "pieces": [ { "name": "towel", "width": "50 cm", "length": "70 cm", "weft": [ { "yarn": "reed" } ] } ]
        }
        """;

    [Fact]
    public void What_is_left_out_takes_its_usual_value()
    {
        Worksheet sheet = Read(Least).Value;
        Assert.Equal("EUR", sheet.Currency);
        Assert.Equal(UnitStyle.Metric, sheet.Units);
        Assert.Equal(ClothPurpose.Everyday, sheet.Purpose);
        Assert.Null(sheet.Sett);
        Assert.Equal("floor-4", sheet.Looms[0].Name);
        Assert.Equal(1, sheet.Shelf[0].Fibres[0].MassShare.Value);
        Assert.Equal(PieceKind.Yardage, sheet.Pieces[0].Piece.Kind);
        Assert.True(sheet.Warp.Repeats);
    }

    [Theory]
    [InlineData("\"width\": \"50 cm\"", 0.5)]
    [InlineData("\"widthCentimetres\": 50", 0.5)]
    [InlineData("\"widthInches\": 20", 0.508)]
    [InlineData("\"width\": \"2 ft\"", 0.6096)]
    [InlineData("\"width\": \"1 yd 4 in\"", 1.016)]
    public void A_length_is_a_number_in_a_field_with_its_unit_or_a_text(string field, double metres) =>
        Assert.Equal(metres, Read(Least.Replace("\"width\": \"50 cm\"", field, StringComparison.Ordinal)).Value.Pieces[0].Piece.Width.Metres, 1e-12);

    [Theory]
    [InlineData("\"sett\": \"20/in\"", 20)]
    [InlineData("\"sett\": \"8 ends per cm\"", 20.32)]
    [InlineData("\"endsPerInch\": 20", 20)]
    [InlineData("\"endsPerCentimetre\": 8", 20.32)]
    public void A_sett_is_a_number_or_a_text(string field, double endsPerInch) =>
        Assert.Equal(endsPerInch, Read(Least.Replace("\"weave\"", $"{field}, \"weave\"", StringComparison.Ordinal)).Value.Sett!.Value.PerInch, 1e-9);

    // What is wrong, where it is said to be, and a word of the mend.
    [Theory]
    [InlineData("\"title\": \"Least worksheet\"", "\"titel\": \"x\"", "titel", "\"title\"")]
    [InlineData("\"title\": \"Least worksheet\",", "", "title", "Add")]
    [InlineData("\"title\": \"Least worksheet\"", "\"title\": \" \"", "title", "Write")]
    [InlineData("\"title\": \"Least worksheet\"", "\"title\": 5", "title", "quotation marks")]
    [InlineData("\"clothwright\": 1", "\"clothwright\": 2", "clothwright", "newer")]
    [InlineData("\"clothwright\": 1", "\"clothwright\": \"1\"", "clothwright", "Begin")]
    [InlineData("\"clothwright\": 1,", "", "clothwright", "Begin")]
    [InlineData("\"width\": \"50 cm\"", "\"width\": \"-50 cm\"", "pieces[0].width", "")]
    [InlineData("\"width\": \"50 cm\"", "\"widthCentimetres\": -50", "pieces[0].widthCentimetres", "number from 0")]
    [InlineData("\"width\": \"50 cm\"", "\"widthCentimetres\": 0", "pieces[0].width", "widthCentimetres")]
    [InlineData("\"width\": \"50 cm\"", "\"width\": 50", "pieces[0].width", "widthCentimetres")]
    [InlineData("\"width\": \"50 cm\"", "\"width\": \"50\"", "pieces[0].width", "")]
    [InlineData("\"width\": \"50 cm\"", "\"width\": \"2000 m\"", "pieces[0].width", "180 cm")]
    [InlineData("\"width\": \"50 cm\"", "\"width\": \"50 cm\", \"widthInches\": 20", "pieces[0].width", "Keep one")]
    [InlineData("\"width\": \"50 cm\", ", "", "pieces[0].width", "widthCentimetres")]
    [InlineData("\"weave\": \"plain\"", "\"weave\": \"plain\", \"sett\": \"0/in\"", "sett", "")]
    [InlineData("\"weave\": \"plain\"", "\"weave\": \"plain\", \"endsPerInch\": 0", "endsPerInch", "number")]
    [InlineData("\"weave\": \"plain\"", "\"weave\": \"plain\", \"endsPerInch\": 20, \"sett\": \"20/in\"", "endsPerInch", "Keep one")]
    [InlineData("\"weave\": \"plain\"", "\"weave\": \"plain\", \"purpose\": \"drap\"", "purpose", "\"drape\"")]
    [InlineData("\"weave\": \"plain\"", "\"weave\": \"plain\", \"currency\": \"euro\"", "currency", "EUR")]
    [InlineData("\"weave\": \"plain\"", "\"weave\": { \"draft\": \"12 | 1:1 2:x\" }", "weave.draft", "")]
    [InlineData("\"weave\": \"plain\"", "\"weave\": { \"file\": \"reeds.wif\" }", "weave.file", "draft")]
    [InlineData("\"weave\": \"plain\"", "\"weave\": { \"name\": \"plain\", \"patternPicks\": \"even\" }", "weave.patternPicks", "Take")]
    [InlineData("\"weave\": \"plain\",", "", "weave", "2/2 twill")]
    [InlineData("\"tex\": 148,", "", "shelf[0].count", "8/2")]
    [InlineData("\"tex\": 148", "\"tex\": 148, \"count\": \"8/2\"", "shelf[0].tex", "Keep")]
    [InlineData("\"tex\": 148", "\"tex\": 0", "shelf[0].tex", "above 0")]
    [InlineData("#aabbcc", "blue", "shelf[0].colour", "#")]
    [InlineData("[ { \"fibre\": \"cotton\" } ]", "[]", "shelf[0].fibres", "wool")]
    [InlineData("\"shafts\": 4, ", "", "bench.looms[0].shafts", "Add")]
    [InlineData("\"shafts\": 4", "\"shafts\": 4.5", "bench.looms[0].shafts", "whole number")]
    [InlineData("\"kind\": \"floor\"", "\"kind\": \"flor\"", "bench.looms[0].kind", "\"floor\"")]
    [InlineData("\"order\": [ { \"yarn\": \"reed\" } ]", "\"order\": { \"yarn\": \"reed\" }", "warp.order", "[")]
    [InlineData("\"order\": [ { \"yarn\": \"reed\" } ]", "\"order\": [ \"reed\" ]", "warp.order[0]", "{")]
    [InlineData("\"order\": [ { \"yarn\": \"reed\" } ]", "\"order\": [ { \"yarn\": \"reed\" } ], \"repeat\": \"yes\"", "warp.repeat", "true")]
    [InlineData("\"weft\": [ { \"yarn\": \"reed\" } ]", "\"weft\": []", "pieces[0].weft", "saltmarsh")]
    public void A_fault_is_told_with_its_place_and_a_mend(string part, string broken, string where, string mend)
    {
        string text = Least.Replace(part, broken, StringComparison.Ordinal);
        Assert.NotEqual(Least, text);
        InputProblem problem = Read(text).Problem!;
        Assert.Equal(where, problem.Where);
        Assert.Contains(mend, problem.Mend, StringComparison.Ordinal);
        Assert.NotEmpty(problem.What);
        Assert.NotEmpty(problem.Mend);
    }

    [Fact]
    public void Malformed_text_is_told_by_line_and_byte()
    {
        InputProblem problem = Read(Least.Replace("\"title\": \"Least worksheet\",", "\"title\": \"Least worksheet\"", StringComparison.Ordinal)).Problem!;
        Assert.Equal("line 4, byte 3", problem.Where);
        Assert.Contains("comma", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_written_twice_is_refused()
    {
        InputProblem problem = Read(Least.Replace("\"weave\": \"plain\"", "\"weave\": \"plain\", \"weave\": \"satin\"", StringComparison.Ordinal)).Problem!;
        Assert.Contains("weave", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_megabytes_of_garbage_are_refused_at_once()
    {
        var garbage = new byte[10 * 1024 * 1024];
        new Random(7).NextBytes(garbage);
        InputProblem problem = WorksheetReader.Read(garbage).Problem!;
        Assert.Contains("10485760 bytes", problem.What, StringComparison.Ordinal);
        Assert.Equal("file", problem.Where);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  \n")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("\"worksheet\"")]
    [InlineData("[[[[[[[[[[[[[[[[[[[[[[[[")]
    [InlineData("<worksheet/>")]
    public void What_is_no_worksheet_is_refused(string text) => Assert.False(Read(text).Succeeded);

    [Fact]
    public void Bytes_that_are_no_text_are_refused() =>
        Assert.Contains("UTF-8", WorksheetReader.Read(new byte[] { (byte)'{', 0xff, 0xfe, (byte)'}' }).Problem!.What, StringComparison.Ordinal);

    [Fact]
    public void A_byte_order_mark_does_no_harm() =>
        Assert.True(WorksheetReader.Read((byte[])[0xef, 0xbb, 0xbf, .. Encoding.UTF8.GetBytes(Least)]).Succeeded);

    [Fact]
    public void A_draft_file_is_read_by_whoever_can()
    {
        string text = Least.Replace("\"weave\": \"plain\"", "\"weave\": { \"file\": \"reeds.wif\" }", StringComparison.Ordinal);
        Draft draft = DraftNotation.Parse("1234 | 1:12 2:23 3:34 4:14 | 1234").Value;
        Worksheet sheet = WorksheetReader.Read(Encoding.UTF8.GetBytes(text), path => path == "reeds.wif" ? draft : new InputProblem("?", "?", "?")).Value;
        Assert.Equal(draft, sheet.Weave.Resolve().Value.Draft);
        InputProblem problem = WorksheetReader.Read(Encoding.UTF8.GetBytes(text), _ => new InputProblem("There is no such file.", "file", "Look again.")).Problem!;
        Assert.Equal("weave.file (reeds.wif), file", problem.Where);
    }

    [Fact]
    public void A_worksheet_damaged_anywhere_never_throws()
    {
        byte[] sound = File.ReadAllBytes(Repository.PathOf("samples", "saltings-throw.json"));
        var chance = new Random(11);
        int refused = 0;
        for (int i = 0; i < 600; i++)
        {
            byte[] damaged = [.. sound];
            for (int n = chance.Next(1, 4); n > 0; n--) damaged[chance.Next(damaged.Length)] = (byte)chance.Next(32, 127);
            Parsed<Worksheet> read = WorksheetReader.Read(damaged);
            if (!read.Succeeded) refused++;
            else _ = read.Value.Plan();
        }

        Assert.InRange(refused, 200, 600);
    }

    internal static Parsed<Worksheet> Read(string text) => WorksheetReader.Read(Encoding.UTF8.GetBytes(text));
}
