using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Editing;

/// <content>More or fewer shafts and treadles, and their numbers.</content>
public static partial class DraftEdits
{
    /// <summary>The draft on another number of shafts.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="shafts">Shafts, 1 to 64.</param>
    /// <returns>The draft, or the problem: a shaft above that number is in use.</returns>
    public static Parsed<Draft> WithShafts(this Draft draft, int shafts)
    {
        ArgumentNullException.ThrowIfNull(draft);
        int highest = new[] { draft.Threading, draft.TieUp, draft.LiftPlan }.SelectMany(line => line).Max(set => set.Max);
        if (shafts < highest)
        {
            return new InputProblem($"Shaft {highest} is in use, so {shafts} are too few.", "shafts", $"Keep {highest}, or move what is on the shafts above {shafts} first.");
        }

        return DraftCheck.Checked(draft with { Shafts = shafts });
    }

    /// <summary>The draft with another number of treadles.</summary>
    /// <param name="draft">A draft with a tie-up.</param>
    /// <param name="treadles">Treadles, 1 to 64.</param>
    /// <returns>The draft, or the problem: a treadle above that number is pressed.</returns>
    public static Parsed<Draft> WithTreadles(this Draft draft, int treadles)
    {
        ArgumentNullException.ThrowIfNull(draft);
        int highest = draft.Treadling.IsEmpty ? 0 : draft.Treadling.Max(pick => pick.Max);
        if (treadles < Math.Max(1, highest))
        {
            return new InputProblem($"Treadle {highest} is pressed, so {treadles} are too few.", "treadles", $"Keep {highest}, or treadle its picks otherwise first.");
        }

        ImmutableArray<ShaftSet> tieUp = [.. draft.TieUp.Take(treadles), .. Enumerable.Repeat(ShaftSet.None, Math.Max(0, treadles - draft.Treadles))];
        return DraftCheck.Checked(draft with { TieUp = tieUp });
    }

    /// <summary>Two shafts change their numbers, with everything that is on them and tied to them: the cloth stays the same.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="one">1 to the number of shafts.</param>
    /// <param name="other">1 to the number of shafts.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such shaft.</exception>
    public static Draft ShaftsExchanged(this Draft draft, int one, int other)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Math.Max(one, other), draft.Shafts, nameof(one));
        return draft with
        {
            Threading = Exchanged(draft.Threading, one, other),
            TieUp = Exchanged(draft.TieUp, one, other),
            LiftPlan = Exchanged(draft.LiftPlan, one, other),
        };
    }

    /// <summary>Two treadles change their numbers, with their ties and the picks that press them: the cloth stays the same.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="one">1 to the number of treadles.</param>
    /// <param name="other">1 to the number of treadles.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such treadle.</exception>
    public static Draft TreadlesExchanged(this Draft draft, int one, int other)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentOutOfRangeException.ThrowIfLessThan(Math.Min(one, other), 1, nameof(one));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Math.Max(one, other), draft.Treadles, nameof(one));
        return draft with
        {
            TieUp = draft.TieUp.SetItem(one - 1, draft.TieUp[other - 1]).SetItem(other - 1, draft.TieUp[one - 1]),
            Treadling = Exchanged(draft.Treadling, one, other),
        };
    }

    private static ImmutableArray<ShaftSet> Exchanged(ImmutableArray<ShaftSet> line, int one, int other) =>
        [.. line.Select(set => ShaftMoves.Exchanged(set, one, other))];
}
