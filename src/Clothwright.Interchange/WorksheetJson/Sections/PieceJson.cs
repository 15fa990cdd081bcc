using System.Collections.Immutable;
using System.Text.Json;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Fields;

namespace Clothwright.Interchange.WorksheetJson.Sections;

/// <summary>The section <c>pieces</c>.</summary>
internal static class PieceJson
{
    private const int MostPicks = 100_000;

    public static string[] Fields { get; } =
    [
        "name", "kind", "make", "count", .. JsonSection.LengthFields("width"), .. JsonSection.LengthFields("length"),
        .. JsonSection.LengthFields("hem"), .. JsonSection.LengthFields("endSeam"), .. JsonSection.LengthFields("sideSeam"),
        "fringe", "join", "wearer", "ties", "nightwear", "fulled", "raised", .. JsonSection.ThreadFields("picks"), "weave", "weft", "patternWeft",
    ];

    public static string[] FringeFields { get; } = ["style", .. JsonSection.LengthFields("length")];

    public static string[] WeftFields { get; } = ["yarn", "picks", "strands", "claspedWith", "claspSharePercent"];

    public static PieceEntry Read(JsonSection piece, Func<string, Parsed<Draft>>? draftFile)
    {
        ImmutableArray<WeftRun> weft = ReadWeft(piece, "weft");
        if (weft.IsEmpty) throw piece.Missing("weft", "\"weft\": [ { \"yarn\": \"saltmarsh\" } ]");
        JsonSection? fringe = piece.OptionalSection("fringe", FringeFields);
        FringeStyle style = fringe?.Word<FringeStyle>("style", JsonWords.Fringes, FringeStyle.Twisted) ?? FringeStyle.None;
        return new PieceEntry(new Piece
        {
            Name = piece.Text("name", "first scarf"),
            Kind = piece.Word<PieceKind>("kind", JsonWords.PieceKinds, PieceKind.Yardage),
            Make = piece.Word<PieceMake>("make", JsonWords.Makes, PieceMake.Flat),
            Count = piece.Whole("count", 1, 1000, 1),
            Width = piece.Length("width", 21),
            Length = piece.Length("length", 180),
            Hem = piece.OptionalLength("hem") ?? Length.Zero,
            EndSeam = piece.OptionalLength("endSeam") ?? Length.Zero,
            SideSeam = piece.OptionalLength("sideSeam") ?? Length.Zero,
            Fringe = style,
            FringeLength = style == FringeStyle.None ? Length.Zero : fringe!.Length("length", 12),
            Join = piece.Word<RingJoin>("join", JsonWords.Joins, RingJoin.None),
            Wearer = piece.Word<Wearer>("wearer", JsonWords.Wearers, Wearer.Adult),
            Ties = piece.Flag("ties", false),
            Nightwear = piece.Flag("nightwear", false),
            Fulled = piece.Flag("fulled", false),
            Raised = piece.Flag("raised", false),
            ChosenPicks = piece.OptionalThreads("picks"),
            Weft = weft,
            PatternWeft = ReadWeft(piece, "patternWeft"),
        })
        {
            Weave = WeaveJson.Read(piece, draftFile),
        };
    }

    public static void Write(Utf8JsonWriter writer, PieceEntry entry)
    {
        Piece piece = entry.Piece;
        writer.WriteStartObject();
        writer.WriteString("name", piece.Name);
        writer.WriteString("kind", JsonWords.PieceKinds.Of(piece.Kind));
        if (piece.Make != PieceMake.Flat) writer.WriteString("make", JsonWords.Makes.Of(piece.Make));
        if (piece.Count != 1) writer.WriteNumber("count", piece.Count);
        writer.Length("width", piece.Width);
        writer.Length("length", piece.Length);
        writer.LengthUnlessZero("hem", piece.Hem);
        writer.LengthUnlessZero("endSeam", piece.EndSeam);
        writer.LengthUnlessZero("sideSeam", piece.SideSeam);
        if (piece.Fringe != FringeStyle.None)
        {
            writer.WriteStartObject("fringe");
            writer.WriteString("style", JsonWords.Fringes.Of(piece.Fringe));
            writer.Length("length", piece.FringeLength);
            writer.WriteEndObject();
        }

        if (piece.Join != RingJoin.None) writer.WriteString("join", JsonWords.Joins.Of(piece.Join));
        writer.WriteString("wearer", JsonWords.Wearers.Of(piece.Wearer));
        if (piece.Ties) writer.WriteBoolean("ties", true);
        if (piece.Nightwear) writer.WriteBoolean("nightwear", true);
        if (piece.Fulled) writer.WriteBoolean("fulled", true);
        if (piece.Raised) writer.WriteBoolean("raised", true);
        if (piece.ChosenPicks is { } picks) writer.Threads("picks", picks);
        if (entry.Weave is { } weave) WeaveJson.Write(writer, weave);
        WriteWeft(writer, "weft", piece.Weft);
        if (!piece.PatternWeft.IsEmpty) WriteWeft(writer, "patternWeft", piece.PatternWeft);
        writer.WriteEndObject();
    }

    private static ImmutableArray<WeftRun> ReadWeft(JsonSection piece, string field) => [.. piece.Sections(field, WeftFields).Select(run => new WeftRun(
        run.Text("yarn", "saltmarsh"), run.Whole("picks", 1, MostPicks, 1))
    {
        Strands = run.Whole("strands", 1, 20, 1),
        ClaspedWith = run.OptionalText("claspedWith"),
        ClaspShare = (run.OptionalNumber("claspSharePercent", 0, 100) ?? 50) / 100,
    })];

    private static void WriteWeft(Utf8JsonWriter writer, string field, ImmutableArray<WeftRun> weft)
    {
        writer.WriteStartArray(field);
        foreach (WeftRun run in weft)
        {
            writer.WriteStartObject();
            writer.WriteString("yarn", run.YarnId);
            writer.WriteNumber("picks", run.Picks);
            if (run.Strands != 1) writer.WriteNumber("strands", run.Strands);
            if (run.ClaspedWith is not null)
            {
                writer.WriteString("claspedWith", run.ClaspedWith);
                writer.Number("claspSharePercent", run.ClaspShare * 100);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }
}
