using Clothwright.Interchange.Http;
using Clothwright.Storage.Rows;

namespace Clothwright.Storage.Records;

/// <summary>An entry of the weaving log as it stands in the tables, and back.</summary>
internal static class WeavingLogRows
{
    public static WeavingLogRow Row(WeavingLogEntry entry) => new()
    {
        Id = entry.Id,
        WorksheetId = entry.WorksheetId,
        Begun = entry.Begun,
        OffsetMinutes = entry.Begun.TotalOffsetMinutes,
        Minutes = entry.Minutes,
        Work = entry.Work,
        PieceIndex = entry.PieceIndex,
        Picks = entry.Picks,
        Note = entry.Note,
    };

    public static WeavingLogEntry Entry(WeavingLogRow row) => new()
    {
        Id = row.Id,
        WorksheetId = row.WorksheetId,
        Begun = row.Begun.ToOffset(TimeSpan.FromMinutes(row.OffsetMinutes)),
        Minutes = row.Minutes,
        Work = row.Work,
        PieceIndex = row.PieceIndex,
        Picks = row.Picks,
        Note = row.Note,
    };
}
