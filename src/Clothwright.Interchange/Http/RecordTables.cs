using System.Globalization;
using Clothwright.Interchange.Csv;

namespace Clothwright.Interchange.Http;

/// <summary>Swatch records and the weaving log as tables for a spreadsheet; units stand in the names of the columns.</summary>
public static class RecordTables
{
    private static readonly string[] SwatchColumns =
    [
        "id", "title", "worksheet", "measured_on", "warp_yarns", "weft_yarns", "weave", "ends_per_cm", "picks_per_cm", "reed_width_cm", "woven_length_cm",
        "off_loom_width_cm", "off_loom_length_cm", "finished_width_cm", "finished_length_cm", "finished_mass_g", "thickness_mm", "finishing", "note",
    ];

    private static readonly string[] LogColumns = ["id", "worksheet", "begun", "minutes", "work", "piece_index", "picks", "note"];

    /// <summary>Swatch records, one a row.</summary>
    /// <param name="swatches">The records.</param>
    public static string Swatches(IEnumerable<SwatchRecord> swatches) => CsvText.Write(SwatchColumns, swatches.Select(s => (string[])
    [
        s.Id, s.Title, s.WorksheetId ?? "", s.MeasuredOn?.ToString("O", CultureInfo.InvariantCulture) ?? "", string.Join(' ', s.WarpYarnIds), string.Join(' ', s.WeftYarnIds), s.Weave,
        Cell(s.EndsPerCentimetre), Cell(s.PicksPerCentimetre), Cell(s.ReedWidthCentimetres), Cell(s.WovenLengthCentimetres),
        Cell(s.OffLoomWidthCentimetres), Cell(s.OffLoomLengthCentimetres), Cell(s.FinishedWidthCentimetres), Cell(s.FinishedLengthCentimetres),
        Cell(s.FinishedGrams), Cell(s.ThicknessMillimetres), s.Finishing, s.Note,
    ]));

    /// <summary>Sittings at the loom, one a row.</summary>
    /// <param name="entries">The entries.</param>
    public static string WeavingLog(IEnumerable<WeavingLogEntry> entries) => CsvText.Write(LogColumns, entries.Select(e => (string[])
    [
        e.Id, e.WorksheetId, e.Begun.ToString("O", CultureInfo.InvariantCulture), Cell(e.Minutes), e.Work, Cell(e.PieceIndex), Cell(e.Picks), e.Note,
    ]));

    private static string Cell(double? number) => number is { } known ? CsvText.Number(known) : "";
}
