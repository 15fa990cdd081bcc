using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Clothwright.Client.Cloths;
using Clothwright.Core.Colours;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;

namespace Clothwright.Client.Drafting;

/// <summary>Hands drafts and what is marked in them to the script.</summary>
internal static class DraftPaper
{
    private static readonly int[] NoNumbers = [];

    /// <summary>Shows a draft.</summary>
    /// <param name="canvas">Id of the canvas.</param>
    /// <param name="draft">One repeat.</param>
    /// <param name="cloth">Its cloth, or what was painted on it.</param>
    /// <param name="shownEnds">Ends shown.</param>
    /// <param name="shownPicks">Picks shown.</param>
    /// <param name="turns">Which way round.</param>
    /// <param name="inNumbers">Whether cells hold numbers.</param>
    /// <param name="inYarns">Whether the cloth is in the colours of the yarns.</param>
    /// <param name="endColours">Colours of the ends shown; none to leave them out.</param>
    /// <param name="pickColours">Colours of the picks shown.</param>
    /// <param name="sketched">Whether the cloth is not what the draft weaves.</param>
    public static void Show(
        string canvas,
        Draft draft,
        Drawdown cloth,
        int shownEnds,
        int shownPicks,
        DraftTurns turns,
        bool inNumbers,
        bool inYarns,
        int[] endColours,
        int[] pickColours,
        bool sketched)
    {
        bool lifts = !draft.LiftPlan.IsEmpty;
        int[] sizes =
        [
            cloth.Ends, cloth.Picks, shownEnds, shownPicks, draft.Shafts, lifts ? draft.Shafts : draft.Treadles, lifts ? 0 : 1, turns.Bits,
            inYarns ? 1 : 0, inNumbers ? 1 : 0, sketched ? 1 : 0,
        ];
        DraftScript.Show(canvas, ClothSheet.Rows(cloth), sizes, Sets(draft.Threading), Sets(lifts ? [] : draft.TieUp), Sets(lifts ? draft.LiftPlan : draft.Treadling), endColours, pickColours);
    }

    /// <summary>Shows a draft that is only looked at: in ink and filled squares.</summary>
    /// <param name="canvas">Id of the canvas.</param>
    /// <param name="draft">One repeat.</param>
    /// <param name="leastEnds">So many ends are shown at least, in whole repeats.</param>
    /// <param name="leastPicks">So many picks are shown at least, in whole repeats.</param>
    public static void Show(string canvas, Draft draft, int leastEnds, int leastPicks)
    {
        Drawdown cloth = draft.Drawdown();
        static int Whole(int repeat, int least) => repeat * Math.Max(1, (least + repeat - 1) / repeat);
        Show(canvas, draft, cloth, Whole(cloth.Ends, leastEnds), Whole(cloth.Picks, leastPicks), DraftTurns.Of(DraftWay.AtTheLoom), inNumbers: false, inYarns: false, NoNumbers, NoNumbers, sketched: false);
    }

    /// <summary>Lays marks over a draft.</summary>
    /// <param name="canvas">Id of the canvas.</param>
    /// <param name="cursor">The cell under the cursor.</param>
    /// <param name="marked">Marked threads; null for none.</param>
    /// <param name="troubles">What is the matter; numbered in this order from 1.</param>
    /// <param name="reveal">Whether the cursor is brought into sight.</param>
    public static void Mark(string canvas, DeskPlace cursor, DeskMarks? marked, ImmutableArray<Trouble> troubles, bool reveal)
    {
        int[] at = [(int)cursor.Part, cursor.Thread, cursor.Number];
        int[] marks = marked is { } m ? [(int)m.Part, m.Threads.First, m.Threads.Count, m.Picks.First, m.Picks.Count] : [];
        int[] spots = [.. troubles.SelectMany((trouble, i) => trouble.Spots.SelectMany(s => new[] { Way(trouble), i + 1, s.Ends.First, s.Ends.Count, s.Picks.First, s.Picks.Count }))];
        DraftScript.Mark(canvas, at, marks, spots, reveal);
    }

    /// <summary>A colour as one number, red in the highest byte of three.</summary>
    public static int Number(SrgbColour colour) => (colour.Red << 16) | (colour.Green << 8) | colour.Blue;

    // As the script numbers them: floats of the face, floats of the back, whole threads, edges.
    private static int Way(Trouble trouble) => trouble.Kind switch
    {
        TroubleKind.LongFloat => trouble.Float is Core.Weaves.Analysis.Floats.FloatKind.WarpFace or Core.Weaves.Analysis.Floats.FloatKind.WeftFace ? 0 : 1,
        TroubleKind.LooseTurn => 3,
        _ => 2,
    };

    private static byte[] Sets(ImmutableArray<ShaftSet> sets) => MemoryMarshal.AsBytes(sets.AsSpan()).ToArray();
}
