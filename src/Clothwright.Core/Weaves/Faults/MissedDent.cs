namespace Clothwright.Core.Weaves.Faults;

/// <summary>A dent is left empty, or holds one end too many: the spacing is wrong, the interlacing right.</summary>
/// <param name="End">0-based end after the gap, or the first end of the crowded dent.</param>
/// <param name="Crowded">True for a dent that holds too many.</param>
public sealed record MissedDent(int End, bool Crowded = false) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.MissedDent;

    internal override (int Place, int Detail) Order => (End, 0);

    /// <inheritdoc />
    public override Draft Apply(Draft draft)
    {
        Checked(End, draft.Ends, nameof(End));
        return draft;
    }

    /// <inheritdoc />
    public override string Describe(Draft draft) => Crowded
        ? $"The dent of end {End + 1} holds one end too many: a dense streak along the cloth, the weave itself is right."
        : $"A dent before end {End + 1} is empty: an open streak along the cloth, the weave itself is right.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven)
    {
        int left = End, right = draft.Ends - End;
        return new SlipMend(
            $"Re-sley {SlipWords.FromEdge(left, right)} by one dent. A single open streak may close in washing: weave a sample before you decide.",
            0, Math.Min(left, right));
    }
}
