namespace Clothwright.Core.Weaves.Faults;

/// <summary>A treadle is tied to a shaft that it should not move, or is not tied to one that it should.</summary>
/// <param name="Treadle">Treadle, from 1.</param>
/// <param name="Shaft">Shaft, from 1.</param>
public sealed record WrongTie(int Treadle, int Shaft) : Slip
{
    /// <inheritdoc />
    public override SlipKind Kind => SlipKind.WrongTie;

    internal override (int Place, int Detail) Order => (Treadle, Shaft);

    /// <inheritdoc />
    public override Draft Apply(Draft draft)
    {
        Checked(Treadle - 1, draft.Treadles, nameof(Treadle));
        Checked(Shaft - 1, draft.Shafts, nameof(Shaft));
        return draft with
        {
            TieUp = draft.TieUp.SetItem(Treadle - 1, new ShaftSet(draft.TieUp[Treadle - 1].Bits ^ ShaftSet.Of(Shaft).Bits)),
        };
    }

    /// <inheritdoc />
    public override string Describe(Draft draft) => draft.TieUp[Treadle - 1].Contains(Shaft)
        ? $"Treadle {Treadle} is not tied to shaft {Shaft}."
        : $"Treadle {Treadle} is also tied to shaft {Shaft}.";

    /// <inheritdoc />
    public override SlipMend Mend(Draft draft, int picksWoven)
    {
        int first = 0;
        while (first < Math.Min(picksWoven, draft.Picks) && !draft.Treadling[first].Contains(Treadle)) first++;
        int back = Math.Max(0, picksWoven - first);
        string tie = draft.TieUp[Treadle - 1].Contains(Shaft) ? $"Tie treadle {Treadle} to shaft {Shaft}" : $"Untie shaft {Shaft} from treadle {Treadle}";
        return new SlipMend(
            back == 0 ? $"{tie}. No pick woven so far has used it." : $"{tie}. Then unweave to pick {first + 1} ({SlipWords.Count(back, "pick")}), the first that used it.",
            back, 0);
    }
}
