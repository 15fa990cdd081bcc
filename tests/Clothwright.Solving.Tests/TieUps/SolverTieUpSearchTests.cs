using Clothwright.Core.Looms;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;
using Clothwright.Solving.TieUps;
using Clothwright.TestKit;

namespace Clothwright.Solving.Tests.TieUps;

public class SolverTieUpSearchTests
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(120);

    public static TheoryData<string, string, int> Rows()
    {
        var data = new TheoryData<string, string, int>();
        foreach (var row in MarkdownTable.Load("Tables/treadles.md").Rows.Where(r => !r["inputs"].StartsWith("feet 1", StringComparison.Ordinal)))
        {
            data.Add(row["id"], row["inputs"], int.Parse(row["expected"]));
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_solver_proves_every_published_number_of_treadles(string id, string inputs, int expected)
    {
        // One step of the plain search: the solver itself is under test.
        TieUpProblem problem = Problem(inputs);
        TieUpAnswer answer = new SolverTieUpSearch(Limit, plainSteps: 1).Solve(problem);
        Assert.True(answer.Proved, $"{id}: found {answer.Chosen.Length}, at least {answer.AtLeast}");
        Assert.Equal(expected, answer.Chosen.Length);
        Assert.Equal(problem.Ways.Length, answer.Presses(problem).Length);
    }

    [Fact]
    public void When_time_runs_out_the_best_found_is_given_as_not_proved()
    {
        TieUpProblem problem = Problem(MarkdownTable.Load("Tables/treadles.md").Rows.Single(r => r["id"] == "treadles-tied8-feet2")["inputs"]);
        TieUpAnswer answer = new SolverTieUpSearch(TimeSpan.FromMilliseconds(1), plainSteps: 1).Solve(problem);
        Assert.False(answer.Proved);
        Assert.InRange(answer.Chosen.Length, 8, 14);
        Assert.InRange(answer.AtLeast, 1, 8);
        Assert.Equal(problem.Ways.Length, answer.Presses(problem).Length);
    }

    [Fact]
    public void A_fit_with_the_solver_weaves_the_same_cloth()
    {
        // Four blocks of a tied unit weave on six shafts, two feet: six treadles.
        ShaftSet[] lifts = Problem(MarkdownTable.Load("Tables/treadles.md").Rows.Single(r => r["id"] == "treadles-tied6-feet2")["inputs"])
            .Candidates.Take(10).Select(c => c.Up).ToArray();
        var draft = new Draft
        {
            Shafts = 6,
            Threading = [.. Enumerable.Range(0, 16).Select(e => ShaftSet.Of(e % 2 == 0 ? 1 + e / 2 % 2 : 3 + e / 4))],
            LiftPlan = [.. lifts],
        };
        LoomFitResult fit = LoomFit.For(draft, new LoomLimits(6, 6, 2, ShedAction.Rising), new SolverTieUpSearch(Limit, plainSteps: 1));
        Assert.True(fit.Feasible, string.Join(' ', fit.Reasons));
        Assert.True(fit.Optimal);
        Assert.Equal(6, fit.Treadles.Value.Count);
        Assert.Equal(draft.Drawdown(), fit.Draft!.Drawdown());
    }

    [Fact]
    public void A_time_limit_of_nothing_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new SolverTieUpSearch(TimeSpan.Zero).Solve(Problem("feet 2; lifts 1 2 12")));

    private static TieUpProblem Problem(string inputs)
    {
        int feet = 1, countermarche = 0;
        ShaftSet[] lifts = [];
        foreach (string part in inputs.Split(';', StringSplitOptions.TrimEntries))
        {
            string[] words = part.Split(' ');
            switch (words[0])
            {
                case "feet": feet = int.Parse(words[1]); break;
                case "countermarche": countermarche = int.Parse(words[1]); break;
                default: lifts = [.. words.Skip(1).Select(w => ShaftSet.Of([.. w.Select(c => c - '0')]))]; break;
            }
        }

        return countermarche > 0 ? TieUpProblem.Countermarche(lifts, countermarche, feet) : TieUpProblem.Union(lifts, feet);
    }
}
