namespace Clothwright.Core.Weaves.Analysis.Threads;

/// <summary>The treadles, one or two together, that a tie-up already has for the sheds of plain weave.</summary>
/// <param name="OddEnds">Treadles to press for the shed of ends 1, 3, 5, …; null if no one or two give it.</param>
/// <param name="EvenEnds">Treadles to press for the shed of ends 2, 4, 6, …; null if no one or two give it.</param>
public sealed record TabbyTreadles(ShaftSet? OddEnds, ShaftSet? EvenEnds)
{
    /// <summary>Whether both sheds can be pressed as the loom is tied.</summary>
    public bool Both => OddEnds is not null && EvenEnds is not null;

    /// <summary>Looks for one treadle, then for two, that move just the ends of each shed.</summary>
    /// <param name="draft">A draft with a tie-up.</param>
    public static TabbyTreadles Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return new TabbyTreadles(Pressing(draft, 0), Pressing(draft, 1));
    }

    private static ShaftSet? Pressing(Draft draft, int firstEnd)
    {
        for (int first = 0; first < draft.Treadles; first++)
        {
            if (Opens(draft, draft.TieUp[first], firstEnd)) return ShaftSet.Of(first + 1);
        }

        for (int first = 0; first < draft.Treadles; first++)
        {
            for (int second = first + 1; second < draft.Treadles; second++)
            {
                if (Opens(draft, draft.TieUp[first] | draft.TieUp[second], firstEnd)) return ShaftSet.Of(first + 1, second + 1);
            }
        }

        return null;
    }

    private static bool Opens(Draft draft, ShaftSet lift, int firstEnd)
    {
        for (int end = 0; end < draft.Ends; end++)
        {
            if (draft.Threading[end].Overlaps(lift) != (end % 2 == firstEnd)) return false;
        }

        return draft.Ends > 1;
    }
}
