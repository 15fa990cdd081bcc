namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>One round of the threads of a direction, by the numbers of their looks.</summary>
/// <param name="Looks">Look of each thread.</param>
/// <param name="Clasps">Look that takes over at the clasp; −1 where the thread runs through.</param>
/// <param name="ClaspMillimetres">Where it takes over, from the left (of a pick) or from the front (of an end).</param>
public readonly record struct ThreadRound(int[] Looks, int[] Clasps, float[] ClaspMillimetres);
