namespace Clothwright.Core.Plans.Briefs;

/// <summary>Neighbouring threads of one yarn.</summary>
/// <param name="YarnId">The yarn, by its id on the shelf.</param>
/// <param name="Threads">How many; above 0.</param>
public sealed record ThreadRun(string YarnId, int Threads);
