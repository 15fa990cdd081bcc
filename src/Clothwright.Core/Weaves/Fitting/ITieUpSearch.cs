namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Finds the fewest treadles.</summary>
public interface ITieUpSearch
{
    /// <summary>Chooses as few candidates as it can, and says whether that is proved to be the fewest.</summary>
    /// <param name="problem">What is wanted.</param>
    TieUpAnswer Solve(TieUpProblem problem);
}
