namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>How many floats there are of one length.</summary>
/// <param name="Length">Threads passed, 1 or more.</param>
/// <param name="Times">How many such floats.</param>
public readonly record struct FloatCount(int Length, long Times);
