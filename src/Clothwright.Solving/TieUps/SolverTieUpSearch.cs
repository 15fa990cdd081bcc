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

        (CpModel model, BoolVar[] tied) = Model(problem, first);
        var solver = new CpSolver
        {
            // One worker and a fixed seed: the same question takes the same path.
            StringParameters = string.Create(CultureInfo.InvariantCulture, $"max_time_in_seconds:{timeLimit.TotalSeconds:0.###} num_workers:1 random_seed:1 linearization_level:2"),
        };
        CpSolverStatus status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)) return first;
        ImmutableArray<int> found = [.. Enumerable.Range(0, tied.Length).Where(c => solver.BooleanValue(tied[c]))];
        int bound = problem.Complete ? Math.Max(first.AtLeast, (int)Math.Ceiling(solver.BestObjectiveBound - 1e-6)) : first.AtLeast;
        bool proved = status == CpSolverStatus.Optimal && problem.Complete;
        return new TieUpAnswer(found, proved || found.Length <= bound, proved ? found.Length : Math.Min(bound, found.Length), first.Steps + solver.NumBranches());
    }

    // Each lift takes exactly one of its ways; a treadle is tied if any lift takes a way through it.
    private static (CpModel Model, BoolVar[] Tied) Model(TieUpProblem problem, TieUpAnswer first)
    {
        var model = new CpModel();
        BoolVar[] tied = [.. problem.Candidates.Select((_, c) => model.NewBoolVar(Named("treadle", c)))];
        var uses = new List<BoolVar>[tied.Length];
        for (int c = 0; c < tied.Length; c++) uses[c] = [];
        var whole = new HashSet<int>();
        for (int lift = 0; lift < problem.Ways.Length; lift++)
        {
            var taken = new List<BoolVar>();
            var through = new Dictionary<int, List<BoolVar>>();
            foreach (ImmutableArray<int> way in problem.Ways[lift])
            {
                if (way.Length == 1) whole.Add(way[0]);
                BoolVar takes = model.NewBoolVar(Named("way", lift));
                taken.Add(takes);
                foreach (int c in way)
                {
                    if (!through.TryGetValue(c, out List<BoolVar>? list)) through[c] = list = [];
                    list.Add(takes);
                    uses[c].Add(takes);
                }
            }

            model.AddExactlyOne(taken);
            foreach ((int c, List<BoolVar> list) in through) model.Add(LinearExpr.Sum(list) <= tied[c]);
        }

        // A treadle that is no lift itself and serves one lift only may as well be that lift: such choices are left out.
        for (int c = 0; c < tied.Length; c++)
        {
            if (!whole.Contains(c)) model.Add(LinearExpr.Sum(uses[c]) >= 2 * tied[c]);
        }

        var total = LinearExpr.Sum(tied);
        model.AddLinearConstraint(total, first.AtLeast, first.Chosen.Length);
        model.Minimize(total);
        return (model, tied);
    }

    private static string Named(string name, int number) => string.Create(CultureInfo.InvariantCulture, $"{name}{number}");
}
