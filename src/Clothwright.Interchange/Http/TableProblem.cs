namespace Clothwright.Interchange.Http;

/// <summary>What cannot be read in a row of a table.</summary>
/// <param name="Where">Line and column.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Mend">What would put it right.</param>
public sealed record TableProblem(string Where, string What, string Mend);
