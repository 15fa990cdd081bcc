using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>The treadles chosen for a <see cref="TieUpProblem"/>.</summary>
/// <param name="Chosen">Indices of the chosen candidates, rising.</param>
/// <param name="Proved">Whether no choice is smaller.</param>
/// <param name="AtLeast">So many treadles are needed at least, as far as the search has shown.</param>
/// <param name="Steps">Steps of the search.</param>
public sealed record TieUpAnswer(ImmutableArray<int> Chosen, bool Proved, int AtLeast, long Steps)
{
    /// <summary>The way each lift is pressed with the chosen treadles: the one with fewest treadles.</summary>
    /// <param name="problem">The problem this answers.</param>
    /// <returns>For each lift the positions in <see cref="Chosen"/>, as numbers from 1.</returns>
    /// <exception cref="InvalidOperationException">A lift cannot be pressed with these treadles.</exception>
    public ImmutableArray<ShaftSet> Presses(TieUpProblem problem)
    {
        var position = Chosen.Select((candidate, i) => (candidate, i)).ToDictionary(p => p.candidate, p => p.i + 1);
        return [.. problem.Ways.Select(ways => ShaftSet.Of(
            [.. (ways.Where(w => w.All(position.ContainsKey)).OrderBy(w => w.Length).Select(w => w.Select(c => position[c]).ToArray()).FirstOrDefault()
                ?? throw new InvalidOperationException("A lift cannot be pressed with the treadles chosen."))]))];
    }

    /// <summary>The direct tie-up: one treadle a lift.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="atLeast">So many treadles are needed at least.</param>
    public static TieUpAnswer Direct(TieUpProblem problem, int atLeast)
    {
        ImmutableArray<int> chosen = [.. Enumerable.Range(0, problem.Ways.Length).Select(problem.Direct).Order()];
        return new TieUpAnswer(chosen, chosen.Length <= atLeast, Math.Min(atLeast, chosen.Length), 0);
    }
}
