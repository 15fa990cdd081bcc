using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Weaves.Fitting;
using Google.OrTools.Sat;

namespace Clothwright.Solving.TieUps;

/// <summary>Finds the fewest treadles with a constraint solver, for drafts too large for the plain search; stops at a time limit.</summary>
/// <param name="timeLimit">Time for the solver, above 0; the plain search goes first and takes a second or two.</param>
/// <param name="plainSteps">Steps of the plain search that goes first and often suffices; above 0.</param>
public sealed class SolverTieUpSearch(TimeSpan timeLimit, long plainSteps = 3_000) : ITieUpSearch
{
    /// <inheritdoc />
    public TieUpAnswer Solve(TieUpProblem problem)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(timeLimit, TimeSpan.Zero);
        TieUpAnswer first = new BranchAndBoundSearch(plainSteps).Solve(problem);
        if (first.Proved) return first;

        var model = new CpModel();
        BoolVar[] tied = [.. problem.Candidates.Select((_, c) => model.NewBoolVar(Invariant("treadle", c)))];
        var counts = new Dictionary<ImmutableArray<int>, BoolVar>(new SameWay());
        foreach (ImmutableArray<ImmutableArray<int>> ways in problem.Ways)
        {
            model.AddBoolOr(ways.Select(way => way.Length == 1 ? tied[way[0]] : AllOf(way)));
        }

        var total = LinearExpr.Sum(tied);
        model.AddLinearConstraint(total, first.AtLeast, first.Chosen.Length);
        model.Minimize(total);
        var chosen = first.Chosen.ToHashSet();
        for (int c = 0; c < tied.Length; c++) model.AddHint(tied[c], chosen.Contains(c) ? 1 : 0);

        var solver = new CpSolver
        {
            // One worker and a fixed seed: the same question takes the same path.
            StringParameters = string.Create(CultureInfo.InvariantCulture, $"max_time_in_seconds:{timeLimit.TotalSeconds:0.###} num_workers:1 random_seed:1 symmetry_level:2"),
        };
        CpSolverStatus status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)) return first;
        ImmutableArray<int> found = [.. Enumerable.Range(0, tied.Length).Where(c => solver.BooleanValue(tied[c]))];
        int bound = problem.Complete ? Math.Max(first.AtLeast, (int)Math.Ceiling(solver.BestObjectiveBound - 1e-6)) : first.AtLeast;
        bool proved = status == CpSolverStatus.Optimal && problem.Complete;
        return new TieUpAnswer(found, proved || found.Length <= bound, proved ? found.Length : Math.Min(bound, found.Length), first.Steps + solver.NumBranches());

        // A variable that may only be true if every treadle of the way is tied; one for each way, whatever the lift.
        BoolVar AllOf(ImmutableArray<int> way)
        {
            if (counts.TryGetValue(way, out BoolVar? all)) return all;
            all = model.NewBoolVar(Invariant("way", counts.Count));
            foreach (int c in way) model.AddImplication(all, tied[c]);
            return counts[way] = all;
        }
    }

    private static string Invariant(string name, int number) => string.Create(CultureInfo.InvariantCulture, $"{name}{number}");

    private sealed class SameWay : IEqualityComparer<ImmutableArray<int>>
    {
        public bool Equals(ImmutableArray<int> x, ImmutableArray<int> y) => x.AsSpan().SequenceEqual(y.AsSpan());

        public int GetHashCode(ImmutableArray<int> way)
        {
            var hash = new HashCode();
            foreach (int c in way) hash.Add(c);
            return hash.ToHashCode();
        }
    }
}
