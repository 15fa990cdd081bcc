using System.Collections.Immutable;

namespace Clothwright.Drawing.Drafts;

/// <summary>The ends or the picks that a drawing shows, in order, with brackets over repeats.</summary>
/// <param name="Slots">The threads shown.</param>
/// <param name="Brackets">The brackets.</param>
internal sealed record DraftAxis(ImmutableArray<AxisSlot> Slots, ImmutableArray<AxisBracket> Brackets)
{
    private const int MostDrawnOfCut = 8;

    /// <summary>All threads of a row, none left out.</summary>
    /// <param name="count">How many.</param>
    public static DraftAxis Whole(int count) => new([.. Enumerable.Range(0, count).Select(i => new AxisSlot(i, false))], []);

    /// <summary>A row in which long runs of repeats are shortened.</summary>
    /// <param name="count">Threads in the row.</param>
    /// <param name="same">Whether two 0-based threads are worked alike.</param>
    /// <param name="noun">What a thread is called, for example <c>ends</c>.</param>
    /// <param name="drawnOfRepeats">Threads up to which repeats are drawn again, so that the figure can be seen.</param>
    public static DraftAxis Shortened(int count, Func<int, int, bool> same, string noun, int drawnOfRepeats)
    {
        var slots = ImmutableArray.CreateBuilder<AxisSlot>();
        var brackets = ImmutableArray.CreateBuilder<AxisBracket>();
        int told = 0;
        List<ThreadGroup> groups = ThreadRepeats.Find(count, same);
        for (int g = 0; g < groups.Count; g++)
        {
            ThreadGroup group = groups[g] with { First = groups[g].First + told, Period = groups[g].Period - told };
            told = g + 1 < groups.Count && groups[g + 1].Times == 1 ? CutRepeat(group, groups[g + 1], same) : 0;
            if (group.Period == 0) continue;
            int drawn = group.Times == 1 ? 1 : Math.Clamp(drawnOfRepeats / group.Period, 1, group.Times);
            if (group.Times > 1)
            {
                string what = group.Period == 1 ? $"× {group.Times}" : $"{group.Period} {noun} × {group.Times}";
                string cut = told > 0 ? $" + first {told}" : "";
                brackets.Add(new AxisBracket(slots.Count, slots.Count + group.Period - 1, what + cut));
            }

            for (int i = 0; i < group.Period * drawn; i++)
            {
                bool broken = drawn < group.Times && i == group.Period * drawn - 1;
                slots.Add(new AxisSlot(group.First + i, broken));
            }
        }

        return new DraftAxis(slots.ToImmutable(), brackets.ToImmutable());
    }

    // Threads after the repeats that only begin the repeat once more: told instead of drawn, unless they are few.
    private static int CutRepeat(ThreadGroup repeated, ThreadGroup rest, Func<int, int, bool> same)
    {
        if (repeated.Times == 1) return 0;
        int alike = 0;
        while (alike < Math.Min(rest.Period, repeated.Period) && same(repeated.First + alike, rest.First + alike)) alike++;
        return alike > MostDrawnOfCut ? alike : 0;
    }

    /// <summary>A part of the row, for a page of its own.</summary>
    /// <param name="from">0-based first slot.</param>
    /// <param name="count">Slots, at most as many as there are.</param>
    public DraftAxis Slice(int from, int count)
    {
        int until = Math.Min(from + count, Slots.Length);
        return new DraftAxis(
            [.. Slots.Skip(from).Take(until - from)],
            [.. Brackets
                .Where(b => b.LastSlot >= from && b.FirstSlot < until)
                .Select(b => b with { FirstSlot = Math.Max(b.FirstSlot, from) - from, LastSlot = Math.Min(b.LastSlot, until - 1) - from })]);
    }
}
