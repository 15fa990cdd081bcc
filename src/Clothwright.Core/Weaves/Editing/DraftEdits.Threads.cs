using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <content>Threads put in, run through and moved from shaft to shaft.</content>
public static partial class DraftEdits
{
    /// <summary>Threads put in before a thread.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="before">0-based thread before which they come; the number of threads to add them at the end.</param>
    /// <param name="threads">What they are on.</param>
    /// <remarks>They take the yarn of the thread before which they come.</remarks>
    public static Draft WithThreads(this Draft draft, DraftPart part, int before, ImmutableArray<ShaftSet> threads)
    {
        ImmutableArray<ShaftSet> line = draft.Line(part);
        ArgumentOutOfRangeException.ThrowIfNegative(before);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(before, line.Length);
        if (threads.IsEmpty) return draft;
        if (line.IsEmpty) return draft.WithLine(part, threads);
        if (part == DraftPart.TieUp) return draft.WithTies(before, threads);

        // Room is made by repeating a neighbour, so that whatever belongs to a thread comes along; then the sets are put over.
        var neighbour = new ThreadSpan(Math.Min(before, line.Length - 1), 1);
        return draft.Edited(part, new OnceMore(neighbour, threads.Length)).WithOver(part, before, threads, before == line.Length ? default : [line[neighbour.First]]);
    }

    /// <summary>Threads put over those that are there; those past the last thread are left out.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="at">0-based first thread that is put over.</param>
    /// <param name="threads">What they are on.</param>
    public static Draft WithOver(this Draft draft, DraftPart part, int at, ImmutableArray<ShaftSet> threads) => draft.WithOver(part, at, threads, default);

    /// <summary>Threads run straight or to a point and back from shaft to shaft, or from treadle to treadle.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="span">The threads.</param>
    /// <param name="from">Where the first is, from 1.</param>
    /// <param name="to">Where the run turns or begins again, from 1.</param>
    /// <param name="pointed">Whether it goes back the way it came.</param>
    public static Draft Run(this Draft draft, DraftPart part, ThreadSpan span, int from, int to, bool pointed) =>
        draft.WithOver(part, span.First, pointed ? ShaftRuns.Pointed(from, to, span.Count) : ShaftRuns.Straight(from, to, span.Count));

    /// <summary>Threads moved to higher shafts or treadles; past the highest they go on from 1.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="span">The threads.</param>
    /// <param name="by">Shafts or treadles; below 0 lower.</param>
    public static Draft Raised(this Draft draft, DraftPart part, ThreadSpan span, int by) =>
        draft.Each(part, span, (set, count) => ShaftMoves.Raised(set, by, count));

    /// <summary>Threads turned upside down: the highest shaft or treadle becomes the lowest.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="span">The threads.</param>
    public static Draft UpsideDown(this Draft draft, DraftPart part, ThreadSpan span) => draft.Each(part, span, ShaftMoves.UpsideDown);

    /// <summary>Threads emptied of what they are on.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="span">The threads.</param>
    public static Draft Emptied(this Draft draft, DraftPart part, ThreadSpan span) => draft.Each(part, span, (_, _) => ShaftSet.None);

    /// <summary>Threads followed by themselves, each time some shafts or treadles higher: an advancing run.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="span">The threads of one run.</param>
    /// <param name="times">Runs added, 1 or more.</param>
    /// <param name="by">How much higher each run begins than the one before; below 0 lower.</param>
    public static Draft Advanced(this Draft draft, DraftPart part, ThreadSpan span, int times, int by)
    {
        Draft repeated = draft.Edited(part, new OnceMore(span, times));
        for (int run = 1; run <= times; run++)
        {
            int shift = (int)((long)run * by % repeated.Numbers(part));
            repeated = repeated.Raised(part, span with { First = span.First + run * span.Count }, shift);
        }

        return repeated;
    }

    // Picks go on pressing the treadles they pressed; those that find no number any more are beyond what a draft holds.
    private static Draft WithTies(this Draft draft, int before, ImmutableArray<ShaftSet> ties)
    {
        ShaftSet Renumbered(ShaftSet pick)
        {
            ShaftSet after = default;
            foreach (int treadle in pick.Members())
            {
                int number = treadle > before ? treadle + ties.Length : treadle;
                if (number <= ShaftSet.Highest) after |= ShaftSet.Of(number);
            }

            return after;
        }

        return draft with { TieUp = draft.TieUp.InsertRange(before, ties), Treadling = [.. draft.Treadling.Select(Renumbered)] };
    }

    private static Draft WithOver(this Draft draft, DraftPart part, int at, ImmutableArray<ShaftSet> threads, ImmutableArray<ShaftSet> behind)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(at);
        ImmutableArray<ShaftSet>.Builder line = draft.Line(part).ToBuilder();
        for (int i = 0; i < threads.Length && at + i < line.Count; i++) line[at + i] = threads[i];
        for (int i = 0; !behind.IsDefault && i < behind.Length; i++) line[at + threads.Length + i] = behind[i];
        return draft.WithLine(part, line.MoveToImmutable());
    }

    private static Draft Each(this Draft draft, DraftPart part, ThreadSpan span, Func<ShaftSet, int, ShaftSet> change)
    {
        ImmutableArray<ShaftSet>.Builder line = draft.Line(part).ToBuilder();
        int count = draft.Numbers(part);
        for (int thread = Math.Max(0, span.First); thread < span.End && thread < line.Count; thread++) line[thread] = change(line[thread], count);
        return draft.WithLine(part, line.MoveToImmutable());
    }
}
