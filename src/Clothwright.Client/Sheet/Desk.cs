using System.Text;
using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Client.Sheet;

/// <summary>The worksheet on the desk, what follows from it, and the way back through its steps.</summary>
public sealed partial class Desk(StepKeeper keeper)
{
    private const string SheetName = "reedbed-scarves";

    private string? _run;
    private string _json = "";
    private Worksheet? _beforeRun;

    /// <summary>Raised after every change.</summary>
    public event EventHandler? Changed;

    /// <summary>The decisions.</summary>
    public Worksheet Worksheet { get; private set; } = DemoSheet.Read();

    /// <summary>The newest plan that could be made.</summary>
    public PlanResult Plan { get; private set; } = null!;

    /// <summary>Why the present decisions cannot be planned; null when <see cref="Plan"/> is theirs.</summary>
    public InputProblem? Problem { get; private set; }

    /// <summary>Units in which she reads.</summary>
    public UnitStyle Units => Worksheet.Units;

    /// <summary>Whether the last step is kept safely.</summary>
    public KeepState Kept { get; private set; } = KeepState.Kept;

    /// <summary>Whether a step can be taken back.</summary>
    public bool CanUndo => keeper.Place > 0;

    /// <summary>Whether a step taken back can be made again.</summary>
    public bool CanRedo => keeper.Place < keeper.Last;

    /// <summary>Opens the worksheet as she left it, or the demonstration.</summary>
    public async Task OpenAsync()
    {
        string? kept = await keeper.OpenAsync(SheetName);
        Parsed<Worksheet> read = kept is null ? DemoSheet.Read() : WorksheetReader.Read(Encoding.UTF8.GetBytes(kept));
        bool begin = kept is null || !read.Succeeded;
        Worksheet opened = begin ? DemoSheet.Read() : read.Value;
        Use(opened, Json(opened));
        if (begin) await keeper.BeginAsync(_json);
        Changed?.Invoke(this, EventArgs.Empty);
    }

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
        _ = KeepAsync(() => keeper.KeepAsync(json, inPlace));
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
        _ = KeepAsync(() => keeper.DropAsync(json));
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
        string json = await keeper.GoAsync(step);
        Use(WorksheetReader.Read(Encoding.UTF8.GetBytes(json)).Value, json);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private void Use(Worksheet worksheet, string json)
    {
        Worksheet = worksheet;
        _json = json;
        _foreseen = null;
        Parsed<PlanResult> plan = worksheet.Plan();
        Problem = plan.Problem;
        if (plan.TryGet(out PlanResult? made)) Plan = made;
        Plan ??= DemoSheet.Read().Plan().Value;
    }

    private async Task KeepAsync(Func<Task> keep)
    {
        Kept = KeepState.Keeping;
        try
        {
            await keep();
            Kept = KeepState.Kept;
        }
        catch (System.Runtime.InteropServices.JavaScript.JSException)
        {
            Kept = KeepState.Refused;
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    private static string Json(Worksheet worksheet) => Encoding.UTF8.GetString(WorksheetWriter.Write(worksheet));
}
