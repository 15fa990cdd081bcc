namespace Clothwright.Core.Weaves.Faults;

/// <summary>Outward search for slips.</summary>
internal sealed class SlipSearch
{
    private readonly Draft _draft;
    private readonly ClothToExplain _cloth;
    private readonly long _most;
    private readonly ShaftSet[] _presses;
    private readonly HashSet<string> _seen = [];

    public SlipSearch(Draft draft, ClothToExplain cloth, long steps)
    {
        _cloth = cloth;
        _most = steps;
        _draft = Continued(draft, cloth.Picks + 8);
        IEnumerable<ShaftSet> used = draft.LiftPlan.IsEmpty ? draft.Treadling : draft.LiftPlan;
        int singles = draft.LiftPlan.IsEmpty ? draft.Treadles : draft.Shafts;
        _presses = [.. used.Concat(Enumerable.Range(1, singles).Select(t => ShaftSet.Of(t))).Append(ShaftSet.None).Distinct()];
    }

    public long Tried { get; private set; }

    public bool Exhausted { get; private set; }

    /// <summary>The draft with its treadling begun again as often as needed.</summary>
    public static Draft Continued(Draft draft, int picks) => draft.Picks >= picks
        ? draft
        : draft.LiftPlan.IsEmpty
            ? draft with { Treadling = [.. Enumerable.Range(0, picks).Select(p => draft.Treadling[p % draft.Picks])] }
            : draft with { LiftPlan = [.. Enumerable.Range(0, picks).Select(p => draft.LiftPlan[p % draft.Picks])] };

    /// <summary>All readings with a number of slips, if none has fewer.</summary>
    public List<Slip[]> WithExactly(int slips, bool missingOrDoubled)
    {
        var found = new List<Slip[]>();
        _seen.Clear();
        if (missingOrDoubled) Shifted(_draft, int.MaxValue, int.MaxValue, [], slips, found);
        else if (_draft.Ends == _cloth.Ends) Below(new SlipState(_draft, _cloth), [], slips, found);
        return found;
    }

    /// <summary>Crossings that a reading changes beyond need.</summary>
    public int Extra(IEnumerable<Slip> slips) => new SlipState(slips.Aggregate(_draft, (d, s) => s.Apply(d)), _cloth).Extra();

    /// <summary>The slips that together come closest, each making good at least three crossings.</summary>
    public (Slip[] Slips, int Left) Closest(int most)
    {
        if (_draft.Ends != _cloth.Ends) return ([], _cloth.Ends * _cloth.Picks);
        var chosen = new List<Slip>();
        var state = new SlipState(_draft, _cloth);
        int left = state.WrongCount();
        while (chosen.Count < most && left > 0)
        {
            Slip? best = null;
            int bestLeft = left - 2;
            foreach (Slip slip in state.WrongCrossings().SelectMany(c => state.SlipsAt(c.Pick, c.End, _presses)).Distinct())
            {
                int then = state.With(slip).WrongCount();
                if (then < bestLeft) (best, bestLeft) = (slip, then);
            }

            if (best is null) break;
            chosen.Add(best);
            state = state.With(best);
            left = bestLeft;
        }

        return ([.. chosen], left);
    }

    // Missing and doubled lines first, from the last to the first, so that each is numbered as planned; ends before picks.
    private void Shifted(Draft draft, int endsBelow, int picksBelow, List<Slip> made, int left, List<Slip[]> found)
    {
        if (Exhausted || Math.Abs(draft.Ends - _cloth.Ends) > left) return;
        if (draft.Ends == _cloth.Ends) Below(new SlipState(draft, _cloth), made, left, found);
        if (left == 0) return;
        for (int end = Math.Min(endsBelow, draft.Ends) - 1; end >= 0; end--)
        {
            // Of neighbours on one shaft the first stands for all, and may be taken again.
            if (end > 0 && draft.Threading[end] == draft.Threading[end - 1]) continue;
            bool run = end + 1 < draft.Ends && draft.Threading[end] == draft.Threading[end + 1];
            if (draft.Ends > 1) Try(new EndLeftOut(end), run ? end + 1 : end, int.MaxValue);
            Try(new EndDoubled(end), end + 1, int.MaxValue);
        }

        for (int pick = Math.Min(picksBelow, _cloth.Picks) - 1; pick >= 0; pick--)
        {
            if (pick > 0 && Pressed(draft, pick) == Pressed(draft, pick - 1)) continue;
            bool run = pick + 1 < draft.Picks && Pressed(draft, pick) == Pressed(draft, pick + 1);
            Try(new PickLeftOut(pick), 0, run ? pick + 1 : pick);
            Try(new PickDoubled(pick), 0, pick + 1);
        }

        void Try(Slip slip, int ends, int picks)
        {
            made.Add(slip);
            Shifted(slip.Apply(draft), ends, picks, made, left - 1, found);
            made.RemoveAt(made.Count - 1);
        }
    }

    private static ShaftSet Pressed(Draft draft, int pick) => draft.LiftPlan.IsEmpty ? draft.Treadling[pick] : draft.LiftPlan[pick];

    private void Below(SlipState state, List<Slip> made, int left, List<Slip[]> found)
    {
        if (Exhausted) return;
        if (Tried++ >= _most)
        {
            Exhausted = true;
            return;
        }

        if (!state.CanBeMended(left, out int pick, out int end)) return;
        if (pick < 0)
        {
            if (left == 0) found.Add([.. made]);
            return;
        }

        foreach (Slip slip in state.SlipsAt(pick, end, _presses))
        {
            made.Add(slip);
            if (_seen.Add(Key(made))) Below(state.With(slip), made, left - 1, found);
            made.RemoveAt(made.Count - 1);
        }
    }

    // Missing and doubled lines act in order, and so do crossings that share an end; the rest is a set.
    private static string Key(List<Slip> made)
    {
        var inOrder = new List<Slip>(made);
        for (int i = 1; i < inOrder.Count; i++)
        {
            for (int j = i; j > 0 && Exchangeable(inOrder[j - 1], inOrder[j]) && Compare(inOrder[j], inOrder[j - 1]) < 0; j--)
            {
                (inOrder[j], inOrder[j - 1]) = (inOrder[j - 1], inOrder[j]);
            }
        }

        return string.Join(';', inOrder.Select(s => s switch
        {
            WrongHeddle h => $"h{h.End}:{h.Shafts.Bits}",
            WrongTreadle t => $"t{t.Pick}:{t.Pressed.Bits}",
            _ => $"{(int)s.Kind},{s.Order.Place}:{s.Order.Detail}",
        }));

        static bool Exchangeable(Slip one, Slip other) => !MovesLines(one) && !MovesLines(other)
            && !(one is CrossedEnds a && other is CrossedEnds b && Math.Abs(a.End - b.End) < 2);

        static int Compare(Slip one, Slip other) => (one.Kind, one.Order).CompareTo((other.Kind, other.Order));
    }

    private static bool MovesLines(Slip slip) => slip is EndLeftOut or EndDoubled or PickLeftOut or PickDoubled;
}
