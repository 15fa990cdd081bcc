using Clothwright.Core.Weaves;

namespace Clothwright.Drawing.Drafts;

/// <summary>Chooses which ends and picks of a draft are drawn.</summary>
internal static class DraftAxes
{
    /// <summary>The ends drawn; a repeat is one of threading and colours together.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="colours">Colours of the threads.</param>
    /// <param name="style">Style.</param>
    public static DraftAxis Ends(Draft draft, DraftColours colours, DraftStyle style) =>
        Axis(draft.Ends, style, colours.Ends.Length > 1, (a, b) => draft.Threading[a] == draft.Threading[b], (a, b) => colours.End(a) == colours.End(b), "ends", 24);

    /// <summary>The picks drawn.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="colours">Colours of the threads.</param>
    /// <param name="style">Style.</param>
    public static DraftAxis Picks(Draft draft, DraftColours colours, DraftStyle style) =>
        Axis(draft.Picks, style, colours.Picks.Length > 1, (a, b) => SamePick(draft, a, b), (a, b) => colours.Pick(a) == colours.Pick(b), "picks", 16);

    private static bool SamePick(Draft draft, int a, int b) =>
        draft.LiftPlan.IsEmpty ? draft.Treadling[a] == draft.Treadling[b] : draft.LiftPlan[a] == draft.LiftPlan[b];

    private static DraftAxis Axis(int count, DraftStyle style, bool coloured, Func<int, int, bool> same, Func<int, int, bool> sameColour, string noun, int drawn)
    {
        if (!style.BracketRepeats || count <= style.DrawnInFull) return DraftAxis.Whole(count);
        return DraftAxis.Shortened(count, coloured ? (a, b) => same(a, b) && sameColour(a, b) : same, noun, drawn);
    }
}
