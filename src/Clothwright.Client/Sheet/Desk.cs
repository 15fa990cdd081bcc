using System.Runtime.InteropServices.JavaScript;
using System.Text;
using Clothwright.Client.Saving;
using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Client.Sheet;

/// <summary>The worksheet on the desk, what follows from it, and the way back through its steps.</summary>
public sealed partial class Desk(StepKeeper keeper, StudioCalls studio, UnsentSheets unsent)
{
    private string? _run;
    private string _json = "";
    private Worksheet? _beforeRun;
    private bool _refused;

    /// <summary>Raised after every change.</summary>
    public event EventHandler? Changed;

    /// <summary>Id of the worksheet.</summary>
    public string Sheet { get; private set; } = "";

    /// <summary>The decisions.</summary>
    public Worksheet Worksheet { get; private set; } = DemoSheet.Read();

    /// <summary>The newest plan that could be made.</summary>
    public PlanResult Plan { get; private set; } = null!;

    /// <summary>Why the present decisions cannot be planned; null when <see cref="Plan"/> is theirs.</summary>
    public InputProblem? Problem { get; private set; }

    /// <summary>Units in which she reads.</summary>
    public UnitStyle Units => Worksheet.Units;

    /// <summary>Whether the last step is kept safely, and where.</summary>
    public KeepState Kept => Question is not null ? KeepState.Asking
        : _refused ? KeepState.Refused
        : Refusal is not null ? KeepState.Declined
        : _away ? KeepState.Away
        : keeper.Pending > 0 ? KeepState.Keeping
        : IsUnsent ? KeepState.Sending
        : KeepState.Saved;

    /// <summary>Whether a step can be taken back.</summary>
    public bool CanUndo => keeper.Place > _copy.Floor;

    /// <summary>Whether a step taken back can be made again.</summary>
    public bool CanRedo => keeper.Place < keeper.Last;

    /// <summary>Takes a decision: the plan follows at once and the step is kept.</summary>
    /// <param name="next">The worksheet with the decision in it.</param>
    /// <param name="run">Decisions of one run, for example while one blank is being written, make one step; null for a step of its own.</param>
    public void Decide(Worksheet next, string? run = null)
    {
        ArgumentNullException.ThrowIfNull(next);
        Settle();
        string json = Json(next);
        if (json == _json) return;
        bool inPlace = run is not null && run == _run;
        if (!inPlace) _beforeRun = Worksheet;
        _run = run;
        Use(next, json);
        if (!_apart) _ = KeepAsync(json, () => keeper.KeepAsync(json, inPlace));
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Ends a run of decisions, so that the next is a step of its own.</summary>
    public void EndRun() => _run = null;

    /// <summary>Takes back what the present run decided, as if it had not been begun.</summary>
    public void GiveUpRun()
    {
        Settle();
        if (_run is null || _beforeRun is not { } before) return;
        string json = Json(before);
        EndRun();
        Use(before, json);
        _ = KeepAsync(json, () => keeper.DropAsync(json));
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Takes the last step back.</summary>
    public Task UndoAsync()
    {
        Settle();
        return CanUndo ? GoAsync(keeper.Place - 1) : Task.CompletedTask;
    }

    /// <summary>Makes the last step taken back again.</summary>
    public Task RedoAsync()
    {
        Settle();
        return CanRedo ? GoAsync(keeper.Place + 1) : Task.CompletedTask;
    }

    private async Task GoAsync(int step)
    {
        EndRun();
        string? kept = await keeper.GoAsync(step);
        if (kept is null)
        {
            // Another tab went on meanwhile: what it made is shown instead.
            await FollowTabsAsync();
            return;
        }

        string json = WithArrivals(kept, step);
        Use(Read(json), json);
        _agreed = json;
        PageScript.TellTabs(Sheet);
        Changed?.Invoke(this, EventArgs.Empty);
        await MarkUnsentAsync();
        _ = SendSoonAsync();
    }

    private void Use(Worksheet worksheet, string json)
    {
        Worksheet = worksheet;
        _json = json;
        _foreseen = null;
        Question = Question?.After(worksheet);
        Parsed<PlanResult> plan = worksheet.Plan();
        Problem = plan.Problem;
        if (plan.TryGet(out PlanResult? made)) Plan = made;
        Plan ??= DemoSheet.Read().Plan().Value;
    }

    private async Task KeepAsync(string json, Func<Task<bool>> keep)
    {
        try
        {
            Task<bool> keeping = keep();
            _copy = _copy.Stepped(keeper.Place);
            if (await keeping)
            {
                _agreed = json;
                _refused = false;
                PageScript.TellTabs(Sheet);
                await MarkUnsentAsync();
            }
            else
            {
                await MeetTabsAsync();
            }
        }
        catch (JSException)
        {
            _refused = true;
        }

        Changed?.Invoke(this, EventArgs.Empty);
        _ = SendSoonAsync();
    }

    private static string Json(Worksheet worksheet) => Encoding.UTF8.GetString(WorksheetWriter.Write(worksheet));

    private static Worksheet Read(string json) => TryRead(json).Value;

    private static Parsed<Worksheet> TryRead(string json) => WorksheetReader.Read(Encoding.UTF8.GetBytes(json));
}
