using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;

namespace Clothwright.Client.Drafting;

/// <content>Cursor and marks.</content>
public sealed partial class DraftWork
{
    private DeskPlace? _anchor;

    /// <summary>The part of the draft in which something lies; the cloth and the colours are none.</summary>
    /// <param name="part">The part of the paper.</param>
    public DraftPart? PartOf(DeskPart part) => part switch
    {
        DeskPart.Threading => DraftPart.Threading,
        DeskPart.TieUp => DraftPart.TieUp,
        DeskPart.Treads => Treads,
        _ => null,
    };

    /// <summary>Threads of a part as it is shown.</summary>
    /// <param name="part">The part.</param>
    public int Threads(DeskPart part) => part switch
    {
        DeskPart.TieUp => Math.Max(1, Draft.Treadles),
        DeskPart.Treads or DeskPart.WeftColours => ShownPicks,
        _ => ShownEnds,
    };

    /// <summary>Numbers of a part: shafts or treadles; in the cloth picks shown.</summary>
    /// <param name="part">The part.</param>
    public int Numbers(DeskPart part) => part switch
    {
        DeskPart.Cloth => ShownPicks,
        DeskPart.WarpColours or DeskPart.WeftColours => 0,
        DeskPart.Treads when !Lifts => Draft.Treadles,
        _ => Draft.Shafts,
    };

    /// <summary>Puts the cursor on a cell, as near as there is one.</summary>
    /// <param name="place">The cell.</param>
    public void PointAt(DeskPlace place) => Cursor = Kept(place);

    /// <summary>Marks threads from where marking began to a cell.</summary>
    /// <param name="place">The cell.</param>
    /// <param name="afresh">Whether marking begins here.</param>
    public void MarkTo(DeskPlace place, bool afresh)
    {
        if (afresh || _anchor is not { } anchor || anchor.Part != place.Part) _anchor = anchor = afresh ? place : Cursor.Part == place.Part ? Cursor : place;
        Marked = Kept(DeskMarks.Between(anchor, place));
        Cursor = Kept(place);
    }

    /// <summary>Marks a whole part, one repeat.</summary>
    public void MarkAll()
    {
        DeskPart part = Cursor.Part;
        Marked = Kept(new DeskMarks(part, new ThreadSpan(0, RepeatOf(part)), new ThreadSpan(0, part == DeskPart.Cloth ? Cloth.Picks : 1)));
    }

    /// <summary>Takes all marks away.</summary>
    public void Unmark()
    {
        Marked = null;
        _anchor = null;
    }

    /// <summary>The threads on which a verb works: those marked, else the one under the cursor; within one repeat.</summary>
    public DeskMarks Taken
    {
        get
        {
            DeskMarks marks = Marked ?? DeskMarks.Between(Cursor, Cursor);
            int repeat = RepeatOf(marks.Part);
            return marks with { Threads = Inside(marks.Threads, repeat), Picks = marks.Part == DeskPart.Cloth ? Inside(marks.Picks, Cloth.Picks) : marks.Picks };
        }
    }

    private int RepeatOf(DeskPart part) => part switch
    {
        DeskPart.TieUp => Math.Max(1, Draft.Treadles),
        DeskPart.Treads => Draft.Picks,
        DeskPart.WeftColours => Math.Max(1, WeftThreads.Length),
        DeskPart.WarpColours => Math.Max(1, WarpThreads.Length),
        DeskPart.Cloth => Cloth.Ends,
        _ => Draft.Ends,
    };

    // Marks beyond the repeat stand for the threads they repeat, as far as these lie together.
    private static ThreadSpan Inside(ThreadSpan span, int repeat)
    {
        int first = span.First % repeat;
        return new ThreadSpan(first, Math.Min(span.Count, repeat - first));
    }

    private DeskPlace Kept(DeskPlace place)
    {
        DeskPart part = place.Part == DeskPart.TieUp && Lifts ? DeskPart.Treads : place.Part;
        int numbers = Numbers(part);
        int number = part switch
        {
            DeskPart.Cloth => Math.Clamp(place.Number, 0, numbers - 1),
            DeskPart.WarpColours or DeskPart.WeftColours => 0,
            _ => Math.Clamp(place.Number, 1, Math.Max(1, numbers)),
        };
        return new DeskPlace(part, Math.Clamp(place.Thread, 0, Threads(part) - 1), number);
    }

    private DeskMarks? Kept(DeskMarks marks)
    {
        if (marks.Part == DeskPart.TieUp && Lifts) return null;
        return marks with
        {
            Threads = marks.Threads.Within(Threads(marks.Part)),
            Picks = marks.Part == DeskPart.Cloth ? marks.Picks.Within(ShownPicks) : marks.Picks,
        };
    }

    /// <summary>Whether the cell under the cursor is filled; in the cloth whether the warp is on top.</summary>
    public bool IsFilled(DeskPlace place) => place.Part switch
    {
        DeskPart.Cloth => Cloth[place.Number % Cloth.Picks, place.Thread % Cloth.Ends],
        DeskPart.WarpColours or DeskPart.WeftColours => true,
        _ => SetAt(place).Contains(place.Number),
    };

    /// <summary>What a thread is on.</summary>
    /// <param name="place">A cell of it, not in the cloth or the colours.</param>
    public ShaftSet SetAt(DeskPlace place)
    {
        var line = Draft.Line(PartOf(place.Part) ?? throw new ArgumentOutOfRangeException(nameof(place), place, "There are no shafts or treadles in this part."));
        return line.IsEmpty ? ShaftSet.None : line[place.Thread % line.Length];
    }
}
