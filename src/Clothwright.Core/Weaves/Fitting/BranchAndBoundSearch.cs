using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Exact search by taking and refusing treadles, with a limit of steps instead of a clock: the same input gives the same answer.</summary>
/// <remarks>
/// It asks for each number of treadles, from the fewest by count upwards, whether that many do. A number that resists is
/// tried again from other beginnings before the next is asked, and what steps are left then go into closing the gap.
/// </remarks>
/// <param name="steps">Treadles taken or refused before it gives up proving, above 0; if left out <see cref="UsualSteps"/>, fewer where there are very many ways.</param>
public sealed class BranchAndBoundSearch(long? steps = null) : ITieUpSearch
{
    /// <summary>Steps enough for a proof on a draft of ten lifts or fewer, within a second; on larger ones it may take a few.</summary>
    public const long UsualSteps = 40_000;

    // A step looks at every way once or more; so many looks take a few seconds.
    private const long UsualLooks = 60_000_000;

    // Of all steps, the share that one number may take at first, and how many other beginnings are tried with how many steps each.
    private const int FirstShare = 8;
    private const int Beginnings = 30;
    private const long StepsOfABeginning = 300;

    /// <inheritdoc />
    public TieUpAnswer Solve(TieUpProblem problem)
    {
        long limit = steps ?? Math.Min(UsualSteps, Math.Max(StepsOfABeginning, UsualLooks / Math.Max(1, problem.Ways.Sum(w => (long)w.Length) + problem.Candidates.Length)));
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1, nameof(steps));
        int byCount = problem.FewestByCount;
        TieUpAnswer direct = TieUpAnswer.Direct(problem, problem.Feet == 1 ? problem.Ways.Length : byCount);
        if (direct.Proved || problem.Ways.Length == 0) return direct;

        var run = new Run(new TreadleChoice(problem), limit);
        int[] best = problem.Start.Length > 0 && problem.Start.Length < direct.Chosen.Length ? [.. problem.Start] : [.. direct.Chosen];
        int least = byCount;
        for (int aim = byCount; aim < best.Length; aim++)
        {
            if (run.Within(aim, Math.Max(1, limit / FirstShare)) is { } found) best = found;
            else if (run.Finished && aim == least) least++;
            else if (run.FromOtherBeginnings(aim) is { } other) best = other;
        }

        while (least < best.Length && run.Left > 0)
        {
            if (run.Within(least, run.Left) is { } found) best = found;
            else if (run.Finished) least++;
        }

        if (!problem.Complete) least = byCount;
        return new TieUpAnswer([.. best.Order()], best.Length <= least, Math.Min(least, best.Length), limit - run.Left);
    }

    private sealed class Run(TreadleChoice state, long steps)
    {
        private long _share;
        private int[]? _found;

        public long Left { get; private set; } = steps;

        /// <summary>Whether the last question was answered for certain.</summary>
        public bool Finished { get; private set; }

        /// <summary>A choice of at most so many treadles, or null if there is none or the steps ran out.</summary>
        public int[]? Within(int most, long share)
        {
            _share = Math.Min(share, Left);
            long before = _share;
            _found = null;
            Finished = Explore(most);
            Left -= before - Math.Max(0, _share);
            return _found;
        }

        public int[]? FromOtherBeginnings(int most)
        {
            for (int beginning = 1; beginning <= Beginnings && Left > 0; beginning++)
            {
                state.Beginning = beginning;
                if (Within(most, StepsOfABeginning) is not { } found) continue;
                state.Beginning = 0;
                return found;
            }

            state.Beginning = 0;
            return null;
        }

        // True when everything below has been looked at, or a choice is found.
        private bool Explore(int most)
        {
            if (_share <= 0) return false;
            _share--;
            int mark = state.Mark;
            bool finished = true;
            bool possible = state.Settle(most);
            if (possible && state.Done)
            {
                _found = state.TakenCandidates();
            }
            else if (possible)
            {
                int candidate = state.Branch();
                int before = state.Mark;
                state.Take(candidate);
                finished = Explore(most);
                state.BackTo(before);
                if (finished && _found is null)
                {
                    state.Refuse(candidate);
                    finished = Explore(most);
                }
            }

            state.BackTo(mark);
            return finished;
        }
    }
}
