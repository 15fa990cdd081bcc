namespace Clothwright.Core.Weaves.Faults;

/// <summary>Two neighbouring ends have changed places, in the heddles or between heddles and reed.</summary>
/// <param name="End">0-based left-hand end of the two.</param>
public sealed record CrossedEnds(int End) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.CrossedEnds;

    internal override (int Place, int Detail) Order => (End, 0);

    /// <inheritdoc />
    public override Draft Apply(Draft draft)
    {
        Checked(End + 1, draft.Ends, nameof(End));
        Checked(End, draft.Ends, nameof(End));
        return draft with { Threading = draft.Threading.SetItem(End, draft.Threading[End + 1]).SetItem(End + 1, draft.Threading[End]) };
    }

    /// <inheritdoc />
    public override string Describe(Draft draft) => $"Ends {End + 1} and {End + 2} have changed places.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven) => new(
        $"See whether ends {End + 1} and {End + 2} cross between heddles and reed (they rub and block the shed) or sit in each other's heddles. "
        + "Loosen or cut both in front of the reed, draw each through its own heddle and dent, and pin them to the cloth again.",
        0, 2);
}
