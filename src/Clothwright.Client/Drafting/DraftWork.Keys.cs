namespace Clothwright.Client.Drafting;

/// <content>Work by keyboard.</content>
public sealed partial class DraftWork
{
    /// <summary>A key is struck.</summary>
    /// <param name="key">Its name.</param>
    /// <param name="shift">Whether marks are carried on.</param>
    /// <param name="control">Whether the control key is held.</param>
    /// <param name="turns">Which way round the draft is drawn.</param>
    /// <param name="page">Threads in sight.</param>
    /// <returns>Whether the key meant something.</returns>
    public bool Strike(string key, bool shift, bool control, DraftTurns turns, int page)
    {
        Problem = null;
        (int right, int up) = key switch
        {
            "ArrowRight" => (1, 0),
            "ArrowLeft" => (-1, 0),
            "ArrowUp" => (0, 1),
            "ArrowDown" => (0, -1),
            "PageUp" => (0, page),
            "PageDown" => (0, -page),
            _ => (0, 0),
        };
        if (right != 0 || up != 0)
        {
            if (control) Across(right, up, turns);
            else Go(Moved(Cursor, right, up, turns), shift);
            return true;
        }

        switch (key)
        {
            case "Home":
                Go(Cursor with { Thread = 0, Number = control && Cursor.Part == DeskPart.Cloth ? 0 : Cursor.Number }, shift);
                return true;
            case "End":
                Go(Cursor with { Thread = RepeatOf(Cursor.Part) - 1, Number = control && Cursor.Part == DeskPart.Cloth ? Cloth.Picks - 1 : Cursor.Number }, shift);
                return true;
            case "Space" or "Enter":
                Toggle();
                return true;
            case "Escape":
                Unmark();
                return true;
            case "Delete":
                TakeOut();
                return true;
            case "Backspace":
                Empty();
                return true;
            case "Insert":
                PutInEmpty(1);
                return true;
            case "a" when control:
                MarkAll();
                return true;
            case "c" when control:
                Copy();
                return true;
            case "x" when control:
                Copy();
                TakeOut();
                return true;
            case "v" when control:
                PutCopied(between: false);
                return true;
            default:
                return !control && key.Length == 1 && Number(key[0]) is { } number && Write(number);
        }
    }

    private static int? Number(char key) => key switch
    {
        >= '0' and <= '9' => key - '0',
        >= 'a' and <= 'z' => key - 'a' + 10,
        _ => null,
    };

    // A number written on a thread puts it there, 0 takes it off everything, and the cursor goes on to the next.
    private bool Write(int number)
    {
        if (PartOf(Cursor.Part) is not { } part || number > Numbers(Cursor.Part)) return false;
        DeskPlace at = Cursor with { Number = Math.Max(1, number) };
        Cursor = at;
        _desk.EndRun();
        int threads = Draft.Ends;
        if (part != Core.Weaves.Editing.DraftPart.Threading) threads = RepeatOf(at.Part);
        var line = Core.Weaves.Editing.DraftEdits.WithOver(Draft, part, at.Thread % threads, [number == 0 ? Core.Weaves.ShaftSet.None : Core.Weaves.ShaftSet.Of(number)]);
        bool done = Decide(line);
        Cursor = Kept(at with { Thread = Math.Min(at.Thread + 1, Threads(at.Part) - 1) });
        return done;
    }

    private void Go(DeskPlace place, bool shift)
    {
        DeskPlace kept = Kept(place);
        if (shift)
        {
            if (Marked is null) _anchor = Cursor;
            MarkTo(kept, afresh: false);
        }
        else
        {
            Cursor = kept;
            _anchor = null;
        }
    }

    private static DeskPlace Moved(DeskPlace at, int right, int up, DraftTurns turns)
    {
        int end = turns.EndsFromRight ? -right : right;
        int pick = turns.FirstPickAtTop ? -up : up;
        int shaft = turns.ThreadingBelow ? -up : up;
        int column = turns.TreadsLeft ? -right : right;
        return at.Part switch
        {
            DeskPart.Threading => at with { Thread = at.Thread + end, Number = at.Number + shaft },
            DeskPart.TieUp => at with { Thread = at.Thread + column, Number = at.Number + shaft },
            DeskPart.Treads => at with { Thread = at.Thread + pick, Number = at.Number + column },
            DeskPart.Cloth => at with { Thread = at.Thread + end, Number = at.Number + pick },
            DeskPart.WarpColours => at with { Thread = at.Thread + end },
            _ => at with { Thread = at.Thread + pick },
        };
    }

    // To the part that lies that way; end and pick stay.
    private void Across(int right, int up, DraftTurns turns)
    {
        int outward = right != 0 ? (turns.TreadsLeft ? -right : right) : 0;
        int beyond = up != 0 ? (turns.ThreadingBelow ? -up : up) : 0;
        DeskPlace at = Cursor;
        Cursor = Kept((at.Part, Math.Sign(outward), Math.Sign(beyond)) switch
        {
            (DeskPart.Cloth, 0, 1) => new DeskPlace(DeskPart.Threading, at.Thread, 1),
            (DeskPart.Cloth, 1, 0) => new DeskPlace(DeskPart.Treads, at.Number, 1),
            (DeskPart.Threading, 0, -1) => new DeskPlace(DeskPart.Cloth, at.Thread, _pickLeft),
            (DeskPart.Threading, 0, 1) => new DeskPlace(DeskPart.WarpColours, at.Thread, 0),
            (DeskPart.Threading, 1, 0) when !Lifts => new DeskPlace(DeskPart.TieUp, 0, at.Number),
            (DeskPart.Threading, 1, 0) => new DeskPlace(DeskPart.Treads, ShownPicks - 1, 1),
            (DeskPart.WarpColours, 0, -1) => new DeskPlace(DeskPart.Threading, at.Thread, Draft.Shafts),
            (DeskPart.TieUp, -1, 0) => new DeskPlace(DeskPart.Threading, ShownEnds - 1, at.Number),
            (DeskPart.TieUp, 0, -1) => new DeskPlace(DeskPart.Treads, ShownPicks - 1, at.Thread + 1),
            (DeskPart.Treads, -1, 0) => new DeskPlace(DeskPart.Cloth, _endLeft, at.Thread),
            (DeskPart.Treads, 1, 0) => new DeskPlace(DeskPart.WeftColours, at.Thread, 0),
            (DeskPart.Treads, 0, 1) when !Lifts => new DeskPlace(DeskPart.TieUp, at.Number - 1, 1),
            (DeskPart.WeftColours, -1, 0) => new DeskPlace(DeskPart.Treads, at.Thread, 1),
            _ => at,
        });
        if (at.Part == DeskPart.Cloth) (_endLeft, _pickLeft) = (at.Thread, at.Number);
        _anchor = null;
    }

    private int _endLeft;
    private int _pickLeft;
}
