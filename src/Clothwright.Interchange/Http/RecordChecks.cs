using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Http;

/// <summary>Whether a record that was read can be kept.</summary>
public static class RecordChecks
{
    /// <summary>The longest note, in characters.</summary>
    public const int LongestNote = 20_000;

    private const double MostCentimetres = 100_000;

    /// <summary>A swatch record that can be kept.</summary>
    /// <param name="swatch">The record as it was read.</param>
    /// <returns>The same record, or its first problem.</returns>
    public static Parsed<SwatchRecord> Checked(SwatchRecord swatch)
    {
        ArgumentNullException.ThrowIfNull(swatch);
        return First(
            Id(swatch.Id, "id"),
            swatch.WorksheetId is { } worksheet ? Id(worksheet, "worksheetId") : null,
            Text(swatch.Title, "title", 200),
            Text(swatch.Weave, "weave", 2000),
            Text(swatch.Finishing, "finishing", LongestNote),
            Text(swatch.Note, "note", LongestNote),
            Ids(swatch.WarpYarnIds, "warpYarnIds"),
            Ids(swatch.WeftYarnIds, "weftYarnIds"),
            Measure(swatch.EndsPerCentimetre, "endsPerCentimetre", 1000),
            Measure(swatch.PicksPerCentimetre, "picksPerCentimetre", 1000),
            Measure(swatch.ReedWidthCentimetres, "reedWidthCentimetres", MostCentimetres),
            Measure(swatch.WovenLengthCentimetres, "wovenLengthCentimetres", MostCentimetres),
            Measure(swatch.OffLoomWidthCentimetres, "offLoomWidthCentimetres", MostCentimetres),
            Measure(swatch.OffLoomLengthCentimetres, "offLoomLengthCentimetres", MostCentimetres),
            Measure(swatch.FinishedWidthCentimetres, "finishedWidthCentimetres", MostCentimetres),
            Measure(swatch.FinishedLengthCentimetres, "finishedLengthCentimetres", MostCentimetres),
            Measure(swatch.FinishedGrams, "finishedGrams", 1_000_000),
            Measure(swatch.ThicknessMillimetres, "thicknessMillimetres", 1000)) is { } problem ? problem : swatch;
    }

    /// <summary>An entry of the weaving log that can be kept.</summary>
    /// <param name="entry">The entry as it was read.</param>
    /// <returns>The same entry, or its first problem.</returns>
    public static Parsed<WeavingLogEntry> Checked(WeavingLogEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return First(
            Id(entry.Id, "id"),
            Id(entry.WorksheetId, "worksheetId"),
            Measure(entry.Minutes, "minutes", 100_000),
            Measure(entry.Picks, "picks", 10_000_000, mayBeZero: true),
            entry.PieceIndex is { } piece ? Measure(piece, "pieceIndex", 10_000, mayBeZero: true) : null,
            Text(entry.Work, "work", 200),
            Text(entry.Note, "note", LongestNote)) is { } problem ? problem : entry;
    }

    /// <summary>A reservation that can be kept.</summary>
    /// <param name="reservation">The reservation as it was read.</param>
    /// <returns>The same reservation, or its first problem.</returns>
    public static Parsed<YarnReservation> Checked(YarnReservation reservation)
    {
        ArgumentNullException.ThrowIfNull(reservation);
        return First(
            Id(reservation.YarnId, "yarnId"),
            Id(reservation.WorksheetId, "worksheetId"),
            Measure(reservation.Grams, "grams", 1_000_000),
            Text(reservation.Note, "note", 2000)) is { } problem ? problem : reservation;
    }

    private static InputProblem? First(params ReadOnlySpan<InputProblem?> problems)
    {
        foreach (InputProblem? problem in problems)
        {
            if (problem is not null) return problem;
        }

        return null;
    }

    private static InputProblem? Id(string id, string where) => RecordId.Parse(id, where).Problem;

    private static InputProblem? Ids(ImmutableArray<string> ids, string where) => ids.Length > 100
        ? new InputProblem($"{ids.Length} yarns are too many for one sample.", where, "Name at most 100.")
        : ids.Select((id, i) => Id(id, $"{where}[{i}]")).FirstOrDefault(p => p is not null);

    private static InputProblem? Text(string text, string where, int longest)
    {
        if (text.Length > longest) return new InputProblem($"The text has {text.Length} characters.", where, $"Keep it to {longest} characters.");
        // Not every database can keep it.
        return text.Contains('\0', StringComparison.Ordinal) ? new InputProblem("The text holds the character U+0000, which nobody can read.", where, "Take it out.") : null;
    }

    private static InputProblem? Measure(double? measure, string where, double most, bool mayBeZero = false) => measure switch
    {
        null => null,
        { } value when double.IsFinite(value) && (value > 0 || (mayBeZero && value == 0)) && value <= most => null,
        { } value => new InputProblem(
            $"{value.ToString(CultureInfo.InvariantCulture)} cannot be right.",
            where,
            string.Create(CultureInfo.InvariantCulture, $"Write a number {(mayBeZero ? "from 0" : "above 0")} to {most}, or leave it out if it was not measured.")),
    };
}
