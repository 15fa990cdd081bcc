namespace Clothwright.Core.Weaves.Faults;

/// <summary>An end hangs on another shaft, or on none.</summary>
/// <param name="End">0-based end.</param>
/// <param name="Shafts">Where it hangs.</param>
public sealed record WrongHeddle(int End, ShaftSet Shafts) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.WrongHeddle;

    internal override (int Place, int Detail) Order => (End, (int)(Shafts.Bits % int.MaxValue));

    /// <inheritdoc />
    public override Draft Apply(Draft draft)
    {
        if (Shafts.Max > draft.Shafts) throw new ArgumentOutOfRangeException(nameof(draft), Shafts.Max, $"The draft has {draft.Shafts} shafts.");
        return draft with { Threading = draft.Threading.SetItem(Checked(End, draft.Ends, nameof(End)), Shafts) };
    }

    /// <inheritdoc />
    public override string Describe(Draft draft) =>
        $"End {End + 1} is on {SlipWords.Shafts(Shafts)} instead of {SlipWords.Shafts(draft.Threading[End])}.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven) => new(
        $"Tie a repair heddle on {SlipWords.Shafts(draft.Threading[End])} beside end {End + 1}. Cut the end behind the fell, draw it out of its wrong heddle, "
        + "through the repair heddle and its own dent, and pin it to the cloth. "
        + (picksWoven > 0 ? $"Darn it into the {SlipWords.Count(picksWoven, "pick")} already woven after washing, or unweave them." : "Nothing is woven yet: simply re-thread it."),
        0, 1);

    // A heddle on the next shaft is the commonest to take by mistake.
    internal override int Oddity(Draft draft) =>
        Shafts.Count != 1 ? 3 : Math.Min(Math.Abs(Shafts.Max - draft.Threading[End].Max), draft.Shafts - Math.Abs(Shafts.Max - draft.Threading[End].Max)) == 1 ? 0 : 1;
}
