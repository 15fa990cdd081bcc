namespace Clothwright.Core.Weaves.Editing;

/// <summary>Where an end and a pick cross.</summary>
/// <param name="Pick">0-based pick.</param>
/// <param name="End">0-based end.</param>
public readonly record struct Crossing(int Pick, int End);
