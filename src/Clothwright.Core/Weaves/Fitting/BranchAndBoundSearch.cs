using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Exact search by taking and refusing treadles, with a limit of steps instead of a clock: the same input gives the same answer.</summary>
/// <param name="steps">Treadles taken or refused before it gives up proving, above 0.</param>
public sealed class BranchAndBoundSearch(long steps = BranchAndBoundSearch.UsualSteps) : ITieUpSearch
{
    /// <summary>Steps that take around a second.</summary>
    public const long UsualSteps = 300_000;

    /// <inheritdoc />
    public TieUpAnswer Solve(TieUpProblem problem)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(steps, 1);
        int byCount = problem.FewestByCount;
        TieUpAnswer direct = TieUpAnswer.Direct(problem, problem.Feet == 1 ? problem.Ways.Length : byCount);
        if (direct.Proved || problem.Ways.Length == 0) return direct;

        var state = new TreadleChoice(problem);
        int[] best = [.. direct.Chosen];
        long left = steps;
        bool finished = Explore(state, ref best, ref left, byCount);
        bool proved = finished && (problem.Complete || best.Length <= byCount);
        ImmutableArray<int> chosen = [.. best.Order()];
        return new TieUpAnswer(chosen, proved, proved ? chosen.Length : byCount, steps - left);
    }

    // True when everything below has been looked at.
    private static bool Explore(TreadleChoice state, ref int[] best, ref long left, int byCount)
    {
        if (best.Length <= byCount) return true;
        if (left-- <= 0) return false;
        int mark = state.Mark;
        bool finished = true;
        if (state.Settle(best.Length - 1) && !state.Done)
        {
            int candidate = state.Branch();
            int before = state.Mark;
            state.Take(candidate);
            finished = Explore(state, ref best, ref left, byCount);
            state.BackTo(before);
            if (finished)
            {
                state.Refuse(candidate);
                finished = Explore(state, ref best, ref left, byCount);
            }
        }
        else if (state.Done && state.Taken < best.Length)
        {
            best = state.TakenCandidates();
        }

        state.BackTo(mark);
        return finished;
    }
}
