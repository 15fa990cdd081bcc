using System.Numerics;

namespace Clothwright.Core.Weaves.Faults;

/// <summary>A draft with slips made, held against the cloth to explain.</summary>
internal sealed class SlipState
{
    private readonly Draft _draft;
    private readonly ClothToExplain _cloth;
    private readonly HashSet<int> _endsChanged;
    private readonly HashSet<int> _endsCrossed;
    private readonly HashSet<int> _picksChanged;
    private readonly HashSet<(int Treadle, int Shaft)> _tiesChanged;
    private readonly ulong[][] _endsOf;
    private readonly int _words;

    public SlipState(Draft draft, ClothToExplain cloth)
        : this(draft, cloth, [], [], [], [])
    {
    }

    private SlipState(Draft draft, ClothToExplain cloth, HashSet<int> ends, HashSet<int> crossed, HashSet<int> picks, HashSet<(int, int)> ties)
    {
        _draft = draft;
        _cloth = cloth;
        _endsChanged = ends;
        _endsCrossed = crossed;
        _picksChanged = picks;
        _tiesChanged = ties;
        _words = (draft.Ends + 63) / 64;
        _endsOf = new ulong[draft.Shafts + 1][];
        for (int shaft = 0; shaft <= draft.Shafts; shaft++) _endsOf[shaft] = new ulong[_words];
        for (int end = 0; end < draft.Ends; end++)
        {
            for (ulong on = draft.Threading[end].Bits; on != 0; on &= on - 1)
            {
                _endsOf[BitOperations.TrailingZeroCount(on) + 1][end >> 6] |= 1UL << (end & 63);
            }
        }
    }

    public SlipState With(Slip slip)
    {
        Draft draft = slip.Apply(_draft);
        return slip switch
        {
            WrongHeddle h => new(draft, _cloth, [.. _endsChanged, h.End], _endsCrossed, _picksChanged, _tiesChanged),
            CrossedEnds c => new(draft, _cloth, _endsChanged, [.. _endsCrossed, c.End, c.End + 1], _picksChanged, _tiesChanged),
            WrongTreadle t => new(draft, _cloth, _endsChanged, _endsCrossed, [.. _picksChanged, t.Pick], _tiesChanged),
            WrongTie t => new(draft, _cloth, _endsChanged, _endsCrossed, _picksChanged, [.. _tiesChanged, (t.Treadle, t.Shaft)]),
            _ => throw new ArgumentException($"A {slip.Kind} moves lines; it comes before the others.", nameof(slip)),
        };
    }

    /// <summary>Every slip not yet made that could have changed a crossing.</summary>
    public IEnumerable<Slip> SlipsAt(int pick, int end, ShaftSet[] presses)
    {
        ShaftSet on = _draft.Threading[end];
        ShaftSet pressed = _draft.LiftPlan.IsEmpty ? _draft.Treadling[pick] : _draft.LiftPlan[pick];
        if (!_endsChanged.Contains(end))
        {
            // A crossed end on yet another shaft is two wrong heddles as well.
            for (int shaft = 1; shaft <= _draft.Shafts && !_endsCrossed.Contains(end); shaft++)
            {
                if (on != ShaftSet.Of(shaft)) yield return new WrongHeddle(end, ShaftSet.Of(shaft));
            }

            if (on.Bits != 0 && !_endsCrossed.Contains(end)) yield return new WrongHeddle(end, ShaftSet.None);
            for (int left = Math.Max(0, end - 1); left <= end && left + 1 < _draft.Ends; left++)
            {
                if (_draft.Threading[left] == _draft.Threading[left + 1]) continue;
                if (!_endsChanged.Contains(left) && !_endsChanged.Contains(left + 1)) yield return new CrossedEnds(left);
            }
        }

        if (!_picksChanged.Contains(pick))
        {
            foreach (ShaftSet press in presses)
            {
                if (press != pressed) yield return new WrongTreadle(pick, press);
            }
        }

        if (!_draft.LiftPlan.IsEmpty) yield break;
        foreach (int treadle in pressed.Members())
        {
            if (treadle > _draft.Treadles) continue;
            foreach (int shaft in on.Members())
            {
                if (!_tiesChanged.Contains((treadle, shaft))) yield return new WrongTie(treadle, shaft);
            }
        }
    }

    public IEnumerable<(int Pick, int End)> WrongCrossings()
    {
        for (int pick = 0; pick < _cloth.Picks; pick++)
        {
            for (int word = 0; word < _words; word++)
            {
                for (ulong wrong = _cloth.Wrong(pick, word, Woven(pick, word)); wrong != 0; wrong &= wrong - 1)
                {
                    yield return (pick, (word << 6) + BitOperations.TrailingZeroCount(wrong));
                }
            }
        }
    }

    public int WrongCount() => WrongCrossings().Count();

    public int Extra()
    {
        int sum = 0;
        for (int pick = 0; pick < _cloth.Picks; pick++)
        {
            for (int word = 0; word < _words; word++) sum += BitOperations.PopCount(_cloth.Extra(pick, word, Woven(pick, word)));
        }

        return sum;
    }

    /// <summary>
    /// False if more than <paramref name="left"/> slips are needed: so many wrong crossings differ pairwise in pick, in end
    /// (and are no neighbours) and in tie. Else a wrong crossing to go on from, or −1 if there is none.
    /// </summary>
    public bool CanBeMended(int left, out int firstPick, out int firstEnd)
    {
        (firstPick, firstEnd) = (-1, -1);
        var apart = new List<(ShaftSet Pressed, int End)>();
        for (int pick = 0; pick < _cloth.Picks; pick++)
        {
            ShaftSet pressed = _draft.LiftPlan.IsEmpty ? _draft.Treadling[pick] : ShaftSet.None;
            bool taken = false;
            for (int word = 0; word < _words && !taken; word++)
            {
                for (ulong wrong = _cloth.Wrong(pick, word, Woven(pick, word)); wrong != 0 && !taken; wrong &= wrong - 1)
                {
                    int end = (word << 6) + BitOperations.TrailingZeroCount(wrong);
                    if (firstPick < 0) (firstPick, firstEnd) = (pick, end);
                    if (!apart.TrueForAll(a => Math.Abs(a.End - end) > 1
                        && !(a.Pressed.Overlaps(pressed) && _draft.Threading[a.End].Overlaps(_draft.Threading[end])))) continue;
                    apart.Add((pressed, end));
                    if (apart.Count > left) return false;
                    taken = true;
                }
            }
        }

        return true;
    }

    private ulong Woven(int pick, int word)
    {
        ulong moved = 0;
        for (ulong lift = _draft.Lift(pick).Bits; lift != 0; lift &= lift - 1)
        {
            int shaft = BitOperations.TrailingZeroCount(lift) + 1;
            if (shaft < _endsOf.Length) moved |= _endsOf[shaft][word];
        }

        if (_draft.RisingShed) return moved;
        int last = _draft.Ends - (word << 6);
        return ~moved & (last >= 64 ? ulong.MaxValue : (1UL << last) - 1);
    }
}
