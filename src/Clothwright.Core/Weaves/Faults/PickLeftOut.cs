namespace Clothwright.Core.Weaves.Faults;

/// <summary>A pick is missing.</summary>
/// <param name="Pick">0-based pick of the draft that is missing.</param>
public sealed record PickLeftOut(int Pick) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.PickLeftOut;

    internal override (int Place, int Detail) Order => (Pick, 0);

    /// <inheritdoc />
    public override Draft Apply(Draft draft)
    {
        Checked(Pick, draft.Picks, nameof(Pick));
        Draft yarns = draft with { WeftOrder = Without(draft.WeftOrder, draft.Picks, Pick) };
        return draft.LiftPlan.IsEmpty
            ? yarns with { Treadling = draft.Treadling.RemoveAt(Pick) }
            : yarns with { LiftPlan = draft.LiftPlan.RemoveAt(Pick) };
    }

    /// <inheritdoc />
    public override string Describe(Draft draft) => $"Pick {Pick + 1} ({SlipWords.Pressed(draft, Pick)}) is left out.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven)
    {
        int back = Math.Max(0, picksWoven - Pick);
        return new SlipMend(
            $"Unweave the {SlipWords.Count(back, "pick")} after pick {Pick}, weave pick {Pick + 1} ({SlipWords.Pressed(draft, Pick)}), and go on.", back, 0);
    }
}
