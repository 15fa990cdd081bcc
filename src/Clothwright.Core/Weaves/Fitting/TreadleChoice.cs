using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>The state of the search for the fewest treadles: what is taken, what is refused, and what follows.</summary>
internal sealed class TreadleChoice
{
    private const byte Open = 0, In = 1, Out = 2;

    // How much a lift completed counts against a lift helped, by beginning.
    private static readonly int[] GainWeights = [5, 1000, 2, 1, 10];

    private readonly int[][] _wayMembers;
    private readonly int[] _wayLift;
    private readonly int[][] _liftWays;
    private readonly int[][] _waysOf;
    private readonly bool[] _isLift;
    private readonly byte[] _state;
    private readonly int[] _missing;
    private readonly int[] _dead;
    private readonly int[] _alive;
    private readonly int[] _covered;
    private readonly int[] _gain;
    private readonly int[] _uses;
    private readonly int[] _lastLift;
    private readonly List<int> _trail = [];
    private readonly int _feet;
    private int _uncovered;

    public TreadleChoice(TieUpProblem problem)
    {
        _feet = problem.Feet;
        int lifts = problem.Ways.Length, candidates = problem.Candidates.Length;
        var members = new List<int[]>();
        var owner = new List<int>();
        _liftWays = new int[lifts][];
        var waysOf = new List<int>[candidates];
        for (int c = 0; c < candidates; c++) waysOf[c] = [];
        _isLift = new bool[candidates];
        for (int lift = 0; lift < lifts; lift++)
        {
            var mine = new List<int>();
            foreach (ImmutableArray<int> way in problem.Ways[lift])
            {
                if (way.Length == 1) _isLift[way[0]] = true;
                foreach (int c in way) waysOf[c].Add(members.Count);
                mine.Add(members.Count);
                members.Add([.. way]);
                owner.Add(lift);
            }

            _liftWays[lift] = [.. mine];
        }

        _wayMembers = [.. members];
        _wayLift = [.. owner];
        _waysOf = [.. waysOf.Select(w => w.ToArray())];
        _state = new byte[candidates];
        _missing = [.. _wayMembers.Select(w => w.Length)];
        _dead = new int[_wayMembers.Length];
        _alive = [.. _liftWays.Select(w => w.Length)];
        _covered = new int[lifts];
        _gain = new int[candidates];
        _uses = new int[candidates];
        _lastLift = new int[candidates];
        _uncovered = lifts;
    }

    public int Mark => _trail.Count;

    /// <summary>The order in which candidates are tried: a number, from 0, always with the same order.</summary>
    public int Beginning { get; set; }

    public int Taken { get; private set; }

    public bool Done => _uncovered == 0;

    public int[] TakenCandidates() => [.. Enumerable.Range(0, _state.Length).Where(c => _state[c] == In)];

    public void Take(int candidate)
    {
        _state[candidate] = In;
        _trail.Add(candidate);
        Taken++;
        foreach (int way in _waysOf[candidate])
        {
            if (--_missing[way] == 0 && _dead[way] == 0 && _covered[_wayLift[way]]++ == 0) _uncovered--;
        }
    }

    public void Refuse(int candidate)
    {
        _state[candidate] = Out;
        _trail.Add(candidate);
        foreach (int way in _waysOf[candidate])
        {
            if (_dead[way]++ == 0) _alive[_wayLift[way]]--;
        }
    }

    public void BackTo(int mark)
    {
        while (_trail.Count > mark)
        {
            int candidate = _trail[^1];
            _trail.RemoveAt(_trail.Count - 1);
            bool taken = _state[candidate] == In;
            _state[candidate] = Open;
            if (taken) Taken--;
            foreach (int way in _waysOf[candidate])
            {
                if (!taken)
                {
                    if (--_dead[way] == 0) _alive[_wayLift[way]]++;
                }
                else if (_missing[way]++ == 0 && _dead[way] == 0 && --_covered[_wayLift[way]] == 0)
                {
                    _uncovered++;
                }
            }
        }
    }

