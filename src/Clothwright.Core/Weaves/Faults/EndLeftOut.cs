namespace Clothwright.Core.Weaves.Faults;

/// <summary>An end is missing, and all ends after it moved over.</summary>
/// <param name="End">0-based end of the draft that is missing.</param>
public sealed record EndLeftOut(int End) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.EndLeftOut;

    internal override (int Place, int Detail) Order => (End, 0);

    /// <inheritdoc />
    public override Draft Apply(Draft draft) => draft with
    {
        Threading = draft.Threading.RemoveAt(Checked(End, draft.Ends, nameof(End))),
        WarpOrder = Without(draft.WarpOrder, draft.Ends, End),
    };

    /// <inheritdoc />
    public override string Describe(Draft draft) =>
        $"End {End + 1} ({SlipWords.Shafts(draft.Threading[End])}) is left out.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven)
    {
        int left = End, right = draft.Ends - End - 1;
        return new SlipMend(
            $"Wind one more end and hang it weighted over the back beam. Tie a repair heddle for it on {SlipWords.Shafts(draft.Threading[End])} between ends {End} and {End + 1}, "
            + $"re-sley {SlipWords.FromEdge(left, right)} to make room, or let it share a dent, and pin it to the cloth.",
            0, 1 + Math.Min(left, right));
    }
}
