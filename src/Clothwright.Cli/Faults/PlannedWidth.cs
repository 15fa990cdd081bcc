using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Cli.Faults;

/// <summary>How wide the warp was meant to be, when only a repeat of its draft is given.</summary>
internal static class PlannedWidth
{
    /// <summary>The draft as wide and as long as what is seen: whole repeats, if with a few ends missing or doubled they come to its width.</summary>
    /// <param name="draft">The draft, of one repeat or of the whole warp.</param>
    /// <param name="seenEnds">Ends that are seen.</param>
    /// <param name="seenPicks">Picks that are seen.</param>
    /// <param name="meant">Ends that were meant; null if she did not say.</param>
    /// <param name="mostSlips">Ends by which both may differ.</param>
    /// <exception cref="InputProblemException">The ends meant and those seen lie too far apart.</exception>
    public static Draft Of(Draft draft, int seenEnds, int seenPicks, int? meant, int mostSlips)
    {
        int ends = meant ?? (Math.Abs(seenEnds - draft.Ends) <= mostSlips ? draft.Ends : Repeats(draft.Ends, seenEnds, mostSlips));
        if (ends < 1 || Math.Abs(ends - seenEnds) > mostSlips)
        {
            throw new InputProblemException(new InputProblem(
                $"{seenEnds} ends are seen and {ends} were meant; with {mostSlips} slips at most that cannot be.", "--ends", "Give the ends of the draft that the piece shows, and the piece over that width."));
        }

        return draft.Repeated(ends, Math.Max(draft.Picks, seenPicks));
    }

    private static int Repeats(int repeat, int seen, int mostSlips)
    {
        int whole = Math.Max(1, (int)Math.Round((double)seen / repeat)) * repeat;
        return Math.Abs(whole - seen) <= mostSlips ? whole : seen;
    }
}
