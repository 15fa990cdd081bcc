using Clothwright.Core.Weaves;

namespace Clothwright.Drawing.Drafts;

/// <summary>Which ends and picks of a draft are drawn, and in which colours.</summary>
/// <param name="Ends">The ends.</param>
/// <param name="Picks">The picks.</param>
/// <param name="Colours">Colours to show: left out for a direction in which they repeat too slowly for a drawing.</param>
internal sealed record DraftAxes(DraftAxis Ends, DraftAxis Picks, DraftColours Colours)
{
    private const int EndsOfRepeats = 24;
    private const int PicksOfRepeats = 16;

    /// <summary>Chooses for a draft. A repeat is one of threads and colours together, unless that makes the drawing long.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="colours">Colours of the threads.</param>
    /// <param name="style">Style.</param>
    public static DraftAxes Of(Draft draft, DraftColours colours, DraftStyle style)
    {
        (DraftAxis ends, bool endColours) = Axis(
            draft.Ends, style, colours.Ends.Length, (a, b) => draft.Threading[a] == draft.Threading[b], (a, b) => colours.End(a) == colours.End(b), "ends", EndsOfRepeats);
        (DraftAxis picks, bool pickColours) = Axis(
            draft.Picks, style, colours.Picks.Length, (a, b) => SamePick(draft, a, b), (a, b) => colours.Pick(a) == colours.Pick(b), "picks", PicksOfRepeats);
        return new DraftAxes(ends, picks, new DraftColours(endColours ? colours.Ends : [], pickColours ? colours.Picks : []));
    }

    private static bool SamePick(Draft draft, int a, int b) =>
        draft.LiftPlan.IsEmpty ? draft.Treadling[a] == draft.Treadling[b] : draft.LiftPlan[a] == draft.LiftPlan[b];

    private static (DraftAxis Axis, bool Coloured) Axis(
        int count, DraftStyle style, int colours, Func<int, int, bool> same, Func<int, int, bool> sameColour, string noun, int drawn)
    {
        if (!style.BracketRepeats || count <= style.DrawnInFull) return (DraftAxis.Whole(count), colours > 0);
        if (colours < 2) return (DraftAxis.Shortened(count, same, noun, drawn), colours > 0);
        DraftAxis coloured = DraftAxis.Shortened(count, (a, b) => same(a, b) && sameColour(a, b), noun, drawn);
        if (style.Ink == DrawdownInk.Threads || coloured.Slots.Length <= style.DrawnInFull) return (coloured, true);
        DraftAxis plain = DraftAxis.Shortened(count, same, noun, drawn);
        return plain.Slots.Length < coloured.Slots.Length ? (plain, false) : (coloured, true);
    }
}
