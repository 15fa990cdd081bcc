using Clothwright.Client.Saving;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Joining;

namespace Clothwright.Client.Sheet;

public sealed partial class Desk
{
    // The document that the browser's store held when this tab last read or wrote it.
    private string _agreed = "";
    private bool _meeting;

    private async Task HeardAsync(string sheet)
    {
        if (sheet.Length == 0) await ExchangeAsync();
        else if (sheet == Sheet && keeper.Pending == 0 && !_meeting && !_apart) await FollowTabsAsync();
    }

    // Shows what another tab made of the worksheet; nothing of this tab is outstanding.
    private async Task FollowTabsAsync()
    {
        (string sheet, string before) = (Sheet, _json);
        string? kept = await keeper.OpenAsync(sheet);
        SheetCopy copy = await ReadCopyAsync(sheet);
        if (kept is null || sheet != Sheet) return;
        Settle();
        if (_json != before)
        {
            // A step was made here while the other's was read: its write is refused, and the two are joined then.
            return;
        }

        EndRun();
        _copy = _written = copy;
        _agreed = WithArrivals(kept, keeper.Place);
        if (Question?.Version <= copy.Version) Question = null;
        if (_agreed != _json) Use(Read(_agreed), _agreed);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    // A step of this tab was refused because another tab wrote first: both are joined.
    private async Task MeetTabsAsync()
    {
        if (_meeting) return;
        _meeting = true;
        try
        {
            Worksheet origin = Read(_agreed);
            string? kept = await keeper.OpenAsync(Sheet);
            SheetCopy copy = await ReadCopyAsync(Sheet);
            if (kept is null) return;
            Settle();
            _copy = _written = copy;
            _agreed = WithArrivals(kept, keeper.Place);
            WorksheetJoin join = WorksheetJoin.Of(origin, Worksheet, Read(_agreed));
            EndRun();
            Use(join.Joined, Json(join.Joined));
            CameIn = [.. CameIn.Union(join.Taken)];
            if (!join.Questions.IsEmpty)
            {
                // Nothing of mine is written over theirs before she has answered.
                Question = new SheetQuestion(origin, join, _agreed, null);
                return;
            }
        }
        finally
        {
            _meeting = false;
        }

        string json = _json;
        if (json != _agreed) await KeepAsync(json, () => keeper.KeepAsync(json, inPlace: false));
    }
}
