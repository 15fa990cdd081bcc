namespace Clothwright.Core.Weaves.Faults;

/// <summary>Two ends are threaded where there should be one, and all ends after moved over.</summary>
/// <param name="End">0-based end that lies there twice.</param>
public sealed record EndDoubled(int End) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.EndDoubled;

    internal override (int Place, int Detail) Order => (End, 0);

    /// <inheritdoc />
    public override Draft Apply(Draft draft) => draft with
    {
        Threading = draft.Threading.Insert(Checked(End, draft.Ends, nameof(End)), draft.Threading[End]),
        WarpOrder = Doubled(draft.WarpOrder, draft.Ends, End),
    };

    /// <inheritdoc />
    public override string Describe(Draft draft) =>
        $"End {End + 1} ({SlipWords.Shafts(draft.Threading[End])}) is doubled: two ends work alike side by side.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven)
    {
        int left = End, right = draft.Ends - End - 1;
        return new SlipMend(
            $"Pull one of ends {End + 1} and {End + 2} out behind and let it hang. If it leaves a gap, re-sley {SlipWords.FromEdge(left, right)} to close it.",
            0, Math.Min(left, right));
    }
}
