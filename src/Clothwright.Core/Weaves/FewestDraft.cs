using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves;

/// <summary>Finds the draft of a cloth with the fewest shafts, one shaft an end, and the fewest treadles, one treadle a pick.</summary>
public static class FewestDraft
{
    /// <summary>The draft with the fewest shafts and treadles, rising shed, numbered so that threading and treadling read straight or pointed where they can.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <returns>The draft, or why there is none: more than 64 shafts or treadles.</returns>
    public static Parsed<Draft> Of(Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        LineClasses picks = LineClasses.OfPicks(cloth);
        LineClasses ends = LineClasses.OfEnds(cloth);
        if (ends.Count > DraftLimits.Shafts) return TooMany("ends", "shafts", ends.Count, DraftLimits.Shafts);
        if (picks.Count > DraftLimits.Treadles) return TooMany("picks", "treadles", picks.Count, DraftLimits.Treadles);
        ImmutableArray<int> shaftOf = ThreadingOrder.Numbers(ends.ClassOf, ends.Count);
        ImmutableArray<int> treadleOf = ThreadingOrder.Numbers(picks.ClassOf, picks.Count);
        var tieUp = new ShaftSet[picks.Count];
        for (int treadle = 0; treadle < picks.Count; treadle++)
        {
            ulong bits = 0;
            for (int shaft = 0; shaft < ends.Count; shaft++)
            {
                if (cloth[picks.First[treadle], ends.First[shaft]]) bits |= 1UL << shaftOf[shaft];
            }

            tieUp[treadleOf[treadle]] = new ShaftSet(bits);
        }

        return new Draft
        {
            Shafts = ends.Count,
            Threading = [.. ends.ClassOf.Select(c => ShaftSet.Of(shaftOf[c] + 1))],
            TieUp = ImmutableArray.Create(tieUp),
            Treadling = [.. picks.ClassOf.Select(c => ShaftSet.Of(treadleOf[c] + 1))],
        };
    }

    private static InputProblem TooMany(string threads, string parts, int count, int limit) => new(
        $"The {threads} weave in {count} different ways, so the cloth needs {count} {parts}; a draft holds {limit}.",
        "drawdown",
        $"Take one repeat, or make {threads} weave alike until at most {limit} are left.");
}
