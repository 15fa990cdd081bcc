using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Sheet;

/// <content>Decisions that are tried before they are taken: the cloth shows what would come of them, the worksheet stays as it is.</content>
public sealed partial class Desk
{
    private Worksheet? _tried;
    private PlanResult? _triedPlan;

    /// <summary>What is being tried; null for nothing, and again once anything was decided.</summary>
    public Worksheet? Tried => IsTrying ? _tried : null;

    private bool IsTrying => _triedPlan is not null && ReferenceEquals(_triedPlan, _foreseen);

    /// <summary>Shows the cloth as it would be.</summary>
    /// <param name="next">The worksheet with the decision in it.</param>
    /// <returns>Why it cannot be planned; null where it can.</returns>
    public InputProblem? Try(Worksheet next)
    {
        ArgumentNullException.ThrowIfNull(next);
        Settle();
        Parsed<PlanResult> plan = next.Plan();
        if (!plan.TryGet(out PlanResult? made)) return plan.Problem;
        (_tried, _foreseen, _triedPlan) = (next, made, made);
        Changed?.Invoke(this, EventArgs.Empty);
        return null;
    }

    /// <summary>Takes what is being tried, as one step.</summary>
    public void TakeTried()
    {
        if (Tried is not { } tried) return;
        EndRun();
        Decide(tried);
    }

    /// <summary>Lets what is being tried go.</summary>
    public void LeaveTried()
    {
        if (!IsTrying) return;
        (_foreseen, _triedPlan) = (null, null);
        Changed?.Invoke(this, EventArgs.Empty);
    }
}
