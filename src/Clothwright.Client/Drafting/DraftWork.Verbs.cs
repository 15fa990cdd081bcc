using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;

namespace Clothwright.Client.Drafting;

/// <content>What is done to marked threads.</content>
public sealed partial class DraftWork
{
    private Copied? _copied;

    /// <summary>Whether what was copied can be put where the cursor is.</summary>
    public bool CanPut => _copied?.Fits(Cursor.Part) == true;

    /// <summary>Puts the threads taken in another order, or makes them more or fewer.</summary>
    /// <param name="edit">The change, for the threads taken.</param>
    public void Reorder(Func<ThreadSpan, LineEdit> edit) => Do(marks =>
    {
        LineEdit change = edit(marks.Threads);
        if (marks.Part == DeskPart.Cloth) Weaved(Cloth.WithEnds(change));
        else if (PartOf(marks.Part) is { } part) DecideMarked(Draft.Edited(part, change), marks, change);
        else ReorderYarns(marks, change);
    });

    /// <summary>Repeats the threads taken.</summary>
    /// <param name="times">How often more.</param>
    /// <param name="higher">Shafts or treadles by which each time begins higher.</param>
    public void Repeat(int times, int higher)
    {
        if (higher == 0) Reorder(span => new OnceMore(span, times));
        else Change((draft, part, span) => draft.Advanced(part, span, times, higher));
    }

    /// <summary>Changes the cells of the threads taken.</summary>
    /// <param name="change">The change.</param>
    public void Change(Func<Draft, DraftPart, ThreadSpan, Draft> change) => Do(marks =>
    {
        if (PartOf(marks.Part) is { } part) Decide(change(Draft, part, marks.Threads));
    });

    /// <summary>Leaves the threads taken out.</summary>
    public void TakeOut()
    {
        Reorder(span => new TakenOut(span));
        if (Problem is null) Unmark();
    }

    /// <summary>Takes the threads off everything they are on; in the cloth the weft comes to lie on top.</summary>
    public void Empty() => Do(marks =>
    {
        if (marks.Part == DeskPart.Cloth) Weaved(Cloth.Painted(Crossings(marks), warpOnTop: false));
        else if (PartOf(marks.Part) is { } part) Decide(Draft.Emptied(part, marks.Threads));
    });

    /// <summary>In the cloth: the warp comes to lie on top, or changes over.</summary>
    /// <param name="over">Whether it changes over.</param>
    public void Cover(bool over) => Do(marks => Weaved(over ? Cloth.ChangedOver(Crossings(marks)) : Cloth.Painted(Crossings(marks), warpOnTop: true)));

    /// <summary>Puts empty threads in before those taken.</summary>
    /// <param name="count">How many.</param>
    public void PutInEmpty(int count) => Do(marks =>
    {
        if (PartOf(marks.Part) is { } part) Decide(Draft.WithThreads(part, marks.Threads.First, [.. Enumerable.Repeat(ShaftSet.None, count)]));
        else if (marks.Part != DeskPart.Cloth) PutYarns([.. Enumerable.Repeat(Yarn, count)], marks.Threads.First, between: true);
    });

    /// <summary>Lays the yarn in the threads taken.</summary>
    public void LayYarn() => Do(marks => LayYarn(marks.Part, Enumerable.Range(Marked?.Threads.First ?? Cursor.Thread, Marked?.Threads.Count ?? 1), Run));

    /// <summary>Copies the threads taken.</summary>
    public void Copy() => Do(marks => _copied = marks.Part switch
    {
        DeskPart.Cloth => new Copied([], Cloth.Piece(marks.Threads.First, marks.Threads.Count, marks.Picks.First, marks.Picks.Count), []),
        DeskPart.WarpColours => new Copied([], null, [.. Enumerable.Range(marks.Threads.First, marks.Threads.Count).Select(YarnOfEnd)]),
        DeskPart.WeftColours => new Copied([], null, [.. Enumerable.Range(marks.Threads.First, marks.Threads.Count).Select(YarnOfPick)]),
        _ => new Copied([.. Draft.Line(PartOf(marks.Part)!.Value).Skip(marks.Threads.First).Take(marks.Threads.Count)], null, []),
    });

    /// <summary>Puts what was copied where the cursor is.</summary>
    /// <param name="between">Whether it goes between the threads, rather than over them.</param>
    public void PutCopied(bool between)
    {
        if (!CanPut || _copied is not { } copied) return;
        Do(_ =>
        {
            if (copied.Cloth is { } piece) Weaved(Cloth.WithOver(piece, new Crossing(Cursor.Number % Cloth.Picks, Cursor.Thread % Cloth.Ends)));
            else if (!copied.Yarns.IsEmpty) PutYarns(copied.Yarns, Cursor.Thread, between);
            else if (PartOf(Cursor.Part) is { } part) Decide(Placed(part, copied.Threads, Cursor.Thread % RepeatOf(Cursor.Part), between));
        });
    }

    /// <summary>Two shafts, or beside the cloth two treadles, change their numbers; the cloth stays the same.</summary>
    /// <param name="one">From 1.</param>
    /// <param name="other">From 1.</param>
    public void Exchange(int one, int other) => Do(_ =>
    {
        bool treadles = Cursor.Part == DeskPart.Treads && !Lifts;
        int most = treadles ? Draft.Treadles : Draft.Shafts;
        if (Math.Max(one, other) > most)
        {
            string what = treadles ? "treadles" : "shafts";
            throw new InputProblemException(new InputProblem($"There are {most} {what}, so {Math.Max(one, other)} cannot be exchanged.", "draft", $"Name two from 1 to {most}."));
        }

        Decide(treadles ? Draft.TreadlesExchanged(one, other) : Draft.ShaftsExchanged(one, other));
    });

    private Draft Placed(DraftPart part, ImmutableArray<ShaftSet> threads, int at, bool between)
    {
        ShaftSet all = ShaftSet.FirstOf(Draft.Numbers(part));
        ImmutableArray<ShaftSet> known = [.. threads.Select(t => t & all)];
        return between ? Draft.WithThreads(part, at, known) : Draft.WithOver(part, at, known);
    }

    // Marks go with the threads they were on, also when these become more.
    private void DecideMarked(Draft next, DeskMarks marks, LineEdit edit)
    {
        if (!Decide(next)) return;
        if (edit is BackAgain) Marked = marks with { Threads = new ThreadSpan(marks.Threads.First, 2 * marks.Threads.Count - 1) };
        if (edit is ChangedPlaces) Marked = marks with { Threads = new ThreadSpan(marks.Threads.End, marks.Threads.Count) };
    }

    private static IEnumerable<Crossing> Crossings(DeskMarks marks) =>
        from pick in Enumerable.Range(marks.Picks.First, marks.Picks.Count)
        from end in Enumerable.Range(marks.Threads.First, marks.Threads.Count)
        select new Crossing(pick, end);

    private void Do(Action<DeskMarks> verb)
    {
        Problem = null;
        try
        {
            _desk.EndRun();
            verb(Taken);
        }
        catch (InputProblemException refusal)
        {
            Problem = refusal.Problem;
        }
    }
}
