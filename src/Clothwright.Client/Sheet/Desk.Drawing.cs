using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Sheet;

/// <content>Decisions that are drawn: the cloth is seen at once, the plan follows when it has been painted.</content>
public sealed partial class Desk
{
    // A plan that takes longer than a frame waits until the hand rests.
    private const double FrameMilliseconds = 12;
    private const int RestMilliseconds = 60;

    private PlanResult? _foreseen;
    private bool _unsettled;
    private bool _newStep;
    private int _drawings;
    private double _settling;

    /// <summary>Raised when a weave was drawn that is not planned yet; <see cref="Changed"/> follows with the plan.</summary>
    public event EventHandler? Drawn;

    /// <summary>The newest plan with the weave as it is drawn now: what the cloth will look like.</summary>
    public PlanResult Foreseen => _foreseen ?? Plan;

    /// <summary>The weave drawn last, with the decision that it was made from; null before anything was drawn.</summary>
    internal DrawnWeave? DrawnWeave { get; private set; }

    /// <summary>The cloth of a weave that was drawn and is not planned yet; null where the plan is of what was drawn last.</summary>
    internal Drawdown? ForeseenCloth => _foreseen is null ? null : DrawnWeave?.Cloth;

    /// <summary>Takes another weave of the worksheet, as it is being drawn.</summary>
    /// <param name="next">The worksheet with the weave in it.</param>
    /// <param name="run">Decisions of one run make one step; null for a step of its own.</param>
    public void Draw(Worksheet next, string? run = null)
    {
        ArgumentNullException.ThrowIfNull(next);
        if (next.Weave.Equals(Worksheet.Weave)) return;
        bool inPlace = run is not null && run == _run;
        if (!inPlace)
        {
            Settle();
            _beforeRun = Worksheet;
            _newStep = true;
        }

        _run = run;
        _unsettled = true;
        Worksheet = next;
        Parsed<Weave> weave = next.Weave.Resolve();
        if (weave.TryGet(out Weave? drawn))
        {
            DrawnWeave = new DrawnWeave(next.Weave, drawn, drawn.Draft.Drawdown());
            if (Problem is null) _foreseen = Plan with { Request = Plan.Request with { Weave = drawn } };
        }

        Drawn?.Invoke(this, EventArgs.Empty);
        _ = SettleAfterPaintAsync(++_drawings);
    }

    private async Task SettleAfterPaintAsync(int drawing)
    {
        await PageScript.AfterPaintAsync();
        if (_settling > FrameMilliseconds) await Task.Delay(RestMilliseconds);
        if (drawing != _drawings || !_unsettled) return;
        double start = PageScript.Now();
        Settle();
        _settling = PageScript.Now() - start;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    // Plans and keeps what was drawn last.
    private void Settle()
    {
        if (!_unsettled) return;
        _unsettled = false;
        string json = Json(Worksheet);
        if (json == _json)
        {
            _foreseen = null;
            return;
        }

        bool inPlace = !_newStep;
        _newStep = false;
        Use(Worksheet, json);
        if (!_apart) _ = KeepAsync(json, () => keeper.KeepAsync(json, inPlace));
    }
}
