using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Weaves.Editing;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Drafting;

/// <content>The orders of yarns.</content>
public sealed partial class DraftWork
{
    private (ImmutableArray<ThreadRun> Runs, ImmutableArray<ThreadRun> Threads) _warp;
    private (ImmutableArray<WeftRun> Runs, ImmutableArray<WeftRun> Threads) _weft;

    /// <summary>The piece whose weft is shown.</summary>
    public PieceEntry Entry => Worksheet.Pieces[Math.Min(Piece, Worksheet.Pieces.Length - 1)];

    /// <summary>Yarns of the ends, one repeat of the order; empty if it is too long to be shown.</summary>
    internal ImmutableArray<ThreadRun> WarpThreads
    {
        get
        {
            if (_warp.Runs != Worksheet.Warp.Runs) _warp = (Worksheet.Warp.Runs, ColourLine.Threads(Worksheet.Warp.Runs));
            return _warp.Threads;
        }
    }

    /// <summary>Yarns of the ground picks, one repeat of the order; empty if it is too long to be shown.</summary>
    internal ImmutableArray<WeftRun> WeftThreads
    {
        get
        {
            if (_weft.Runs != Entry.Piece.Weft) _weft = (Entry.Piece.Weft, ColourLine.Threads(Entry.Piece.Weft));
            return _weft.Threads;
        }
    }

    /// <summary>The yarn of an end that is shown.</summary>
    /// <param name="end">0-based end.</param>
    public string YarnOfEnd(int end) => WarpThreads.IsEmpty ? Worksheet.Warp.Runs[0].YarnId : WarpThreads[end % WarpThreads.Length].YarnId;

    /// <summary>The yarn of a pick that is shown.</summary>
    /// <param name="pick">0-based pick.</param>
    public string YarnOfPick(int pick)
    {
        (bool pattern, int place) = RoleOf(pick);
        ImmutableArray<WeftRun> order = pattern && !Entry.Piece.PatternWeft.IsEmpty ? ColourLine.Threads(Entry.Piece.PatternWeft) : WeftThreads;
        return order.IsEmpty ? Entry.Piece.Weft[0].YarnId : order[place % order.Length].YarnId;
    }

    /// <summary>The yarns of the first picks, in order.</summary>
    /// <param name="picks">How many.</param>
    public IEnumerable<string> YarnsOfPicks(int picks)
    {
        if (Weave.HasPatternPicks) return Enumerable.Range(0, picks).Select(YarnOfPick);
        ImmutableArray<WeftRun> order = WeftThreads;
        return Enumerable.Range(0, picks).Select(p => order.IsEmpty ? Entry.Piece.Weft[0].YarnId : order[p % order.Length].YarnId);
    }

    // Which of its kind a pick is: ground picks and pattern picks have orders of their own.
    private (bool Pattern, int Place) RoleOf(int pick)
    {
        if (!Weave.HasPatternPicks) return (false, pick);
        ImmutableArray<ThreadRole> roles = Weave.PickRoles;
        ThreadRole role = roles[pick % roles.Length];
        int before = roles.Take(pick % roles.Length).Count(r => r == role);
        return (role == ThreadRole.Pattern, pick / roles.Length * roles.Count(r => r == role) + before);
    }

    private void LayYarn(DeskPart part, IEnumerable<int> threads, string run)
    {
        if (part == DeskPart.WarpColours)
        {
            ImmutableArray<ThreadRun> order = WarpThreads;
            foreach (int end in threads)
            {
                order = ColourLine.Reaching(order, end, Draft.Ends);
                if (!order.IsEmpty) order = order.SetItem(end % order.Length, new ThreadRun(Yarn, 1));
            }

            UseWarp(order, run);
            return;
        }

        ImmutableArray<WeftRun> ground = WeftThreads;
        ImmutableArray<WeftRun> pattern = ColourLine.Threads(Entry.Piece.PatternWeft);
        foreach (int pick in threads)
        {
            (bool isPattern, int place) = RoleOf(pick);
            ImmutableArray<WeftRun> order = ColourLine.Reaching(isPattern ? pattern : ground, place, Weave.HasPatternPicks ? 1 : Draft.Picks);
            if (order.IsEmpty) continue;
            order = order.SetItem(place % order.Length, order[place % order.Length] with { YarnId = Yarn, ClaspedWith = null });
            (ground, pattern) = isPattern ? (ground, order) : (order, pattern);
        }

        UseWeft(ground, pattern, run);
    }

    private void ReorderYarns(DeskMarks marks, LineEdit edit)
    {
        if (marks.Part == DeskPart.WarpColours)
        {
            ImmutableArray<ThreadRun> order = edit.Apply(WarpThreads);
            if (!order.IsEmpty) UseWarp(order, null);
        }
        else
        {
            ImmutableArray<WeftRun> order = edit.Apply(WeftThreads);
            if (!order.IsEmpty) UseWeft(order, ColourLine.Threads(Entry.Piece.PatternWeft), null);
        }
    }

    private void PutYarns(ImmutableArray<string> yarns, int at, bool between)
    {
        if (Cursor.Part == DeskPart.WarpColours)
        {
            ImmutableArray<ThreadRun> order = ColourLine.Reaching(WarpThreads, between ? at : at + yarns.Length - 1, Draft.Ends);
            UseWarp(Put(order, [.. yarns.Select(y => new ThreadRun(y, 1))], at, between), null);
        }
        else
        {
            ImmutableArray<WeftRun> order = ColourLine.Reaching(WeftThreads, between ? at : at + yarns.Length - 1, Draft.Picks);
            UseWeft(Put(order, [.. yarns.Select(y => new WeftRun(y, 1))], at, between), ColourLine.Threads(Entry.Piece.PatternWeft), null);
        }
    }

    private static ImmutableArray<T> Put<T>(ImmutableArray<T> order, ImmutableArray<T> yarns, int at, bool between)
    {
        if (order.IsEmpty) return order;
        int place = at % order.Length;
        if (between) return order.InsertRange(place, yarns);
        ImmutableArray<T>.Builder over = order.ToBuilder();
        for (int i = 0; i < yarns.Length && place + i < over.Count; i++) over[place + i] = yarns[i];
        return over.MoveToImmutable();
    }

    private void UseWarp(ImmutableArray<ThreadRun> threads, string? run)
    {
        if (!threads.IsEmpty) _desk.Decide(Worksheet with { Warp = Worksheet.Warp with { Runs = ColourLine.Runs(threads) } }, run);
    }

    private void UseWeft(ImmutableArray<WeftRun> ground, ImmutableArray<WeftRun> pattern, string? run)
    {
        if (ground.IsEmpty) return;
        int index = Math.Min(Piece, Worksheet.Pieces.Length - 1);
        Piece piece = Entry.Piece with { Weft = ColourLine.Runs(ground), PatternWeft = ColourLine.Runs(pattern) };
        _desk.Decide(Worksheet with { Pieces = Worksheet.Pieces.SetItem(index, Entry with { Piece = piece }) }, run);
    }
}
