namespace Clothwright.Core.Weaves.Faults;

/// <summary>A pick was woven with other treadles, or with another lift where the draft has a lift plan.</summary>
/// <param name="Pick">0-based pick.</param>
/// <param name="Pressed">Treadles pressed; with a lift plan the shafts moved.</param>
public sealed record WrongTreadle(int Pick, ShaftSet Pressed) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.WrongTreadle;

    internal override (int Place, int Detail) Order => (Pick, (int)(Pressed.Bits % int.MaxValue));

    /// <inheritdoc />
    public override Draft Apply(Draft draft)
    {
        Checked(Pick, draft.Picks, nameof(Pick));
        return draft.LiftPlan.IsEmpty
            ? draft with { Treadling = draft.Treadling.SetItem(Pick, Pressed) }
            : draft with { LiftPlan = draft.LiftPlan.SetItem(Pick, Pressed) };
    }

    /// <inheritdoc />
    public override string Describe(Draft draft) => draft.LiftPlan.IsEmpty
        ? $"Pick {Pick + 1} is woven on {SlipWords.Treadles(Pressed)} instead of {SlipWords.Treadles(draft.Treadling[Pick])}."
        : $"Pick {Pick + 1} moves {SlipWords.Shafts(Pressed)} instead of {SlipWords.Shafts(draft.LiftPlan[Pick])}.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven)
    {
        int back = Math.Max(0, picksWoven - Pick);
        string again = draft.LiftPlan.IsEmpty ? SlipWords.Treadles(draft.Treadling[Pick]) : SlipWords.Shafts(draft.LiftPlan[Pick]);
        return new SlipMend($"Unweave to pick {Pick + 1} ({SlipWords.Count(back, "pick")}), and weave on from there, pick {Pick + 1} with {again}.", back, 0);
    }

    internal override int Oddity(Draft draft) => Pressed.Count == 1 ? 0 : 2;
}
