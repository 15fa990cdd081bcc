namespace Clothwright.Core.Quantities;

/// <summary>Carries an <see cref="InputProblem"/> out of a computation to the place that tells the person.</summary>
/// <remarks>Thrown only for what a person gave; slips of the program throw the framework's own exceptions.</remarks>
public sealed class InputProblemException : Exception
{
    /// <summary>An exception that carries one problem.</summary>
    /// <param name="problem">What a person gave that cannot be used.</param>
    public InputProblemException(InputProblem problem)
        : base(problem.ToString()) => Problem = problem;

    /// <summary>What a person gave that cannot be used.</summary>
    public InputProblem Problem { get; }
}
