namespace Clothwright.Core.Weaves.Faults;

/// <summary>A pick was woven twice.</summary>
/// <param name="Pick">0-based pick that lies there twice.</param>
public sealed record PickDoubled(int Pick) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.PickDoubled;

    internal override (int Place, int Detail) Order => (Pick, 0);

    /// <inheritdoc />
    public override Draft Apply(Draft draft)
    {
        Checked(Pick, draft.Picks, nameof(Pick));
        Draft yarns = draft with { WeftOrder = Doubled(draft.WeftOrder, draft.Picks, Pick) };
        return draft.LiftPlan.IsEmpty
            ? yarns with { Treadling = draft.Treadling.Insert(Pick, draft.Treadling[Pick]) }
            : yarns with { LiftPlan = draft.LiftPlan.Insert(Pick, draft.LiftPlan[Pick]) };
    }

    /// <inheritdoc />
    public override string Describe(Draft draft) =>
        $"Pick {Pick + 1} ({SlipWords.Pressed(draft, Pick)}) is woven twice; with one shuttle the second pulls the first out at the edge.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven)
    {
        int back = Math.Max(0, picksWoven - Pick - 1);
        return new SlipMend($"Unweave to pick {Pick + 2} ({SlipWords.Count(back, "pick")}): the second of the two comes out too. Weave on from there.", back, 0);
    }
}
