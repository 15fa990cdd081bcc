using Clothwright.Interchange.Http;
using Clothwright.Storage.Rows;

namespace Clothwright.Storage.Records;

/// <summary>A swatch record as it stands in the tables, and back.</summary>
internal static class SwatchRows
{
    public static SwatchRow Row(SwatchRecord swatch) => new()
    {
        Id = swatch.Id,
        Title = swatch.Title,
        WorksheetId = swatch.WorksheetId,
        MeasuredOn = swatch.MeasuredOn,
        WarpYarnIds = [.. swatch.WarpYarnIds],
        WeftYarnIds = [.. swatch.WeftYarnIds],
        Weave = swatch.Weave,
        EndsPerCentimetre = swatch.EndsPerCentimetre,
        PicksPerCentimetre = swatch.PicksPerCentimetre,
        ReedWidthCentimetres = swatch.ReedWidthCentimetres,
        WovenLengthCentimetres = swatch.WovenLengthCentimetres,
        OffLoomWidthCentimetres = swatch.OffLoomWidthCentimetres,
        OffLoomLengthCentimetres = swatch.OffLoomLengthCentimetres,
        FinishedWidthCentimetres = swatch.FinishedWidthCentimetres,
        FinishedLengthCentimetres = swatch.FinishedLengthCentimetres,
        FinishedGrams = swatch.FinishedGrams,
        ThicknessMillimetres = swatch.ThicknessMillimetres,
        Finishing = swatch.Finishing,
        Note = swatch.Note,
    };

    public static SwatchRecord Swatch(SwatchRow row) => new()
    {
        Id = row.Id,
        Title = row.Title,
        WorksheetId = row.WorksheetId,
        MeasuredOn = row.MeasuredOn,
        WarpYarnIds = [.. row.WarpYarnIds],
        WeftYarnIds = [.. row.WeftYarnIds],
        Weave = row.Weave,
        EndsPerCentimetre = row.EndsPerCentimetre,
        PicksPerCentimetre = row.PicksPerCentimetre,
        ReedWidthCentimetres = row.ReedWidthCentimetres,
        WovenLengthCentimetres = row.WovenLengthCentimetres,
        OffLoomWidthCentimetres = row.OffLoomWidthCentimetres,
        OffLoomLengthCentimetres = row.OffLoomLengthCentimetres,
        FinishedWidthCentimetres = row.FinishedWidthCentimetres,
        FinishedLengthCentimetres = row.FinishedLengthCentimetres,
        FinishedGrams = row.FinishedGrams,
        ThicknessMillimetres = row.ThicknessMillimetres,
        Finishing = row.Finishing,
        Note = row.Note,
    };
}
