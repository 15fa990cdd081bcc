using System.Text;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.TestKit;
using CsCheck;

namespace Clothwright.Interchange.Tests.WorksheetJson;

public class WorksheetWriterTests
{
    [Theory]
    [MemberData(nameof(WorksheetSchemaTests.Samples), MemberType = typeof(WorksheetSchemaTests))]
    public void Written_and_read_again_a_sample_plans_the_same_warp(string file)
    {
        Worksheet sheet = WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", file))).Value;
        byte[] written = WorksheetWriter.Write(sheet);
        Worksheet again = WorksheetReader.Read(written).Value;
        Assert.Equal(Encoding.UTF8.GetString(written), Encoding.UTF8.GetString(WorksheetWriter.Write(again)));
        foreach ((Core.Plans.Results.Figure was, Core.Plans.Results.Figure now) in sheet.Plan().Value.Figures.All.Zip(again.Plan().Value.Figures.All))
        {
            Assert.Equal(was.Name, now.Name);

            // Twelve decimals are written; nothing a weaver reads moves.
            Assert.Equal(was.Value.Working.BaseValue, now.Value.Working.BaseValue, Math.Abs(was.Value.Working.BaseValue) * 1e-9 + 1e-12);
        }
    }

    [Fact]
    public void Every_decision_survives_writing()
    {
        Worksheet sheet = WorksheetReaderTests.Read(WorksheetReaderTests.Least).Value;
        Draft draft = DraftNotation.Parse("1234 | 1:13 2:24 3:34 4:12 | 13241423").Value with { Name = "own" };
        Piece piece = sheet.Pieces[0].Piece with
        {
            Kind = PieceKind.GarmentPanel,
            Make = PieceMake.Tube,
            Count = 3,
            Hem = Length.FromCentimetres(2),
            EndSeam = Length.FromCentimetres(1.5),
            SideSeam = Length.FromCentimetres(1),
            Wearer = Wearer.Child,
            Ties = true,
            Nightwear = true,
            Fulled = true,
            Raised = true,
            ChosenPicks = Sett.FromPerInch(18),
            Weft = [new WeftRun("reed", 4) { Strands = 2 }, new WeftRun("reed", 2) { ClaspedWith = "reed", ClaspShare = 0.25 }],
            PatternWeft = [new WeftRun("reed", 1)],
        };
        Worksheet full = sheet with
        {
            Note = "Drawn from life: “saltings”, ½ tide.",
            Units = UnitStyle.Customary,
            Currency = "USD",
            Weave = new WeaveDecision.Drawn(draft) { PatternPicks = PatternPicks.Even },
            Sett = Sett.FromPerInch(20),
            Reed = "10-dent",
            Warp = new WarpOrder([new ThreadRun("reed", 3)]) { Repeats = false },
            EndsFit = EndsFit.Width,
            SelvedgeEnds = 2,
            FloatingSelvedges = true,
            Sample = Length.FromInches(6),
            Pieces = [new PieceEntry(piece) { Weave = new WeaveDecision.Named("plain") }],
            Allowances = new Allowances { WarpTakeUp = Ratio.FromPercent(9), DrawIn = Ratio.FromPercent(6), ShrinkageInLength = Ratio.FromPercent(-2), ShrinkageInWidth = Ratio.FromPercent(4), WeftWaste = Ratio.FromPercent(5), LoomWaste = Length.FromCentimetres(66) },
            Rates = new WorkRates { WarpWoundPerHour = Length.FromMetres(900), EndsThreadedPerHour = 180, EndsSleyedPerHour = 400, PicksPerMinute = 14 },
        };
        byte[] written = WorksheetWriter.Write(full);
        Worksheet again = WorksheetReader.Read(written).Value;
        Assert.Equal(Encoding.UTF8.GetString(written), Encoding.UTF8.GetString(WorksheetWriter.Write(again)));
        Approved.Check(Encoding.UTF8.GetString(written), "every-decision.json");
        Assert.Equal(full.Allowances, again.Allowances);
        Assert.Equal(full.Rates, again.Rates);
        Assert.Equal(full.Note, again.Note);
        Assert.Equal(draft, ((WeaveDecision.Drawn)again.Weave).Draft);
        Piece read = again.Pieces[0].Piece;
        Assert.Equal(Plain(piece), Plain(read));

        // 18 picks per inch are written per centimetre: the binary number moves by its last place, the written text does not.
        Assert.Equal(piece.ChosenPicks!.Value.PerMetre, read.ChosenPicks!.Value.PerMetre, 1e-9);
        Assert.Equal(piece.Weft.AsEnumerable(), read.Weft.AsEnumerable());
        Assert.Equal(piece.PatternWeft.AsEnumerable(), read.PatternWeft.AsEnumerable());

        // Lists compare by reference inside a record, so they are taken out and compared by their items.
        static Piece Plain(Piece one) => one with { Weft = [], PatternWeft = [], ChosenPicks = null };
    }

    [Fact]
    public void Any_width_reads_back_and_writes_the_same() =>
        Gen.Double[0.1, 500].Sample(centimetres =>
        {
            Worksheet sheet = WorksheetReaderTests.Read(WorksheetReaderTests.Least).Value;
            Worksheet wide = sheet with { Pieces = [new PieceEntry(sheet.Pieces[0].Piece with { Width = Length.FromCentimetres(centimetres) })] };
            byte[] written = WorksheetWriter.Write(wide);
            Worksheet again = WorksheetReader.Read(written).Value;
            return written.AsSpan().SequenceEqual(WorksheetWriter.Write(again))
                && Math.Abs(again.Pieces[0].Piece.Width.Centimetres - centimetres) < 1e-9;
        }, iter: 200);

    [Theory]
    [InlineData(1200, 2400, 16)]
    [InlineData(4800, 9600, 24)]
    [InlineData(20_000, 20_000, 8)]
    public void A_draft_drawn_thread_by_thread_reads_back_however_long_it_is(int ends, int picks, int shafts)
    {
        Draft draft = new()
        {
            Shafts = shafts,
            Threading = [.. Enumerable.Range(0, ends).Select(e => ShaftSet.Of(1 + e % shafts))],
            LiftPlan = [.. Enumerable.Range(0, picks).Select(p => ShaftSet.Of(1 + p % shafts, 1 + p / shafts % shafts, 1 + (p / 3 + 5) % shafts, 1 + (p + 7) % shafts))],
        };
        Worksheet sheet = WorksheetReaderTests.Read(WorksheetReaderTests.Least).Value with { Weave = new WeaveDecision.Drawn(draft) };
        Assert.Equal(draft, ((WeaveDecision.Drawn)WorksheetReader.Read(WorksheetWriter.Write(sheet)).Value.Weave).Draft);
    }
}
