using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Faults;

/// <summary>Finds the fewest slips that explain what is wrong with a cloth.</summary>
/// <remarks>
/// Outward search by number of slips. At the first wrong crossing something of its end, its pick or its tie must have
/// changed; each is tried. Wrong crossings that can have no slip in common bound the number still needed.
/// </remarks>
public static class FaultFinder
{
    /// <summary>Explains an observed cloth.</summary>
    /// <param name="draft">What was intended; after its last pick the treadling starts again.</param>
    /// <param name="observed">What is seen, from the first pick on, over the whole width; it may be the beginning of the cloth.</param>
    /// <param name="limits">How far to look.</param>
    /// <exception cref="InputProblemException">The limits cannot be used, or the draft has no ends or picks.</exception>
    public static FaultReport Find(Draft draft, Drawdown observed, FaultLimits? limits = null)
    {
        limits = Checked(draft, limits);
        var search = new SlipSearch(draft, new ObservedCloth(observed), limits.Steps);
        for (int slips = 0; slips <= limits.MostSlips; slips++)
        {
            List<Slip[]> found = search.WithExactly(slips, missingOrDoubled: true);
            if (found.Count > 0) return Report(draft, found.Select(f => (f, 0)), observed.Picks, !search.Exhausted, search.Tried);
            if (search.Exhausted) break;
        }

        (Slip[] closest, int left) = search.Closest(limits.MostSlips);
        return Report(draft, closest.Length == 0 ? [] : [(closest, left)], observed.Picks, false, search.Tried);
    }

    /// <summary>Explains marks where the cloth looks wrong; more crossings may be wrong than are marked.</summary>
    /// <param name="draft">What was intended.</param>
    /// <param name="wrong">Crossings that look wrong, 0-based.</param>
    /// <param name="limits">How far to look.</param>
    /// <exception cref="InputProblemException">A mark lies outside the cloth, or the limits or the draft cannot be used.</exception>
    public static FaultReport FindFromMarks(Draft draft, IEnumerable<(int Pick, int End)> wrong, FaultLimits? limits = null)
    {
        limits = Checked(draft, limits);
        var marks = wrong.ToHashSet();
        foreach ((int pick, int end) in marks)
        {
            if (pick < 0 || pick >= draft.Picks || end < 0 || end >= draft.Ends)
            {
                throw new InputProblemException(new InputProblem(
                    $"There is no crossing of pick {pick + 1} and end {end + 1}.", "marks",
                    $"Mark picks 1 to {draft.Picks} and ends 1 to {draft.Ends}."));
            }
        }

        var cloth = new MarkedCloth(draft.Drawdown(), marks);
        var search = new SlipSearch(draft, cloth, limits.Steps);
        for (int slips = 0; slips <= limits.MostSlips; slips++)
        {
            List<Slip[]> found = search.WithExactly(slips, missingOrDoubled: false);
            if (found.Count > 0)
            {
                return Report(draft, found.Select(f => (f, search.Extra(f))), draft.Picks, !search.Exhausted, search.Tried);
            }

            if (search.Exhausted) break;
        }

        return new FaultReport([], false, search.Tried);
    }

    private static FaultLimits Checked(Draft draft, FaultLimits? limits)
    {
        limits ??= new FaultLimits();
        if (limits.Problem() is { } problem) throw new InputProblemException(problem);
        if (draft.Ends > 0 && draft.Picks > 0) return limits;
        throw new InputProblemException(new InputProblem(
            $"A draft of {draft.Ends} ends and {draft.Picks} picks weaves nothing.", "draft", "Give it at least one end and one pick."));
    }

    private static FaultReport Report(Draft draft, IEnumerable<(Slip[] Slips, int Left)> found, int picksWoven, bool proved, long tried)
    {
        Draft continued = SlipSearch.Continued(draft, picksWoven + 8);
        ImmutableArray<FaultReading> readings =
        [
            .. found.Select(f => FaultReading.Of(continued, f.Slips, f.Left, picksWoven))
                .OrderBy(r => r.Left)
                .ThenBy(r => r.Steps.Sum(s => s.Oddity))
                .ThenBy(r => r.Steps.IsEmpty ? 0 : (int)r.Steps[0].Slip.Kind)
                .ThenBy(r => r.Steps.IsEmpty ? (0, 0) : r.Steps[0].Slip.Order),
        ];
        return new FaultReport(readings, proved, tried);
    }
}