    /// <summary>Draws the conclusions; false if no choice of at most <paramref name="most"/> treadles can follow.</summary>
    public bool Settle(int most)
    {
        while (true)
        {
            if (Taken > most) return false;
            if (Done) return true;
            Count();
            if (Fewest() > most - Taken) return false;
            bool changed = false;
            for (int lift = 0; lift < _alive.Length && !changed; lift++)
            {
                if (_covered[lift] > 0) continue;
                if (_alive[lift] == 0) return false;
                if (_alive[lift] == 1)
                {
                    int way = Array.Find(_liftWays[lift], w => _dead[w] == 0);
                    foreach (int c in _wayMembers[way])
                    {
                        if (_state[c] == Open) Take(c);
                    }

                    changed = true;
                }
            }

            // A treadle that could serve one lift only may as well be that lift itself.
            for (int c = 0; c < _state.Length && !changed; c++)
            {
                if (_state[c] == Open && !_isLift[c] && _uses[c] == 1)
                {
                    Refuse(c);
                    changed = true;
                }
            }

            if (!changed) return true;
        }
    }

    /// <summary>The candidate to decide next: of the lift with fewest ways, the one of most use.</summary>
    public int Branch()
    {
        int tightest = -1;
        for (int lift = 0; lift < _alive.Length; lift++)
        {
            if (_covered[lift] == 0 && (tightest < 0 || _alive[lift] < _alive[tightest])) tightest = lift;
        }

        int best = -1;
        foreach (int way in _liftWays[tightest])
        {
            if (_dead[way] > 0) continue;
            foreach (int c in _wayMembers[way])
            {
                if (_state[c] == Open && (best < 0 || Worth(c) > Worth(best))) best = c;
            }
        }

        return best;

        long Worth(int c) => Beginning < GainWeights.Length ? (long)GainWeights[Beginning] * _gain[c] + _uses[c] : Shuffled(c);
    }

    // Mixing of two numbers by multiplication, as in common hash functions; only its spread matters.
    private long Shuffled(int candidate)
    {
        unchecked
        {
            uint mixed = ((uint)Beginning * 0x9E3779B1u) ^ ((uint)candidate * 0x85EBCA77u);
            return (mixed * 0xC2B2AE3Du) >> 16;
        }
    }

    // _gain: lifts that this one treadle would complete; _uses: lifts it could help, 0, 1 or more.
    private void Count()
    {
        Array.Clear(_gain);
        Array.Clear(_uses);
        for (int lift = 0; lift < _alive.Length; lift++)
        {
            if (_covered[lift] > 0) continue;
            foreach (int way in _liftWays[lift])
            {
                if (_dead[way] > 0) continue;
                foreach (int c in _wayMembers[way])
                {
                    if (_state[c] != Open) continue;
                    if (_uses[c] == 0 || _lastLift[c] != (lift << 1 | 1))
                    {
                        if (_uses[c] == 0 || _lastLift[c] >> 1 != lift) _uses[c]++;
                        if (_missing[way] == 1)
                        {
                            _gain[c]++;
                            _lastLift[c] = lift << 1 | 1;
                        }
                        else
                        {
                            _lastLift[c] = lift << 1;
                        }
                    }
                }
            }
        }
    }

    // The fewest further treadles that could complete all open lifts: single ones by their gain, pairs by counting them.
    private int Fewest()
    {
        Span<int> byGain = stackalloc int[65];
        byGain.Clear();
        for (int c = 0; c < _gain.Length; c++)
        {
            if (_state[c] == Open && _gain[c] > 0) byGain[Math.Min(_gain[c], 64)]++;
        }

        long reach = 0;
        int level = 64;
        for (int more = 1; ; more++)
        {
            while (level > 0 && byGain[level] == 0) level--;
            if (level > 0)
            {
                reach += level == 64 ? _uncovered : level;
                byGain[level]--;
            }

            long pairs = (long)more * (more - 1) / 2;
            long shared = _feet < 2 ? 0 : _feet == 2 ? pairs : pairs * (1 + Taken) + pairs * Math.Max(0, more - 2) / 3;
            if (reach + shared >= _uncovered) return more;
            if (more > _uncovered) return more;
        }
    }
}
