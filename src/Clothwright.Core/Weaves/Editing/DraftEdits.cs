using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>Changes of a draft by hand: a draft in, a draft out. What cannot be woven any more is found by <see cref="DraftCheck"/>.</summary>
public static partial class DraftEdits
{
    /// <summary>The sets of a part, thread by thread; of a tie-up, treadle by treadle.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    public static ImmutableArray<ShaftSet> Line(this Draft draft, DraftPart part)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return part switch
        {
            DraftPart.Threading => draft.Threading,
            DraftPart.TieUp => draft.TieUp,
            DraftPart.Treadling => draft.Treadling,
            DraftPart.LiftPlan => draft.LiftPlan,
            _ => throw new ArgumentOutOfRangeException(nameof(part), part, "A draft has no such part."),
        };
    }

    /// <summary>The numbers that a thread of a part can have: shafts, in the treadling treadles.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    public static int Numbers(this Draft draft, DraftPart part)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return part == DraftPart.Treadling ? draft.Treadles : draft.Shafts;
    }

    /// <summary>The draft with other sets in a part.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="line">The sets, thread by thread.</param>
    public static Draft WithLine(this Draft draft, DraftPart part, ImmutableArray<ShaftSet> line)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return part switch
        {
            DraftPart.Threading => draft with { Threading = line },
            DraftPart.TieUp => draft with { TieUp = line },
            DraftPart.Treadling => draft with { Treadling = line },
            DraftPart.LiftPlan => draft with { LiftPlan = line },
            _ => throw new ArgumentOutOfRangeException(nameof(part), part, "A draft has no such part."),
        };
    }

    /// <summary>One cell filled or emptied.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="thread">0-based thread.</param>
    /// <param name="number">Shaft or treadle, from 1.</param>
    /// <param name="filled">Whether the cell is filled.</param>
    /// <param name="alone">Whether what else the thread has is emptied as the cell is filled: an end on one shaft, a pick on one treadle.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such cell.</exception>
    public static Draft WithCell(this Draft draft, DraftPart part, int thread, int number, bool filled, bool alone = false)
    {
        ImmutableArray<ShaftSet> line = draft.Line(part);
        ArgumentOutOfRangeException.ThrowIfNegative(thread);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(thread, line.Length);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, draft.Numbers(part));
        ShaftSet cell = ShaftSet.Of(number);
        ShaftSet before = alone && filled ? ShaftSet.None : line[thread];
        ShaftSet after = filled ? before | cell : before.Without(cell);
        return after == line[thread] ? draft : draft.WithLine(part, line.SetItem(thread, after));
    }

    /// <summary>Threads in another order, or more or fewer of them. Yarn orders move with their threads; picks keep the treadles they press when treadles come or go.</summary>
    /// <param name="draft">A draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="edit">The change.</param>
    /// <exception cref="Quantities.InputProblemException">The change cannot be made on so many threads.</exception>
    public static Draft Edited(this Draft draft, DraftPart part, LineEdit edit)
    {
        ArgumentNullException.ThrowIfNull(edit);
        ImmutableArray<ShaftSet> before = draft.Line(part);
        ImmutableArray<ShaftSet> after = edit.Apply(before);
        Draft changed = draft.WithLine(part, after);
        return part switch
        {
            DraftPart.Threading => changed with { WarpOrder = Moved(draft.WarpOrder, before.Length, edit) },
            DraftPart.TieUp when after.Length != before.Length => changed with { Treadling = Renumbered(draft.Treadling, before.Length, edit) },
            DraftPart.TieUp => changed,
            _ => changed with { WeftOrder = Moved(draft.WeftOrder, before.Length, edit) },
        };
    }

    private static ThreadOrder Moved(ThreadOrder order, int threads, LineEdit edit)
    {
        if (order.Repeat.Length == 1) return order;
        ImmutableArray<int> moved = edit.Apply<int>([.. Enumerable.Range(0, threads).Select(t => order[t])]);
        return moved.IsEmpty ? order : ThreadOrder.Of(moved.AsSpan());
    }

    private static ImmutableArray<ShaftSet> Renumbered(ImmutableArray<ShaftSet> treadling, int treadles, LineEdit edit)
    {
        ImmutableArray<int> order = edit.Apply<int>([.. Enumerable.Range(1, treadles)]);
        return [.. treadling.Select(pick => After(pick))];

        ShaftSet After(ShaftSet pick)
        {
            ShaftSet after = default;
            foreach (int treadle in pick.Members())
            {
                int place = order.IndexOf(treadle);
                if (place is >= 0 and < ShaftSet.Highest) after |= ShaftSet.Of(place + 1);
            }

            return after;
        }
    }
}
