namespace Clothwright.Core.Workings;

/// <summary>One independent reason why a number is not certain, for example the take-up of a cloth not yet sampled.</summary>
/// <remarks>Two numbers that depend on the same cause move together; the name is the identity.</remarks>
/// <param name="Name">The cause, unique within a worksheet, for example <c>shrinkage of 8/2 bamboo in length</c>.</param>
/// <param name="Source">Where its spread comes from.</param>
public sealed record Cause(string Name, Source Source);
