using System.Collections.Immutable;
using System.Runtime.InteropServices.JavaScript;
using Clothwright.Client.Saving;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Http;
using Clothwright.Interchange.WorksheetJson.Joining;

namespace Clothwright.Client.Sheet;

public sealed partial class Desk
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(600);
    private static readonly TimeSpan FirstRetry = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan LongestRetry = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan LookInterval = TimeSpan.FromSeconds(15);

    private bool _exchanging;
    private bool _again;
    private bool _away;
    private bool _retrying;
    private int _edits;

    /// <summary>The part that was changed here and elsewhere; null where nothing is to be asked.</summary>
    public SheetQuestion? Question { get; private set; }

    /// <summary>Why the studio refused the worksheet; null if it did not.</summary>
    public string? Refusal { get; private set; }

    /// <summary>Parts that came from elsewhere, for the page to say so; empty once she has read it.</summary>
    public ImmutableArray<WorksheetPart> CameIn { get; private set; } = [];

    /// <summary>The version that the studio has, 0 for none.</summary>
    public int StudioVersion => _copy.Version;

    /// <summary>Whether the studio answered when it was last asked.</summary>
    public bool StudioAnswers => !_away;

    private bool IsUnsent => !_apart && _json != _copy.Document;

    /// <summary>Forgets that something came from elsewhere, once she has read it.</summary>
    public void Noticed()
    {
        CameIn = [];
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Answers the question.</summary>
    /// <param name="theirs">The parts in which theirs is to hold; in all others mine holds.</param>
    public async Task AnswerAsync(IReadOnlyCollection<WorksheetPart> theirs)
    {
        if (Question is not { } question) return;
        EndRun();
        Question = null;
        Worksheet answered = question.Join.Answered(theirs);
        if (question.Version is { } version)
        {
            await TakeInAsync(answered, question.Arrived, version, []);
        }
        else
        {
            string json = Json(answered);
            Use(answered, json);
            await KeepAsync(json, () => keeper.KeepAsync(json, inPlace: false));
        }

        await ExchangeAsync();
    }

    /// <summary>Brings an earlier save back, as a step that can be taken back like any other.</summary>
    /// <param name="version">Number of the save.</param>
    /// <returns>Whether the studio did it.</returns>
    public async Task<bool> RestoreAsync(int version)
    {
        await ExchangeAsync();
        if (IsUnsent || Question is not null) return false;
        StudioAnswer document = await studio.ReadSaveAsync(Sheet, version);
        if (!document.IsDone || !TryRead(document.Text).TryGet(out Worksheet? earlier)) return false;
        StudioAnswer restored = await studio.RestoreAsync(Sheet, version, _copy.Version);
        if (!restored.IsDone) return false;
        _copy = _copy with { Version = restored.Version, Document = Json(earlier), Title = earlier.Title };
        await KeepCopyAsync();
        Decide(earlier);
        return true;
    }

    /// <summary>Sends what is not sent, and takes in what the studio has newer.</summary>
    public async Task ExchangeAsync()
    {
        if (_exchanging)
        {
            _again = true;
            return;
        }

        _exchanging = true;
        try
        {
            do
            {
                _again = false;
                await ExchangeOnceAsync();
            }
            while (_again && Question is null && Refusal is null && !_away);
        }
        catch (JSException)
        {
            _refused = true;
        }
        finally
        {
            _exchanging = false;
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    private async Task ExchangeOnceAsync()
    {
        if (Question is not null || _apart || Sheet.Length == 0) return;
        (string sheet, string sent, SheetCopy copy) = (Sheet, _json, _copy);
        bool sending = IsUnsent;
        StudioAnswer answer = sending ? await studio.SaveAsync(sheet, sent, copy.Version) : await studio.ReadAsync(sheet, copy.Version);
        // Another worksheet, or another tab's news: ask again for what lies on the desk now.
        if (sheet != Sheet || copy.Version != _copy.Version)
        {
            _again = true;
            return;
        }

        _away = answer.IsAway;
        Refusal = null;
        if (_away)
        {
            _ = RetryAsync();
        }
        else if (answer.IsDone && sending)
        {
            _copy = _copy with { Title = Worksheet.Title, Version = answer.Version, Document = sent, Unsent = sent != _json };
            await KeepCopyAsync();
            PageScript.TellTabs(Sheet);
            _again = IsUnsent;
        }
        else if (answer.IsDone)
        {
            await ArriveAsync(answer.Text, answer.Version);
        }
        else if (answer.Status == 412 && answer.Report?.Current is { } current)
        {
            await ArriveAsync(current.Worksheet.GetRawText(), current.Version);
        }
        else if (answer.Status == 404)
        {
            // A studio that does not know the worksheet, for example a new folder: it gets it as something new.
            _copy = _copy with { Version = 0, Document = null, Unsent = true };
            _again = true;
        }
        else if (answer.Status != 304)
        {
            Refusal = answer.Report is { } report ? report.Detail : $"{answer.Status}";
        }
    }

    private async Task ArriveAsync(string text, int version)
    {
        Parsed<Worksheet> read = TryRead(text);
        if (!read.TryGet(out Worksheet? theirs))
        {
            Refusal = $"{read.Problem!.What} {read.Problem.Mend}";
            return;
        }

        Settle();
        Worksheet? origin = _copy.Document is null ? null : Read(_copy.Document);
        WorksheetJoin join = WorksheetJoin.Of(origin, Worksheet, theirs);
        string arrived = Json(theirs);
        if (join.Questions.IsEmpty) await TakeInAsync(join.Joined, arrived, version, join.Taken);
        else Question = new SheetQuestion(origin, join, arrived, version);
    }

    // The document on the desk changes before anything is awaited: no step made meanwhile is lost.
    private async Task TakeInAsync(Worksheet joined, string arrived, int version, ImmutableArray<WorksheetPart> taken)
    {
        (string before, string after) = (_json, Json(joined));
        _copy = _copy with { Title = joined.Title, Version = version, Document = arrived, Unsent = after != arrived };
        if (before != after)
        {
            EndRun();
            _copy = _copy.With(new Arrival(before, after, keeper.Last));
            CameIn = [.. CameIn.Union(taken)];
            Use(joined, after);
            _agreed = after;
            Changed?.Invoke(this, EventArgs.Empty);
        }

        await KeepCopyAsync();
        if (before != after && !await keeper.TouchAsync()) await FollowTabsAsync();
        PageScript.TellTabs(Sheet);
        _again = IsUnsent;
    }

    private async Task MarkUnsentAsync()
    {
        if (_apart) return;
        if (IsUnsent != _copy.Unsent || Worksheet.Title != _copy.Title) _copy = _copy with { Unsent = IsUnsent, Title = Worksheet.Title };
        if (!ReferenceEquals(_copy, _written)) await KeepCopyAsync();
    }

    private async Task SendSoonAsync()
    {
        int edit = ++_edits;
        await Task.Delay(Pause);
        if (edit == _edits) await ExchangeAsync();
    }

    private async Task RetryAsync()
    {
        if (_retrying) return;
        _retrying = true;
        for (TimeSpan wait = FirstRetry; _away; wait = wait * 2 < LongestRetry ? wait * 2 : LongestRetry)
        {
            await Task.Delay(wait);
            await ExchangeAsync();
        }

        _retrying = false;
    }

    private async Task LookAgainAsync()
    {
        while (true)
        {
            await Task.Delay(LookInterval);
            await ExchangeAsync();
        }
    }

    // A step that was kept before something came from elsewhere is shown with it: undo takes back her own steps only.
    private string WithArrivals(string json, int step) => WithArrivals(json, step, _copy);

    private static string WithArrivals(string json, int step, SheetCopy copy)
    {
        foreach (Arrival arrival in copy.Arrivals.Where(a => a.UpTo >= step))
        {
            if (json == arrival.Before)
            {
                json = arrival.After;
                continue;
            }

            WorksheetJoin join = WorksheetJoin.Of(Read(arrival.Before), Read(json), Read(arrival.After));
            json = Json(join.Answered(join.Questions));
        }

        return json;
    }
}
