using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Fewest treadles by the table; the largest takes longer to prove and is held against the solver in its own tests.</summary>
public class TreadlesTests
{
    private const string NeedsTheSolver = "treadles-tied8-feet2";

    public static TheoryData<string, string, int> Rows()
    {
        var data = new TheoryData<string, string, int>();
        foreach (var row in MarkdownTable.Load("Tables/treadles.md").Rows) data.Add(row["id"], row["inputs"], int.Parse(row["expected"]));
        return data;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Fewest_treadles_are_as_published(string id, string inputs, int expected)
    {
        TieUpProblem problem = Problem(inputs);
        TieUpAnswer answer = new BranchAndBoundSearch().Solve(problem);
        Assert.Equal(problem.Ways.Length, answer.Presses(problem).Length);
        if (id == NeedsTheSolver)
        {
            Assert.InRange(expected, answer.AtLeast, answer.Chosen.Length);
            return;
        }

        Assert.True(answer.Proved, $"{id}: {answer.Chosen.Length} after {answer.Steps} steps");
        Assert.Equal(expected, answer.Chosen.Length);
    }

    internal static TieUpProblem Problem(string inputs)
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
